import type { Ring } from '../spaces.ts';
import { levelsOf, type SweepEdges, sweepEdges } from './sweepEdges.ts';

/** Told, from west to east and south to north, which layers are entered and left, and the ground between. */
export interface SweepTally {
  /** The layer begins or ends here; every layer begins again in every band. */
  readonly cross: (layer: number, isIn: boolean) => void;
  /** Ground in exactly the layers that have begun and not ended. */
  readonly add: (areaM2: number) => void;
}

/** Levels nearer to one another than this bound one band: what lies between is measured with its neighbour. */
const THINNEST_M = 1e-11;

/**
 * Measures ground by which of many layers it is in, without making the pieces: the plane is cut into bands at every
 * corner and every crossing, so that within a band no two edges cross and each stretch between two of them grows or
 * shrinks straight; its area is the height of the band times the stretch in the middle. Edges that coincide bound a
 * stretch of no width, so that nothing has to be decided about them, and no grid is needed.
 *
 * @param layers each the rings round which its ground lies: a spot is in it when they wind round the spot, in sum,
 *   other than 0 times. A region's outer ring and holes are one layer; overlapping pieces that run the same way too
 * Accuracy: rounding of a double; checked against closed forms and GEOS in tests/oracle/sweepLayers.test.ts
 * Cost: edges times the edges beside them to find crossings; corners and crossings times edges on one level to measure
 * Source: trapezoidal decomposition; a length linear in height is integrated exactly by its middle (midpoint rule)
 */
export function sweepLayers(layers: readonly (readonly Ring[])[], tally: SweepTally): void {
  const edges = sweepEdges(layers);
  const levels = levelsOf(edges);
  const winds = new Int32Array(layers.length);
  const row = new Row(edges);
  let lowM = levels[0] ?? 0;
  for (const highM of levels) {
    if (highM - lowM <= THINNEST_M) continue;
    row.moveTo((lowM + highM) / 2);
    measureBand(edges, row, highM - lowM, winds, tally);
    lowM = highM;
  }
}

function measureBand(
  { layer, turn }: SweepEdges,
  { ids, xM, count }: Row,
  heightM: number,
  winds: Int32Array,
  { cross, add }: SweepTally,
): void {
  let beforeM = 0;
  let open = 0;
  for (let place = 0; place < count; place++) {
    const edge = ids[place] as number;
    const hereM = xM[edge] as number;
    if (open > 0 && hereM > beforeM) add((hereM - beforeM) * heightM);
    beforeM = hereM;
    const at = layer[edge] as number;
    const was = winds[at] as number;
    const is = was + (turn[edge] as number);
    winds[at] = is;
    if (was === 0) {
      open++;
      cross(at, true);
    } else if (is === 0) {
      open--;
      cross(at, false);
    }
  }
}

/** The edges on one level from west to east. From level to level few change, so each is found near its old place. */
class Row {
  readonly ids: Int32Array;
  /** Where each edge is, by its number. */
  readonly xM: Float64Array;
  count = 0;
  #next = 0;
  readonly #edges: SweepEdges;

  constructor(edges: SweepEdges) {
    this.#edges = edges;
    this.ids = new Int32Array(edges.count);
    this.xM = new Float64Array(edges.count);
  }

  moveTo(levelM: number): void {
    const { lowM, highM, count } = this.#edges;
    const before = this.count;
    this.count = 0;
    for (let place = 0; place < before; place++) {
      const edge = this.ids[place] as number;
      if ((highM[edge] as number) > levelM) this.#put(edge, levelM);
    }
    for (; this.#next < count && (lowM[this.#next] as number) < levelM; this.#next++) {
      if ((highM[this.#next] as number) > levelM) this.#put(this.#next, levelM);
    }
  }

  /** Puts an edge in order among those already put. */
  #put(edge: number, levelM: number): void {
    const { lowM, fromXM, slope } = this.#edges;
    const { ids, xM } = this;
    const hereM = (fromXM[edge] as number) + (slope[edge] as number) * (levelM - (lowM[edge] as number));
    xM[edge] = hereM;
    let place = this.count++;
    while (place > 0 && (xM[ids[place - 1] as number] as number) > hereM) {
      ids[place] = ids[place - 1] as number;
      place--;
    }
    ids[place] = edge;
  }
}
