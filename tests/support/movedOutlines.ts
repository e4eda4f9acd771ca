import { placedPointsOf } from '../../core/area/index.ts';
import { moveOwnPoint, ownPoints } from '../../core/curves/index.ts';
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
  // Later points last: an oval's centre takes the others along, so they are put back where they were asked for.
  return ownPoints(traced).reduce((moved, own, i) => {
    const to = points[i] as YardPoint;
    const isThere = to.xM === own.place.xM && to.yM === own.place.yM;
    return isThere ? moved : moveOwnPoint(moved, own, to);
  }, traced);
}
