import { orient2d } from 'robust-predicates';
import type { Ring, YardPoint } from '../spaces.ts';

/**
 * A place where a ring crosses or touches itself; undefined when it is simple. Neighbouring edges may share
 * their corner, but not run back over each other. Repeated corners in a row are taken as one.
 *
 * Accuracy: whether edges meet is decided by exact predicates; the place itself is rounded
 * Cost: edges sorted by their west end; only edges that overlap east to west are compared
 * Source: Shewchuk 1997, adaptive precision orientation predicate
 */
export function findCrossing(ring: Ring): YardPoint | undefined {
  const corners = ring.filter((corner, i) => !same(corner, ring[(i + 1) % ring.length] as YardPoint));
  const edges = corners
    .map((from, i) => edge(from, corners[(i + 1) % corners.length] as YardPoint, i))
    .sort((a, b) => a.west - b.west);
  for (let i = 0; i < edges.length; i++) {
    const a = edges[i] as Edge;
    for (let j = i + 1; j < edges.length; j++) {
      const b = edges[j] as Edge;
      if (b.west > a.east) break;
      if (a.north < b.south || b.north < a.south) continue;
      const place = meeting(a, b, corners.length);
      if (place !== undefined) return place;
    }
  }
  return undefined;
}

interface Edge {
  readonly from: YardPoint;
  readonly to: YardPoint;
  readonly at: number;
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

function edge(from: YardPoint, to: YardPoint, at: number): Edge {
  return {
    from,
    to,
    at,
    west: Math.min(from.xM, to.xM),
    east: Math.max(from.xM, to.xM),
    south: Math.min(from.yM, to.yM),
    north: Math.max(from.yM, to.yM),
  };
}

function meeting(a: Edge, b: Edge, count: number): YardPoint | undefined {
  if ((a.at + 1) % count === b.at) return foldsBack(a, b);
  if ((b.at + 1) % count === a.at) return foldsBack(b, a);
  const fromSide = side(a, b.from);
  const toSide = side(a, b.to);
  if (fromSide * toSide > 0) return undefined;
  const backFrom = side(b, a.from);
  const backTo = side(b, a.to);
  if (backFrom * backTo > 0) return undefined;
  if (fromSide === 0 && toSide === 0) {
    return [b.from, b.to, a.from, a.to].find((point) => within(a, point) && within(b, point));
  }
  const share = fromSide / (fromSide - toSide);
  return {
    xM: b.from.xM + share * (b.to.xM - b.from.xM),
    yM: b.from.yM + share * (b.to.yM - b.from.yM),
  };
}

/** Edge b follows a: they share a corner, and only running straight back over a is a meeting. */
function foldsBack(a: Edge, b: Edge): YardPoint | undefined {
  if (side(a, b.to) !== 0) return undefined;
  const along = (a.to.xM - a.from.xM) * (b.to.xM - b.from.xM) + (a.to.yM - a.from.yM) * (b.to.yM - b.from.yM);
  return along < 0 ? a.to : undefined;
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
