import type Flatbush from 'flatbush';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import { type Edge, edgesMeet, edgesOf, indexOf } from './crossing.ts';
import { regionContains } from './inside.ts';
import { type RingBounds, ringBounds } from './measure.ts';

/**
 * A region made ready for many questions of one kind: does this ring lie whole inside, clear of every edge?
 * Cost: n log n to build; log n an edge, and n a ring, to ask
 */
export class RegionIndex {
  readonly region: Region;
  readonly bounds: RingBounds;
  readonly #edges: readonly Edge[];
  readonly #boxes: Flatbush;

  constructor(region: Region) {
    this.region = region;
    this.bounds = ringBounds(region.outer);
    this.#edges = [region.outer, ...region.holes].flatMap(edgesOf);
    this.#boxes = indexOf(this.#edges);
  }

  /** Whether a ring lies inside without touching an edge. Exact. */
  holdsClear(ring: Ring): boolean {
    const box = ringBounds(ring);
    const { minXM, minYM, maxXM, maxYM } = this.bounds;
    if (box.minXM <= minXM || box.minYM <= minYM || box.maxXM >= maxXM || box.maxYM >= maxYM) return false;
    if (!regionContains(this.region, ring[0] as YardPoint)) return false;
    // No edge met and one corner inside: all of it is inside, unless it runs round a hole.
    return !this.#meets(ring, box) && !this.#runsRoundAHole(ring, box);
  }

  #meets(ring: Ring, box: RingBounds): boolean {
    // Most beds lie in the open, with no edge near their box.
    if (this.#boxes.search(box.minXM, box.minYM, box.maxXM, box.maxYM).length === 0) return false;
    return edgesOf(ring).some((edge) => {
      let met = false;
      this.#boxes.search(edge.west, edge.south, edge.east, edge.north, (at) => {
        met ||= edgesMeet(edge, this.#edges[at] as Edge) !== undefined;
        return false;
      });
      return met;
    });
  }

  #runsRoundAHole(ring: Ring, box: RingBounds): boolean {
    const round: Region = { outer: ring, holes: [] };
    return this.region.holes.some((hole) => {
      const { xM, yM } = hole[0] as YardPoint;
      const near = xM >= box.minXM && xM <= box.maxXM && yM >= box.minYM && yM <= box.maxYM;
      return near && regionContains(round, { xM, yM });
    });
  }
}
