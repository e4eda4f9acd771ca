import { areaFigure, areaSigmaFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { PlusMinus } from './PlusMinus.tsx';

interface AreaCellProps {
  readonly areaM2: number;
  readonly sigmaM2: number | null;
  readonly units: UnitSystem;
}

/** An area with its ± after it; no ± where none is stated. */
export function AreaCell({ areaM2, sigmaM2, units }: AreaCellProps) {
  const sigma = sigmaM2 === null ? null : areaSigmaFigure(sigmaM2, units).text;
  return <PlusMinus text={areaFigure(areaM2, units).text} sigma={sigma} />;
}
