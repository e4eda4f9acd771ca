import { orient2d } from 'robust-predicates';
import type { Region, YardPoint } from '../spaces.ts';
import { distanceM, nearestOnEdge } from './distance.ts';
import { type Edge, EdgeTree, edgesOf } from './EdgeTree.ts';
import { ringBounds } from './measure.ts';

/** A corner of what stands in the way; the ground that is barred lies on the left of before, at, after. */
export interface BarrierCorner {
  readonly at: YardPoint;
  readonly before: YardPoint;
  readonly after: YardPoint;
}

/**
 * Disjoint regions that bar the way, made ready for many straight lines: does one get from here to there without
 * entering any of them? A line may touch an edge or run along it.
 * Accuracy: exact for the coordinates given
 * Cost: n log n to build; the edges near the line to ask
 * Source: Shewchuk 1997, adaptive precision orientation predicate
 */
export class SightLines {
  /** In the order of the edges: corner i is where edge i begins. */
  readonly corners: readonly BarrierCorner[];
  readonly #edges: EdgeTree;

  constructor(barriers: readonly Region[]) {
    const edges: Edge[] = [];
    const corners: BarrierCorner[] = [];
    for (const ring of nearTogether(barriers).flatMap((region) => [region.outer, ...region.holes])) {
      for (const edge of edgesOf(ring)) {
        corners.push({ at: edge.from, before: ring.at(edge.at - 1) as YardPoint, after: edge.to });
        edges.push({ ...edge, at: edges.length });
      }
    }
    this.corners = corners;
    this.#edges = new EdgeTree(edges);
  }

  /** Whether the straight line between two places, neither of them inside a barrier, enters none. */
  isClear(a: YardPoint, b: YardPoint): boolean {
    return !this.#edges.someAlong(a, b, (edge) => this.#bars(edge, a, b));
  }

  /** Whether a place lies inside a barrier, or on its edge. */
  holds(place: YardPoint): boolean {
    const { xM, yM } = place;
    let isInside = false;
    const isOn = this.#edges.someIn({ minXM: xM, minYM: yM, maxXM: Infinity, maxYM: yM }, ({ from, to }) => {
      const side = leftOf(from, to, place);
      if (side === 0 && Math.min(from.xM, to.xM) <= xM && Math.max(from.xM, to.xM) >= xM) return true;
      if (from.yM > yM !== to.yM > yM && side > 0 === to.yM > from.yM) isInside = !isInside;
      return false;
    });
    return isOn || isInside;
  }

  /**
   * The first edge on the way from one place to another, by the corner it begins at; edges that begin or end where
   * the way does are not met. Undefined when the way is clear.
   */
  firstMet(from: YardPoint, to: YardPoint): number | undefined {
    let first: number | undefined;
    let least = 1;
    this.#edges.someAlong(from, to, (edge) => {
      if (isSame(edge.from, from) || isSame(edge.to, from)) return false;
      const [a, b] = [leftOf(from, to, edge.from), leftOf(from, to, edge.to)];
      if (a > 0 === b > 0) return false;
      const [near, far] = [leftOf(edge.from, edge.to, from), leftOf(edge.from, edge.to, to)];
      const share = near / (near - far);
      if (share >= 0 && share < least) [first, least] = [edge.at, share];
      return false;
    });
    return first;
  }

  /** The edges, nearest first, by the corner each begins at and the place on it that is nearest. */
  *nearest(
    place: YardPoint,
  ): Generator<{ readonly edge: number; readonly at: YardPoint; readonly awayM: number }> {
    const feet = this.#edges.edges.map(({ from, to }) => nearestOnEdge(from, to, place));
    const awayM = Float64Array.from(feet, (foot) => distanceM(foot, place));
    for (;;) {
      let edge = 0;
      for (let i = 1; i < awayM.length; i++) if ((awayM[i] as number) < (awayM[edge] as number)) edge = i;
      const leastM = awayM[edge] ?? Infinity;
      if (leastM === Infinity) return;
      yield { edge, at: feet[edge] as YardPoint, awayM: leastM };
      awayM[edge] = Infinity;
    }
  }

  #bars(edge: Edge, a: YardPoint, b: YardPoint): boolean {
    const fromSide = leftOf(a, b, edge.from);
    if (fromSide === 0) return this.#cornerBars(edge.at, a, b);
    const toSide = leftOf(a, b, edge.to);
    // The corner an edge ends at is asked with the edge that begins there.
    if (toSide === 0 || fromSide > 0 === toSide > 0) return false;
    const [aSide, bSide] = [leftOf(edge.from, edge.to, a), leftOf(edge.from, edge.to, b)];
    if (aSide === 0) return bSide > 0;
    if (bSide === 0) return aSide > 0;
    return aSide > 0 !== bSide > 0;
  }

  /** Whether a line that runs through a corner, or ends there, goes into the barrier there. */
  #cornerBars(at: number, a: YardPoint, b: YardPoint): boolean {
    const corner = this.corners[at] as BarrierCorner;
    const { xM, yM } = corner.at;
    if (xM < Math.min(a.xM, b.xM) || xM > Math.max(a.xM, b.xM)) return false;
    if (yM < Math.min(a.yM, b.yM) || yM > Math.max(a.yM, b.yM)) return false;
    return (!isSame(corner.at, a) && leadsIn(corner, a)) || (!isSame(corner.at, b) && leadsIn(corner, b));
  }
}

/** Positive when a place lies left of the line from a to b. */
function leftOf(a: YardPoint, b: YardPoint, place: YardPoint): number {
  // The library counts clockwise as positive.
  return -orient2d(a.xM, a.yM, b.xM, b.yM, place.xM, place.yM);
}

/** Whether the way from a corner towards a place begins inside the barrier. */
function leadsIn({ at, before, after }: BarrierCorner, place: YardPoint): boolean {
  const [into, outOf] = [leftOf(before, at, place), leftOf(at, after, place)];
  return leftOf(before, at, after) > 0 ? into > 0 && outOf > 0 : into > 0 || outOf > 0;
}

function isSame(a: YardPoint, b: YardPoint): boolean {
  return a.xM === b.xM && a.yM === b.yM;
}

/** In strips from west to east, so that regions that follow one another lie near each other. */
function nearTogether(regions: readonly Region[]): Region[] {
  const boxes = regions.map((region) => ({ region, box: ringBounds(region.outer) }));
  const west = Math.min(...boxes.map(({ box }) => box.minXM));
  const widthM = Math.max(...boxes.map(({ box }) => box.maxXM)) - west || 1;
  const strips = Math.ceil(Math.sqrt(regions.length));
  const stripOf = (xM: number): number => Math.floor((strips * (xM - west)) / widthM);
  return boxes
    .sort((a, b) => stripOf(a.box.minXM) - stripOf(b.box.minXM) || a.box.minYM - b.box.minYM)
    .map(({ region }) => region);
}
