import type { BarrierCorner, SightLines } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';

/** A place the shortest ways from one start bend at, the start itself first. */
export interface Bend {
  readonly at: YardPoint;
  /** Length of the shortest way there. */
  readonly soFarM: number;
  /** The bend before it, by its place among the bends; -1 at the start. */
  readonly via: number;
  /** Where a way that came here may go on to. */
  readonly wedge: Wedge;
}

/**
 * Shortest ways from one start to every corner they bend at, nearest first.
 *
 * A way bends only at corners that stick out of the barriers, touches them there from one side, and turns towards
 * them: it goes on in the wedge between straight ahead and the edge it is laid round.
 * @param start inside no barrier
 * Accuracy: exact but for the rounding of sums of lengths
 * Cost: corners squared in comparisons of a few nanoseconds, with few lines of sight asked
 * Source: Lozano-Perez & Wesley 1979, visibility graph; Dijkstra 1959
 */
export function bendTree(lines: SightLines, start: YardPoint): readonly Bend[] {
  const open = lines.corners.filter(sticksOut).map((corner): OpenCorner => {
    return { corner, x: corner.at.xM, y: corner.at.yM, soFarM: Infinity, via: -1 };
  });
  const bends: Bend[] = [{ at: start, soFarM: 0, via: -1, wedge: ALL_ROUND }];
  for (let here = 0; here < bends.length; here++) {
    const { at, soFarM, wedge } = bends[here] as Bend;
    for (const each of open) {
      const [dx, dy] = [each.x - at.xM, each.y - at.yM];
      if (!isInWedge(wedge, dx, dy)) continue;
      const throughM = soFarM + Math.sqrt(dx * dx + dy * dy);
      if (throughM >= each.soFarM || !liesAgainst(each.corner, dx, dy)) continue;
      if (lines.isClear(at, each.corner.at)) [each.soFarM, each.via] = [throughM, here];
    }
    const next = takeNearest(open);
    if (next === undefined) break;
    const from = (bends[next.via] as Bend).at;
    bends.push({
      at: next.corner.at,
      soFarM: next.soFarM,
      via: next.via,
      wedge: wedgeAt(next.corner, from),
    });
  }
  return bends;
}

/** A corner no way has come to for good. */
interface OpenCorner {
  readonly corner: BarrierCorner;
  readonly x: number;
  readonly y: number;
  soFarM: number;
  via: number;
}

/** Directions on the `side` of `ahead` (1 = left, -1 = right) with both edges of the corner on that side of them. */
export interface Wedge {
  readonly side: number;
  readonly aheadX: number;
  readonly aheadY: number;
  readonly beforeX: number;
  readonly beforeY: number;
  readonly afterX: number;
  readonly afterY: number;
}

const ALL_ROUND: Wedge = { side: 0, aheadX: 0, aheadY: 0, beforeX: 0, beforeY: 0, afterX: 0, afterY: 0 };

/** Products of lengths below this, m², say nothing of the side: what is left in doubt is asked exactly. */
const NO_SIDE_M2 = 1e-7;

/** Whether a shortest way may go on in a direction; what is on the border of the wedge may. */
export function isInWedge(wedge: Wedge, dx: number, dy: number): boolean {
  const { side } = wedge;
  return (
    side * (wedge.aheadX * dy - wedge.aheadY * dx) >= -NO_SIDE_M2 &&
    side * (dx * wedge.afterY - dy * wedge.afterX) >= -NO_SIDE_M2 &&
    side * (dx * wedge.beforeY - dy * wedge.beforeX) >= -NO_SIDE_M2
  );
}

/** Where a way from a place that touches the corner may go on. */
function wedgeAt({ at, before, after }: BarrierCorner, from: YardPoint): Wedge {
  const [aheadX, aheadY] = [at.xM - from.xM, at.yM - from.yM];
  const [beforeX, beforeY] = [before.xM - at.xM, before.yM - at.yM];
  const [afterX, afterY] = [after.xM - at.xM, after.yM - at.yM];
  // One of the edges may lie on the way that comes: then the other tells.
  const left = aheadX * (beforeY + afterY) - aheadY * (beforeX + afterX);
  return { side: left < 0 ? -1 : 1, aheadX, aheadY, beforeX, beforeY, afterX, afterY };
}

/** Whether the barrier at a corner lies wholly on one side of a line that comes there. */
function liesAgainst({ at, before, after }: BarrierCorner, dx: number, dy: number): boolean {
  const b = dx * (before.yM - at.yM) - dy * (before.xM - at.xM);
  const a = dx * (after.yM - at.yM) - dy * (after.xM - at.xM);
  return !((b > NO_SIDE_M2 && a < -NO_SIDE_M2) || (b < -NO_SIDE_M2 && a > NO_SIDE_M2));
}

function sticksOut({ at, before, after }: BarrierCorner): boolean {
  const turn = (at.xM - before.xM) * (after.yM - at.yM) - (at.yM - before.yM) * (after.xM - at.xM);
  return turn > 0;
}

/** Takes the nearest that is reached out of the list; undefined when none is. */
function takeNearest(open: OpenCorner[]): OpenCorner | undefined {
  let nearest = -1;
  let leastM = Infinity;
  for (let i = 0; i < open.length; i++) {
    const { soFarM } = open[i] as OpenCorner;
    if (soFarM < leastM) [nearest, leastM] = [i, soFarM];
  }
  if (nearest < 0) return undefined;
  const taken = open[nearest];
  open[nearest] = open.at(-1) as OpenCorner;
  open.pop();
  return taken;
}
