import type { Ring, YardPoint } from '../spaces.ts';

/** Edges that are not level, from the lowest start up, as columns: there are thousands, asked about again and again. */
export interface SweepEdges {
  readonly count: number;
  readonly lowM: Float64Array;
  readonly highM: Float64Array;
  /** x at the low end. */
  readonly fromXM: Float64Array;
  /** x gained for each metre up. */
  readonly slope: Float64Array;
  readonly layer: Int32Array;
  /** 1 where the ring runs down, so that its ground lies to the east; -1 where it runs up. */
  readonly turn: Int8Array;
}

export function sweepEdges(layers: readonly (readonly Ring[])[]): SweepEdges {
  const found: { low: YardPoint; high: YardPoint; layer: number; turn: number }[] = [];
  for (const [layer, rings] of layers.entries()) {
    for (const ring of rings) {
      let a = ring.at(-1) as YardPoint;
      for (const b of ring) {
        if (a.yM < b.yM) found.push({ low: a, high: b, layer, turn: -1 });
        else if (a.yM > b.yM) found.push({ low: b, high: a, layer, turn: 1 });
        a = b;
      }
    }
  }
  found.sort((p, q) => p.low.yM - q.low.yM);
  const lowM = Float64Array.from(found, ({ low }) => low.yM);
  const highM = Float64Array.from(found, ({ high }) => high.yM);
  const fromXM = Float64Array.from(found, ({ low }) => low.xM);
  const slope = Float64Array.from(found, ({ low, high }) => (high.xM - low.xM) / (high.yM - low.yM));
  const layer = Int32Array.from(found, (edge) => edge.layer);
  const turn = Int8Array.from(found, (edge) => edge.turn);
  return { count: found.length, lowM, highM, fromXM, slope, layer, turn };
}

/** Heights of all ends and crossings of edges, rising; some may be there more than once. */
export function levelsOf(edges: SweepEdges): Float64Array {
  const { count, lowM, highM } = edges;
  const levels: number[] = [];
  const beside = new Int32Array(count);
  let kept = 0;
  for (let edge = 0; edge < count; edge++) {
    const startM = lowM[edge] as number;
    levels.push(startM, highM[edge] as number);
    let left = 0;
    for (let place = 0; place < kept; place++) {
      const other = beside[place] as number;
      if ((highM[other] as number) <= startM) continue;
      beside[left++] = other;
      const levelM = crossingLevelM(edges, edge, other);
      if (levelM !== undefined) levels.push(levelM);
    }
    beside[left] = edge;
    kept = left + 1;
  }
  return Float64Array.from(levels).sort();
}

/** Where two edges that both reach up from the start of the first cross between their ends. */
function crossingLevelM(
  { lowM, highM, fromXM, slope }: SweepEdges,
  edge: number,
  other: number,
): number | undefined {
  const startM = lowM[edge] as number;
  const endM = Math.min(highM[edge] as number, highM[other] as number);
  const steep = slope[edge] as number;
  const otherSteep = slope[other] as number;
  const otherXM = (fromXM[other] as number) + otherSteep * (startM - (lowM[other] as number));
  const apartM = otherXM - (fromXM[edge] as number);
  const closing = steep - otherSteep;
  // Beside one another at both ends: no crossing, and most pairs are that.
  const apartAtEndM = apartM - closing * (endM - startM);
  if (apartM > 0 === apartAtEndM > 0 || closing === 0) return undefined;
  const levelM = startM + apartM / closing;
  return levelM > startM && levelM < endM ? levelM : undefined;
}
