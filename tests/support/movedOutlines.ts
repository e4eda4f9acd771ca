import { placedPointsOf } from '../../core/area/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Outline, Traced } from '../../core/yard.ts';

/** Outlines with every placed point moved by what its place says; points at one place move as one. */
export function movedOutlines(
  outlines: readonly Outline[],
  move: (place: string, at: YardPoint, outline: Outline) => YardPoint,
): Outline[] {
  return outlines.map((outline) => {
    const placed = placedPointsOf(outline).map((ring) =>
      ring.map(({ at }) => move(placeOf(at), at, outline)),
    );
    const [outer, ...holes] = [outline.outer, ...outline.holes].map((traced, i) =>
      withOwnPoints(traced, placed[i] ?? []),
    );
    return { ...outline, outer: outer as Traced, holes };
  });
}

/** The same for points that fall together on the kernel's grid of a micrometre. */
export function placeOf({ xM, yM }: YardPoint): string {
  return `${Math.round(xM * 1e6)},${Math.round(yM * 1e6)}`;
}

function withOwnPoints(traced: Traced, points: readonly YardPoint[]): Traced {
  if (traced.kind !== 'corners') throw new Error('not yet');
  return { ...traced, corners: traced.corners.map((corner, i) => ({ ...corner, ...points[i] })) };
}
