import { distanceM, distanceToEdgeM, isReflex, lineLengthM, regionContains } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { type Edge, edgeGrid } from './edgeGrid.ts';
import { shortestWay } from './shortestWay.ts';

/** Ground that may be walked on, prepared once for many questions. */
export interface Walkable {
  /** The shortest way on the ground, from its first point to its last; straight across when no way joins the two. */
  readonly way: (from: YardPoint, to: YardPoint) => readonly YardPoint[];
  /** Its length. */
  readonly wayM: (from: YardPoint, to: YardPoint) => number;
}

/** A way may touch an edge, and run this far over it. */
const TOUCH_M = 1e-5;
/** Corners a way may bend at; ground with more is answered by the straight line, which is then too short. */
const MOST_BENDS = 3000;

/**
 * Prepares ground for finding ways on it.
 *
 * @param regions ground that may be walked on
 * Accuracy: shortest to 1e-5 m a bend; checked in tests/core/passes/walkInside.test.ts
 * Cost: a question whose straight line is free costs the edges near that line; one whose line is not, a search
 *   over the corners that stick into the ground
 * Source: a shortest way bends only at reflex corners; best-first search with the straight line as bound (A*)
 */
export function makeWalkable(regions: readonly Region[]): Walkable {
  const rings = regions.flatMap((region) => [region.outer, ...region.holes]);
  const edges = rings.flatMap((ring) =>
    ring.map((a, i) => ({ a, b: ring[(i + 1) % ring.length] as YardPoint })),
  );
  const bends = rings.flatMap((ring) => ring.filter((_, i) => isReflex(ring, i)));
  const grid = edgeGrid(edges);
  const seen = new Map<number, boolean>();
  const isFree = (a: YardPoint, b: YardPoint): boolean => {
    const near = grid(a, b);
    if (near.some((edge) => crosses(a, b, edge))) return false;
    // A line may still slip off the ground between two corners it touches: across a hole from corner to corner.
    return middlesBetweenTouches(a, b, near).every(
      (middle) =>
        regions.some((region) => regionContains(region, middle)) ||
        grid(middle, middle).some((edge) => distanceToEdgeM(edge.a, edge.b, middle) <= TOUCH_M),
    );
  };
  const isFreeBetween = (i: number, j: number): boolean => {
    const key = Math.min(i, j) * bends.length + Math.max(i, j);
    let free = seen.get(key);
    if (free === undefined) {
      free = isFree(bends[i] as YardPoint, bends[j] as YardPoint);
      seen.set(key, free);
    }
    return free;
  };
  const way = (from: YardPoint, to: YardPoint): readonly YardPoint[] => {
    const isStraight = distanceM(from, to) < TOUCH_M || bends.length > MOST_BENDS || isFree(from, to);
    return (isStraight ? undefined : shortestWay(from, to, bends, isFree, isFreeBetween)) ?? [from, to];
  };
  return { way, wayM: (from, to) => lineLengthM(way(from, to)) };
}

/** Whether an edge gets in the way: each line has the other's ends clearly on both sides. */
function crosses(p: YardPoint, q: YardPoint, { a, b }: Edge): boolean {
  return parts(p, q, a, b) && parts(a, b, p, q);
}

/** Of the stretches between the corners a line touches, the middles; none when it touches no corner. */
function middlesBetweenTouches(p: YardPoint, q: YardPoint, near: readonly Edge[]): YardPoint[] {
  const lengthM = distanceM(p, q);
  const x = (q.xM - p.xM) / lengthM;
  const y = (q.yM - p.yM) / lengthM;
  const touches: number[] = [];
  for (const { a } of near) {
    const alongM = x * (a.xM - p.xM) + y * (a.yM - p.yM);
    const offM = Math.abs(x * (a.yM - p.yM) - y * (a.xM - p.xM));
    if (offM <= TOUCH_M && alongM >= -TOUCH_M && alongM <= lengthM + TOUCH_M) touches.push(alongM);
  }
  if (touches.length === 0) return [];
  const stops = [0, ...touches, lengthM].sort((a, b) => a - b);
  return stops.flatMap((stop, i) => {
    const before = stops[i - 1];
    if (before === undefined || stop - before <= 2 * TOUCH_M) return [];
    const middleM = (before + stop) / 2;
    return [{ xM: p.xM + x * middleM, yM: p.yM + y * middleM }];
  });
}

function parts(p: YardPoint, q: YardPoint, a: YardPoint, b: YardPoint): boolean {
  const lengthM = distanceM(p, q);
  if (lengthM === 0) return false;
  const x = (q.xM - p.xM) / lengthM;
  const y = (q.yM - p.yM) / lengthM;
  const offA = x * (a.yM - p.yM) - y * (a.xM - p.xM);
  const offB = x * (b.yM - p.yM) - y * (b.xM - p.xM);
  return (offA > TOUCH_M && offB < -TOUCH_M) || (offA < -TOUCH_M && offB > TOUCH_M);
}
