/** A ring as x and y in turn: [x0, y0, x1, y1, …], open. */
export type FlatRing = readonly number[];

/** A directed line through (x, y) along (dx, dy). */
export interface Line {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}

/**
 * The part of each ring left of a line (right of it with `side` -1), its edge included. Where a ring leaves and
 * comes back, the result runs along the line there and back, so signed areas are exact and shapes are not.
 *
 * Source: one step of Sutherland and Hodgman 1974 (Communications of the ACM 17)
 */
export function clipRings(rings: readonly FlatRing[], line: Line, side: 1 | -1): FlatRing[] {
  const kept: FlatRing[] = [];
  for (const ring of rings) {
    const clipped = clipRing(ring, line, side);
    // Two corners hold no area; they are what is left of a ring that only touches the line.
    if (clipped.length >= 6) kept.push(clipped);
  }
  return kept;
}

function clipRing(ring: FlatRing, { x, y, dx, dy }: Line, side: 1 | -1): FlatRing {
  const clipped: number[] = [];
  const count = ring.length;
  let ax = ring[count - 2] as number;
  let ay = ring[count - 1] as number;
  let a = side * (dx * (ay - y) - dy * (ax - x));
  for (let i = 0; i < count; i += 2) {
    const bx = ring[i] as number;
    const by = ring[i + 1] as number;
    const b = side * (dx * (by - y) - dy * (bx - x));
    if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
      // From the lower to the higher end whichever way the ring runs, so that both sides cut at the same place.
      const [share, px, py, qx, qy] =
        ax < bx || (ax === bx && ay < by) ? [a / (a - b), ax, ay, bx, by] : [b / (b - a), bx, by, ax, ay];
      clipped.push(px + share * (qx - px), py + share * (qy - py));
    }
    if (b >= 0) clipped.push(bx, by);
    [ax, ay, a] = [bx, by, b];
  }
  return clipped;
}

/** Sum of the rings' signed areas: outer rings count, holes take away. */
export function flatAreaM2(rings: readonly FlatRing[]): number {
  let twice = 0;
  for (const ring of rings) {
    const [x0 = 0, y0 = 0] = ring;
    for (let i = 2; i + 3 < ring.length; i += 2) {
      const ax = (ring[i] as number) - x0;
      const ay = (ring[i + 1] as number) - y0;
      twice += ax * ((ring[i + 3] as number) - y0) - ((ring[i + 2] as number) - x0) * ay;
    }
  }
  return twice / 2;
}
