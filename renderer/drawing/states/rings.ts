import { outlineRings } from '../../../core/curves/index.ts';
import type { Ring, YardPoint } from '../../../core/spaces.ts';
import type { Outline } from '../../../core/yard.ts';
import type { Handle } from '../drawing.ts';
import { cornerAfter, middle, moved } from '../plane.ts';

/** Ring 0 is the outer ring, 1… the holes: the numbering a handle uses. */
export function ringsOf(outline: Outline): readonly Ring[] {
  return outlineRings(outline);
}

export function moveCorner(rings: readonly Ring[], handle: Handle, to: YardPoint): readonly Ring[] {
  return changeRing(rings, handle.ring, (ring) => ring.with(handle.at, to));
}

/** A new corner in the middle of the handle's edge, after corner `handle.at`. */
export function addCorner(rings: readonly Ring[], handle: Handle): readonly Ring[] {
  return changeRing(rings, handle.ring, (ring) => {
    const from = ring[handle.at];
    const to = cornerAfter(ring, handle.at);
    return from && to ? ring.toSpliced(handle.at + 1, 0, middle(from, to)) : ring;
  });
}

export function removeCorner(rings: readonly Ring[], handle: Handle): readonly Ring[] {
  return changeRing(rings, handle.ring, (ring) => ring.toSpliced(handle.at, 1));
}

export function movedRings(rings: readonly Ring[], eastM: number, northM: number): readonly Ring[] {
  return rings.map((ring) => ring.map((corner) => moved(corner, eastM, northM)));
}

function changeRing(rings: readonly Ring[], at: number, change: (ring: Ring) => Ring): readonly Ring[] {
  return rings.map((ring, i) => (i === at ? change(ring) : ring));
}
