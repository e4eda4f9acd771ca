import { regionAreaM2 } from '../kernel/index.ts';
import { ok, type Result } from '../result.ts';
import type { Ring } from '../spaces.ts';
import { groundRing, type Place, placed, requireCount, requirePositive } from './place.ts';

/** Ground measured by rays, and the three areas that are taken from such rays. */
export interface RayGround {
  /** Straight from the end of one ray to the next. */
  readonly ring: Ring;
  /** What is drawn: the polygon of straight chords. Low where the edge bulges. */
  readonly chordAreaM2: number;
  /** Every ray stands for a sector of a circle: π × mean of the squares. */
  readonly sectorAreaM2: number;
  /** A circle of the mean radius: π × square of the mean, never more than the sectors. */
  readonly meanRadiusAreaM2: number;
}

/**
 * Ground by rays at equal angles from a stake to its edge, clockwise, the first on the bearing.
 *
 * Problems: value/too-few (fewer than three), value/not-positive; shape/ as `checkRing`
 * Source: sectors exceed the mean-radius circle by π times the variance of the rays
 */
export function raysFromStake(raysM: readonly number[], place: Place): Result<RayGround> {
  const enough = requireCount('rays', raysM.length, 3);
  if (!enough.ok) return enough;
  const sizes = requirePositive(Object.fromEntries(raysM.map((m, i) => [`ray ${i + 1}`, m])));
  if (!sizes.ok) return sizes;
  const ring = groundRing(
    'The ground by rays',
    raysM.map((alongM, i) =>
      placed({ at: place.at, bearingDeg: place.bearingDeg + (360 * i) / raysM.length }, { alongM, leftM: 0 }),
    ),
  );
  if (!ring.ok) return ring;
  const meanM = raysM.reduce((sum, m) => sum + m, 0) / raysM.length;
  const meanSquareM2 = raysM.reduce((sum, m) => sum + m * m, 0) / raysM.length;
  return ok({
    ring: ring.value,
    chordAreaM2: regionAreaM2({ outer: ring.value, holes: [] }),
    sectorAreaM2: Math.PI * meanSquareM2,
    meanRadiusAreaM2: Math.PI * meanM * meanM,
  });
}
