import { areaFigure, areaSigmaFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';

interface AreaCellProps {
  readonly areaM2: number;
  readonly sigmaM2: number | null;
  readonly units: UnitSystem;
}

/** An area with its ± after it in a lighter hand; no ± where none is stated. The unit stands in the head. */
export function AreaCell({ areaM2, sigmaM2, units }: AreaCellProps) {
  return (
    <>
      {areaFigure(areaM2, units).text}
      {sigmaM2 !== null && <span className="plus-minus"> {areaSigmaFigure(sigmaM2, units).text}</span>}
    </>
  );
}
