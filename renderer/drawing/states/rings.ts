import { moveOwnPoint, movedTraced } from '../../../core/curves/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { Outline, Traced } from '../../../core/yard.ts';
import type { Handle } from '../drawing.ts';
import { ownPointOf } from '../handles.ts';
import { moved } from '../plane.ts';

/** Ring 0 is the outer ring, 1… the holes: the numbering a handle uses. */
export function ringsOf({ outer, holes }: Outline): readonly Traced[] {
  return [outer, ...holes];
}

export function moveHandle(rings: readonly Traced[], handle: Handle, to: YardPoint): readonly Traced[] {
  const own = ownPointOf(rings, handle);
  return own === undefined ? rings : changeRing(rings, handle.ring, (ring) => moveOwnPoint(ring, own, to));
}

export function movedRings(rings: readonly Traced[], eastM: number, northM: number): readonly Traced[] {
  const move = (point: YardPoint): YardPoint => moved(point, eastM, northM);
  return rings.map((ring) => movedTraced(ring, { move, scale: 1, turnDeg: 0 }));
}

export function changeRing(
  rings: readonly Traced[],
  at: number,
  change: (ring: Traced) => Traced,
): readonly Traced[] {
  return rings.map((ring, i) => (i === at ? change(ring) : ring));
}
