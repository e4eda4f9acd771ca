import { orient2d } from 'robust-predicates';
import type { Ring, YardPoint } from '../spaces.ts';
import { type Edge, EdgeTree, edgesOf } from './EdgeTree.ts';

/**
 * A place where a ring crosses or touches itself; undefined when it is simple. Neighbouring edges may share
 * their corner, but not run back over each other. Repeated corners in a row are taken as one.
 *
 * @param ring finite coordinates
 * Accuracy: whether edges meet is decided by exact predicates; the place itself is rounded
 * Cost: n log n, and one test for every two edges whose boxes meet
 * Source: Shewchuk 1997, adaptive precision orientation predicate
 */
export function findCrossing(ring: Ring): YardPoint | undefined {
  let place: YardPoint | undefined;
  someCrossing(ring, (_, __, at) => {
    place = at;
    return true;
  });
  return place;
}

/**
 * Goes through the pairs of edges of a ring that cross or touch where they may not, until one is accepted.
 *
 * @param accept told both edges by the corner each begins at, the lower first, and where they meet
 * @returns whether one was accepted
 */
export function someCrossing(
  ring: Ring,
  accept: (edge: number, other: number, at: YardPoint) => boolean,
): boolean {
  const kept = [...ring.keys()].filter(
    (i) => !same(ring[i] as YardPoint, ring[(i + 1) % ring.length] as YardPoint),
  );
  if (kept.length < 3) return false;
  const corners = kept.map((i) => ring[i] as YardPoint);
  let accepted = false;
  new EdgeTree(edgesOf(corners)).somePair((a, b) => {
    const at = meeting(a, b, corners.length);
    if (at === undefined) return false;
    const [one, other] = [kept[a.at] as number, kept[b.at] as number];
    accepted = accept(Math.min(one, other), Math.max(one, other), at);
    return accepted;
  });
  return accepted;
}

/** Where two edges meet, ends included; undefined when they do not. */
export function edgesMeet(a: Edge, b: Edge): YardPoint | undefined {
  const fromSide = side(a, b.from);
  const toSide = side(a, b.to);
  if (sameSide(fromSide, toSide)) return undefined;
  const backFrom = side(b, a.from);
  const backTo = side(b, a.to);
  if (sameSide(backFrom, backTo)) return undefined;
  if (fromSide === 0 && toSide === 0) {
    return [b.from, b.to, a.from, a.to].find((point) => within(a, point) && within(b, point));
  }
  const share = fromSide / (fromSide - toSide);
  return {
    xM: b.from.xM + share * (b.to.xM - b.from.xM),
    yM: b.from.yM + share * (b.to.yM - b.from.yM),
  };
}

function meeting(a: Edge, b: Edge, count: number): YardPoint | undefined {
  if ((a.at + 1) % count === b.at) return foldsBack(a, b);
  if ((b.at + 1) % count === a.at) return foldsBack(b, a);
  return edgesMeet(a, b);
}

/** Edge b follows a: they share a corner, and only running straight back over a is a meeting. */
function foldsBack(a: Edge, b: Edge): YardPoint | undefined {
  if (side(a, b.to) !== 0) return undefined;
  const along = (a.to.xM - a.from.xM) * (b.to.xM - b.from.xM) + (a.to.yM - a.from.yM) * (b.to.yM - b.from.yM);
  return along < 0 ? a.to : undefined;
}

/** By sign, not by product: the product of two tiny values would underflow to nought. */
function sameSide(a: number, b: number): boolean {
  return (a > 0 && b > 0) || (a < 0 && b < 0);
}

function side(line: Edge, point: YardPoint): number {
  return orient2d(line.from.xM, line.from.yM, line.to.xM, line.to.yM, point.xM, point.yM);
}

function within(box: Edge, point: YardPoint): boolean {
  return point.xM >= box.west && point.xM <= box.east && point.yM >= box.south && point.yM <= box.north;
}

function same(a: YardPoint, b: YardPoint): boolean {
  return a.xM === b.xM && a.yM === b.yM;
}
