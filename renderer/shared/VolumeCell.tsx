import { type ShownVolumeUnit, volumeFigure, volumeSigmaFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { PlusMinus } from './PlusMinus.tsx';

interface VolumeCellProps {
  readonly volumeL: number;
  readonly sigmaL: number | null;
  readonly units: UnitSystem;
  readonly unit: ShownVolumeUnit;
}

/** A volume with its ± after it; no ± where none is stated. */
export function VolumeCell({ volumeL, sigmaL, units, unit }: VolumeCellProps) {
  const sigma = sigmaL === null ? null : volumeSigmaFigure(sigmaL, units, unit).text;
  return <PlusMinus text={volumeFigure(volumeL, units, unit).text} sigma={sigma} />;
}
