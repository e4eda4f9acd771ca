import type { Ring, YardPoint } from '../spaces.ts';
import type { RingBounds } from './measure.ts';

/** An edge of a ring and its box, metres. */
export interface Edge {
  readonly from: YardPoint;
  readonly to: YardPoint;
  readonly at: number;
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

/** The edges of a ring, its closing edge last. */
export function edgesOf(ring: Ring): Edge[] {
  return ring.map((from, at) => {
    const to = ring[(at + 1) % ring.length] as YardPoint;
    return {
      from,
      to,
      at,
      west: Math.min(from.xM, to.xM),
      east: Math.max(from.xM, to.xM),
      south: Math.min(from.yM, to.yM),
      north: Math.max(from.yM, to.yM),
    };
  });
}

/** Edges, or boxes of edges, to a box. */
const RUN = 8;
/** A line meets boxes this near to it too, so that rounding hides no edge. */
const ALONG_M = 1e-9;

/**
 * Edges found by their boxes. Edges that follow one another lie beside one another, so runs of them are boxed in the
 * order they come; a sorted index took ten times as long to build, and a zone that is dragged needs one each frame.
 * Cost: n to build; log n and what is found to ask
 */
export class EdgeTree {
  readonly edges: readonly Edge[];
  /** West, south, east, north of each box; the edges' own first, then of runs of those, until one is round all. */
  readonly #levels: Float64Array[];

  constructor(edges: readonly Edge[]) {
    this.edges = edges;
    const own = new Float64Array(4 * edges.length);
    let k = 0;
    for (const { west, south, east, north } of edges) {
      own[k++] = west;
      own[k++] = south;
      own[k++] = east;
      own[k++] = north;
    }
    this.#levels = [own];
    for (let below: Float64Array = own; below.length > 4; ) {
      below = boxesOfRuns(below);
      this.#levels.push(below);
    }
  }

  /** Whether any edge whose box meets this one, touching included, passes the test. */
  someIn(box: RingBounds, test: (edge: Edge) => boolean): boolean {
    const levels = this.#levels;
    const look = (level: number, from: number, to: number): boolean => {
      const boxes = levels[level] as Float64Array;
      for (let i = from; i < to; i++) {
        if ((boxes[4 * i] as number) > box.maxXM || (boxes[4 * i + 2] as number) < box.minXM) continue;
        if ((boxes[4 * i + 1] as number) > box.maxYM || (boxes[4 * i + 3] as number) < box.minYM) continue;
        if (level === 0 ? test(this.edges[i] as Edge) : look(level - 1, i * RUN, this.#end(level, i)))
          return true;
      }
      return false;
    };
    const top = levels.length - 1;
    return look(top, 0, (levels[top] as Float64Array).length / 4);
  }

  /** Whether any edge whose box a straight line meets, touching included, passes the test; a few more are asked. */
  someAlong(from: YardPoint, to: YardPoint, test: (edge: Edge) => boolean): boolean {
    const [west, east] = [Math.min(from.xM, to.xM), Math.max(from.xM, to.xM)];
    const [south, north] = [Math.min(from.yM, to.yM), Math.max(from.yM, to.yM)];
    const [dx, dy] = [to.xM - from.xM, to.yM - from.yM];
    const [absX, absY] = [Math.abs(dx), Math.abs(dy)];
    const roundingM2 = ALONG_M * (absX + absY);
    const levels = this.#levels;
    const look = (level: number, first: number, end: number): boolean => {
      const boxes = levels[level] as Float64Array;
      for (let i = first; i < end; i++) {
        const [boxWest, boxSouth] = [boxes[4 * i] as number, boxes[4 * i + 1] as number];
        const [boxEast, boxNorth] = [boxes[4 * i + 2] as number, boxes[4 * i + 3] as number];
        if (boxWest > east || boxEast < west || boxSouth > north || boxNorth < south) continue;
        // The middle of a box that lies wholly beside the line is farther from it than the box is deep that way.
        const [midX, midY] = [(boxWest + boxEast) / 2 - from.xM, (boxSouth + boxNorth) / 2 - from.yM];
        const deep = (absX * (boxNorth - boxSouth) + absY * (boxEast - boxWest)) / 2;
        if (Math.abs(dx * midY - dy * midX) > deep + roundingM2) continue;
        if (level === 0 ? test(this.edges[i] as Edge) : look(level - 1, i * RUN, this.#end(level, i)))
          return true;
      }
      return false;
    };
    const top = levels.length - 1;
    return look(top, 0, (levels[top] as Float64Array).length / 4);
  }

  /** Whether any two edges whose boxes meet pass the test; each pair is asked once, the earlier edge first. */
  somePair(test: (a: Edge, b: Edge) => boolean): boolean {
    const levels = this.#levels;
    const across = (level: number, i: number, j: number): boolean => {
      if (!boxesMeet(levels[level] as Float64Array, i, j)) return false;
      if (level === 0) return test(this.edges[i] as Edge, this.edges[j] as Edge);
      const [endI, endJ] = [this.#end(level, i), this.#end(level, j)];
      for (let a = i * RUN; a < endI; a++) {
        for (let b = j * RUN; b < endJ; b++) if (across(level - 1, a, b)) return true;
      }
      return false;
    };
    const within = (level: number, from: number, to: number): boolean => {
      for (let i = from; i < to; i++) {
        if (level > 0 && within(level - 1, i * RUN, this.#end(level, i))) return true;
        for (let j = i + 1; j < to; j++) if (across(level, i, j)) return true;
      }
      return false;
    };
    const top = levels.length - 1;
    return within(top, 0, (levels[top] as Float64Array).length / 4);
  }

  /** Where the boxes below a box end. */
  #end(level: number, i: number): number {
    return Math.min((i + 1) * RUN, (this.#levels[level - 1] as Float64Array).length / 4);
  }
}

function boxesMeet(boxes: Float64Array, i: number, j: number): boolean {
  return (
    (boxes[4 * i] as number) <= (boxes[4 * j + 2] as number) &&
    (boxes[4 * j] as number) <= (boxes[4 * i + 2] as number) &&
    (boxes[4 * i + 1] as number) <= (boxes[4 * j + 3] as number) &&
    (boxes[4 * j + 1] as number) <= (boxes[4 * i + 3] as number)
  );
}

function boxesOfRuns(below: Float64Array): Float64Array {
  const count = Math.ceil(below.length / (4 * RUN));
  const boxes = new Float64Array(4 * count);
  for (let i = 0; i < count; i++) {
    let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
    for (let k = 4 * RUN * i; k < Math.min(4 * RUN * (i + 1), below.length); k += 4) {
      west = Math.min(west, below[k] as number);
      south = Math.min(south, below[k + 1] as number);
      east = Math.max(east, below[k + 2] as number);
      north = Math.max(north, below[k + 3] as number);
    }
    boxes[4 * i] = west;
    boxes[4 * i + 1] = south;
    boxes[4 * i + 2] = east;
    boxes[4 * i + 3] = north;
  }
  return boxes;
}
