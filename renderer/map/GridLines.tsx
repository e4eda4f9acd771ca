import { memo } from 'react';
import type { UnitSystem } from '../../core/yard.ts';
import type { Lens, Sight } from './lens.ts';
import { stepAtLeast } from './niceSteps.ts';

/** The paper's squares: never closer on the screen than this. */
const CLOSEST_PX = 38;

interface GridLinesProps {
  readonly lens: Lens;
  readonly sight: Sight;
  readonly units: UnitSystem;
}

/** The light squares of the paper, in whole yard metres or feet. */
export const GridLines = memo(function GridLines({ lens, sight, units }: GridLinesProps) {
  const stepM = stepAtLeast(CLOSEST_PX * lens.metresPerPx, units);
  const low = lens.fromLayer({ x: sight.left, y: sight.bottom });
  const high = lens.fromLayer({ x: sight.right, y: sight.top });
  let d = '';
  for (let i = Math.ceil(low.xM / stepM); i * stepM <= high.xM; i += 1) {
    const x = lens.toLayer({ xM: i * stepM, yM: (low.yM + high.yM) / 2 }).x.toFixed(1);
    d += `M${x} ${sight.top.toFixed(0)}V${sight.bottom.toFixed(0)}`;
  }
  for (let i = Math.ceil(low.yM / stepM); i * stepM <= high.yM; i += 1) {
    const y = lens.toLayer({ xM: (low.xM + high.xM) / 2, yM: i * stepM }).y.toFixed(1);
    d += `M${sight.left.toFixed(0)} ${y}H${sight.right.toFixed(0)}`;
  }
  return <path d={d} className="grid-lines" />;
});
