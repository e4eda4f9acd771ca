import { FOOT_M } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { stepAtMost } from './niceSteps.ts';

const LONGEST_PX = 150;

/** A ruler's four fields, black and white, as long as the ground it stands for. */
export function ScaleBar({
  metresPerPx,
  units,
}: {
  readonly metresPerPx: number;
  readonly units: UnitSystem;
}) {
  const lengthM = stepAtMost(LONGEST_PX * metresPerPx, units);
  const widthPx = lengthM / metresPerPx;
  const field = widthPx / 4;
  const words = lengthWords(lengthM, units);
  return (
    <span className="scale-bar" role="img" aria-label={`Scale bar: this long is ${words}`}>
      <svg width={widthPx + 1} height="8" aria-hidden="true">
        <rect x=".5" y=".5" width={widthPx} height="6" className="scale-paper" />
        <rect x=".5" y=".5" width={field} height="6" className="scale-ink" />
        <rect x={0.5 + 2 * field} y=".5" width={field} height="6" className="scale-ink" />
      </svg>
      <span>{words}</span>
    </span>
  );
}

/** A ruler says 20 ft, 6 in or 50 cm, not 20.0 ft. */
function lengthWords(lengthM: number, units: UnitSystem): string {
  if (units === 'metric') return lengthM < 1 ? `${Math.round(lengthM * 100)} cm` : `${Math.round(lengthM)} m`;
  const lengthFt = lengthM / FOOT_M;
  return lengthFt < 1 ? `${Math.round(lengthFt * 12)} in` : `${Math.round(lengthFt)} ft`;
}
