import type { Ring } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';

/** A ring of straight edges between the given corners. */
export function straight(corners: Ring): Traced {
  return { kind: 'corners', corners };
}

/** Whether an outline is nothing but corners and straight edges, so that its rings alone say all there is. */
export function isPlain({ outer, holes }: Pick<Outline, 'outer' | 'holes'>): boolean {
  return [outer, ...holes].every(
    (ring) =>
      ring.kind === 'corners' &&
      ring.corners.every(({ run, keepOffM }) => run === undefined && keepOffM === undefined),
  );
}
