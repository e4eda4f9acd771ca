/**
 * Areas of combinations of rings, by another way than any overlay: the plane is cut into upright slabs at every corner
 * and every crossing, so that within a slab no two edges cross and what is covered grows or shrinks straight; its area
 * is then its width times what is covered in its middle. Exact but for rounding.
 */

/** Corners as x, y, x, y, …; even-odd. */
export type FlatRing = Float64Array;

interface Edge {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly bit: number;
}

/**
 * @param rings at most 16
 * @param wanted for each area, for each set of rings a point may lie in (bit i = ring i), 1 if it counts
 */
export function slabAreas(rings: readonly FlatRing[], wanted: readonly Uint8Array[]): number[] {
  const edges = rings.flatMap((ring, i) => edgesOf(ring, 1 << i));
  edges.sort((a, b) => a.ax - b.ax);
  const cuts = cutsOf(edges);
  const areas = wanted.map(() => 0);
  const ys: number[] = [];
  const bits: number[] = [];
  let first = 0;
  for (let k = 1; k < cuts.length; k++) {
    const [west, east] = [cuts[k - 1] as number, cuts[k] as number];
    if (east - west < 1e-12) continue;
    const x = (west + east) / 2;
    ys.length = 0;
    bits.length = 0;
    while (first < edges.length && (edges[first] as Edge).bx <= west) first++;
    for (let i = first; i < edges.length; i++) {
      const edge = edges[i] as Edge;
      if (edge.ax >= x) break;
      if (edge.bx <= x) continue;
      insert(ys, bits, edge.ay + ((edge.by - edge.ay) * (x - edge.ax)) / (edge.bx - edge.ax), edge.bit);
    }
    let set = 0;
    for (let i = 0; i + 1 < ys.length; i++) {
      set ^= bits[i] as number;
      const coveredM2 = ((ys[i + 1] as number) - (ys[i] as number)) * (east - west);
      for (let want = 0; want < wanted.length; want++) {
        if (wanted[want]?.[set] === 1) areas[want] = (areas[want] as number) + coveredM2;
      }
    }
  }
  return areas;
}

/** Edges from west to east; upright ones bound no slab. */
function edgesOf(ring: FlatRing, bit: number): Edge[] {
  const edges: Edge[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    const [x, y, u, v] = [ring[i], ring[i + 1], ring[j], ring[j + 1]] as [number, number, number, number];
    if (x < u) edges.push({ ax: x, ay: y, bx: u, by: v, bit });
    else if (u < x) edges.push({ ax: u, ay: v, bx: x, by: y, bit });
  }
  return edges;
}

function cutsOf(edges: readonly Edge[]): Float64Array {
  const xs: number[] = [];
  for (let i = 0; i < edges.length; i++) {
    const e = edges[i] as Edge;
    xs.push(e.ax, e.bx);
    for (let j = i + 1; j < edges.length; j++) {
      const f = edges[j] as Edge;
      if (f.ax >= e.bx) break;
      const x = crossingX(e, f);
      if (x > f.ax && x < Math.min(e.bx, f.bx)) xs.push(x);
    }
  }
  return Float64Array.from(xs).sort();
}

/** Where two edges have one height; NaN where they are parallel. */
function crossingX(e: Edge, f: Edge): number {
  const slopeE = (e.by - e.ay) / (e.bx - e.ax);
  const slopeF = (f.by - f.ay) / (f.bx - f.ax);
  return (f.ay - e.ay + slopeE * e.ax - slopeF * f.ax) / (slopeE - slopeF);
}

function insert(ys: number[], bits: number[], y: number, bit: number): void {
  let at = ys.length;
  while (at > 0 && (ys[at - 1] as number) > y) at--;
  ys.splice(at, 0, y);
  bits.splice(at, 0, bit);
}
