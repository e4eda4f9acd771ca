import type { Traced, TracedCorner } from '../yard.ts';

/** The same edge traced the other way: its first corner stays the first, what is said of an edge stays with it. */
export function reversedTraced(traced: Traced): Traced {
  if (traced.kind !== 'corners') return traced;
  const [first, ...rest] = traced.corners;
  if (first === undefined) return traced;
  const round = [first, ...rest.reverse()];
  return {
    kind: 'corners',
    corners: round.map((corner, i) => withEdgeOf(corner, round[(i + 1) % round.length])),
  };
}

/**
 * The corners from one edge to another the other way round, both those edges straight: edge `edge` then runs from
 * its corner to that where `other` began.
 */
export function withStretchTurned(
  corners: readonly TracedCorner[],
  edge: number,
  other: number,
): readonly TracedCorner[] {
  const stretch = corners.slice(edge + 1, other + 1).reverse();
  const turned = stretch.map((corner, i) => withEdgeOf(corner, stretch[i + 1]));
  const [from, last] = [corners[edge] as TracedCorner, corners[other] as TracedCorner];
  // What was kept off along either edge is kept off along the one that now takes its place.
  const lastTurned = withEdgeOf(stretch[stretch.length - 1] as TracedCorner, last);
  return [...corners.slice(0, edge), from, ...turned.slice(0, -1), lastTurned, ...corners.slice(other + 1)];
}

/** A corner, with what was said of the edge that began at another. */
function withEdgeOf({ xM, yM }: TracedCorner, edge: TracedCorner | undefined): TracedCorner {
  return {
    xM,
    yM,
    ...(edge?.run === undefined ? {} : { run: edge.run }),
    ...(edge?.keepOffM === undefined ? {} : { keepOffM: edge.keepOffM }),
  };
}
