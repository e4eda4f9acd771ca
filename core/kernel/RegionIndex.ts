import type { Region, Ring, YardPoint } from '../spaces.ts';
import { BoxIndex } from './BoxIndex.ts';
import { edgesMeet } from './crossing.ts';
import { distanceToEdgeM } from './distance.ts';
import { type Edge, EdgeTree, edgesOf } from './EdgeTree.ts';
import { regionContains } from './inside.ts';
import { boxesMeet, grown, type RingBounds, ringBounds } from './measure.ts';

/**
 * A region made ready for many questions of one kind: does this ring lie whole inside, clear of every edge?
 * Cost: n to build; log n an edge to ask
 */
export class RegionIndex {
  readonly region: Region;
  readonly bounds: RingBounds;
  readonly #edges: EdgeTree;
  /** The holes by their first corners. */
  readonly #holes: BoxIndex<YardPoint>;

  constructor(region: Region) {
    this.region = region;
    this.bounds = ringBounds(region.outer);
    this.#edges = new EdgeTree([region.outer, ...region.holes].flatMap(edgesOf));
    const starts = region.holes.flatMap((hole) => hole.slice(0, 1));
    this.#holes = new BoxIndex(starts, (start) => ringBounds([start]));
  }

  /**
   * Whether a ring lies inside without touching an edge.
   *
   * @param clearanceM how far from every edge it has to be
   * Accuracy: exact without a clearance
   */
  holdsClear(ring: Ring, clearanceM = 0): boolean {
    const box = ringBounds(ring);
    const { minXM, minYM, maxXM, maxYM } = this.bounds;
    if (!(box.minXM > minXM && box.minYM > minYM && box.maxXM < maxXM && box.maxYM < maxYM)) return false;
    // No edge met and one corner inside: all of it is inside, unless it runs round a hole.
    return (
      !this.#meets(ring, box, clearanceM) &&
      this.#holds(ring[0] as YardPoint) &&
      !this.#runsRoundAHole(ring, box)
    );
  }

  /** Whether a ring has nothing in common with the region, not even a touched edge. Exact. */
  isApart(ring: Ring): boolean {
    const box = ringBounds(ring);
    if (!boxesMeet(box, this.bounds)) return true;
    if (this.#meets(ring, box, 0) || this.#holds(ring[0] as YardPoint)) return false;
    // Neither crosses the other, and the ring is not in the region: the region may still be in the ring.
    return !regionContains({ outer: ring, holes: [] }, this.region.outer[0] as YardPoint);
  }

  #meets(ring: Ring, box: RingBounds, clearanceM: number): boolean {
    // Most beds lie in the open, with no edge near their box.
    if (!this.#edges.someIn(grown(box, clearanceM), () => true)) return false;
    return edgesOf(ring).some((edge) => {
      const { west, south, east, north } = edge;
      const around = grown({ minXM: west, minYM: south, maxXM: east, maxYM: north }, clearanceM);
      return this.#edges.someIn(
        around,
        (other) =>
          edgesMeet(edge, other) !== undefined || (clearanceM > 0 && apartM(edge, other) < clearanceM),
      );
    });
  }

  /** Whether a point that lies on no edge is inside: an even-odd count of the edges a ray to the east crosses. */
  #holds({ xM, yM }: YardPoint): boolean {
    let inside = false;
    this.#edges.someIn({ minXM: xM, minYM: yM, maxXM: Infinity, maxYM: yM }, ({ from, to }) => {
      const side = (to.xM - from.xM) * (yM - from.yM) - (to.yM - from.yM) * (xM - from.xM);
      if (from.yM > yM !== to.yM > yM && side > 0 === to.yM > from.yM) inside = !inside;
      return false;
    });
    return inside;
  }

  #runsRoundAHole(ring: Ring, box: RingBounds): boolean {
    const round: Region = { outer: ring, holes: [] };
    return this.#holes.meeting(box).some((start) => regionContains(round, start));
  }
}

/** The shortest distance between two edges that do not meet: at an end of one of them. */
function apartM(a: Edge, b: Edge): number {
  return Math.min(
    distanceToEdgeM(a.from, a.to, b.from),
    distanceToEdgeM(a.from, a.to, b.to),
    distanceToEdgeM(b.from, b.to, a.from),
    distanceToEdgeM(b.from, b.to, a.to),
  );
}
