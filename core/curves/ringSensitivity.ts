import type { YardPoint } from '../spaces.ts';
import type { Traced, TracedCorner } from '../yard.ts';
import { type EdgeCurve, edgeCurve, type Lead } from './edgePoints.ts';
import { ovalOf } from './ovalOf.ts';
import { directionOf, ovalCorners } from './ovalRing.ts';

/** How a corner of the ring moves with one of the traced edge's own points: metres per metre. */
export interface VertexMove {
  /** Index into `ownPoints`. */
  readonly own: number;
  /** East per east, east per north, north per east, north per north of the own point. */
  readonly dxdx: number;
  readonly dxdy: number;
  readonly dydx: number;
  readonly dydy: number;
}

/** The step of a difference, as a share of the least distance between the points a curve follows. */
const STEP_SHARE = 1e-4;

const known = new WeakMap<Traced, readonly (readonly VertexMove[])[]>();

/**
 * For each corner of `tracedRing`, which own points it moves with and how, to first order. A corner of the outline
 * moves with itself alone; a corner that stands for a curve with all that its curve follows.
 *
 * Accuracy: ovals in closed form; curves by central differences with the number of chords held, relative 1e-6
 */
export function ringSensitivity(traced: Traced): readonly (readonly VertexMove[])[] {
  const found = known.get(traced);
  if (found !== undefined) return found;
  const moves = traced.kind === 'corners' ? cornerMoves(traced) : ovalMoves(traced);
  known.set(traced, moves);
  return moves;
}

function cornerMoves({
  corners,
}: {
  readonly corners: readonly TracedCorner[];
}): readonly (readonly VertexMove[])[] {
  let vias = corners.length;
  return corners.flatMap((corner, edge) => {
    const via = vias;
    if (corner.run?.kind === 'arc') vias += 1;
    const curve = edgeCurve(corners, edge);
    return curve === null
      ? [[alike(edge)]]
      : [[alike(edge)], ...curveMoves(curve, edge, via, corners.length)];
  });
}

interface CurveMoves {
  readonly edge: number;
  readonly via: number;
  readonly corners: number;
  readonly moves: readonly (readonly VertexMove[])[];
}

/** The curves of edges that stay as they are follow the same points as they did. */
const knownCurves = new WeakMap<EdgeCurve, CurveMoves>();

function curveMoves(curve: EdgeCurve, edge: number, via: number, corners: number): CurveMoves['moves'] {
  const found = knownCurves.get(curve);
  if (found?.edge === edge && found.via === via && found.corners === corners) return found.moves;
  const owns: Readonly<Record<Lead, number>> = {
    before: (edge + corners - 1) % corners,
    from: edge,
    via,
    to: (edge + 1) % corners,
    after: (edge + 2) % corners,
  };
  const moves = differences(
    curve,
    curve.leads.map((lead) => owns[lead]),
  );
  knownCurves.set(curve, { edge, via, corners, moves });
  return moves;
}

function differences({ points, places, draw }: EdgeCurve, owns: readonly number[]): CurveMoves['moves'] {
  if (points.length === 0) return [];
  const stepM = STEP_SHARE * leastApartM(places);
  const by = (lead: number, xM: number, yM: number): readonly YardPoint[] => {
    const moved = places.map((place, i) => (i === lead ? { xM: place.xM + xM, yM: place.yM + yM } : place));
    const drawn = draw(moved, points.length + 1);
    // A step on which an arc becomes a straight line tells nothing.
    return drawn.length === points.length ? drawn : points;
  };
  const each = owns.map((own, at) => ({
    own,
    east: [by(at, stepM, 0), by(at, -stepM, 0)] as const,
    north: [by(at, 0, stepM), by(at, 0, -stepM)] as const,
  }));
  return points.map((_, i) =>
    merged(
      each.map(({ own, east, north }) => {
        const [x, y] = [slope(east, i, stepM), slope(north, i, stepM)];
        return { own, dxdx: x.xM, dxdy: y.xM, dydx: x.yM, dydy: y.yM };
      }),
    ),
  );
}

/** In a ring of three, the corner before a smooth edge is the corner after it as well. */
function merged(moves: readonly VertexMove[]): readonly VertexMove[] {
  const [first, last] = [moves[0], moves[moves.length - 1]];
  if (first === undefined || last === undefined || moves.length < 2 || first.own !== last.own) return moves;
  return [added(first, last), ...moves.slice(1, -1)];
}

function slope(
  [plus, minus]: readonly [readonly YardPoint[], readonly YardPoint[]],
  i: number,
  stepM: number,
): YardPoint {
  const [a, b] = [plus[i], minus[i]] as [YardPoint, YardPoint];
  return { xM: (a.xM - b.xM) / (2 * stepM), yM: (a.yM - b.yM) / (2 * stepM) };
}

function leastApartM(places: readonly YardPoint[]): number {
  const apart = places.slice(1).map((place, i) => {
    const before = places[i] as YardPoint;
    return Math.hypot(place.xM - before.xM, place.yM - before.yM);
  });
  return Math.min(...apart.filter((distanceM) => distanceM > 0));
}

function alike(own: number): VertexMove {
  return { own, dxdx: 1, dxdy: 0, dydx: 0, dydy: 1 };
}

/**
 * A corner at p half lengths along u and q half widths to the left w moves with the centre as it is, with the end of
 * the length by p u uᵀ and, turned by it, by (p w − q b/a u) wᵀ, and with the end of the width by q w wᵀ. The rim of
 * a circle only changes the radius: (p u + q w) uᵀ.
 * Source: worked out here; derivatives of centre + p a u + q b w with u = (end − centre)/a, w = u turned left.
 */
function ovalMoves(traced: Exclude<Traced, { kind: 'corners' }>): readonly (readonly VertexMove[])[] {
  const oval = ovalOf(traced);
  const { east, north } = directionOf(oval.bearingDeg);
  const [u, w] = [
    { xM: east, yM: north },
    { xM: -north, yM: east },
  ];
  const ratio = oval.halfAlongM > 0 ? oval.halfAcrossM / oval.halfAlongM : 0;
  return ovalCorners(oval).map(({ along, left }) => {
    const out = combined(along, u, left, w);
    if (traced.kind === 'circle') return [alike(0), outer(1, out, u)];
    const lengthened = outer(1, combined(along, u, 0, w), u);
    const turned = outer(1, combined(-left * ratio, u, along, w), w);
    return [alike(0), added(lengthened, turned), outer(2, combined(0, u, left, w), w)];
  });
}

function combined(p: number, u: YardPoint, q: number, w: YardPoint): YardPoint {
  return { xM: p * u.xM + q * w.xM, yM: p * u.yM + q * w.yM };
}

function outer(own: number, moved: YardPoint, by: YardPoint): VertexMove {
  return {
    own,
    dxdx: moved.xM * by.xM,
    dxdy: moved.xM * by.yM,
    dydx: moved.yM * by.xM,
    dydy: moved.yM * by.yM,
  };
}

function added(a: VertexMove, b: VertexMove): VertexMove {
  return {
    own: a.own,
    dxdx: a.dxdx + b.dxdx,
    dxdy: a.dxdy + b.dxdy,
    dydx: a.dydx + b.dydx,
    dydy: a.dydy + b.dydy,
  };
}
