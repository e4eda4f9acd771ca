import type { LonLat } from '../../../../core/spaces.ts';

/** From the file's coordinates to the globe; not finite where that fails. */
export type ToLonLat = (x: number, y: number) => LonLat;

/** What is wrong with positions: a ring that is no ring, or a place where no yard can be. */
export type PositionFault =
  | { readonly kind: 'broken'; readonly detail: string }
  | { readonly kind: 'out-of-range'; readonly swappedLikely: boolean };

/** Nearer to a pole than this no yard is looked after, and latitude and longitude have been exchanged. */
const MOST_LATITUDE_DEG = 84;
/** Enough to name the fault. */
const LONGEST_QUOTE = 40;

/**
 * A closed ring of four or more positions (RFC 7946, 3.1.6) as an open one on the globe. Either direction is
 * accepted, as the RFC asks of readers; a third number (height) is dropped.
 */
export function readRing(value: unknown, toLonLat: ToLonLat): readonly LonLat[] | PositionFault {
  if (!Array.isArray(value)) return broken('it has no list of positions');
  if (value.length < 4) return broken(`it has ${value.length} positions and needs at least 4`);
  const points: LonLat[] = [];
  for (const position of value) {
    const point = readPosition(position, toLonLat);
    if ('kind' in point) return point;
    points.push(point);
  }
  const first = value[0] as readonly number[];
  const last = value[value.length - 1] as readonly number[];
  if (first[0] !== last[0] || first[1] !== last[1]) {
    return broken('it is not closed; its last position is not its first');
  }
  return withoutRepeats(points);
}

export function readPosition(value: unknown, toLonLat: ToLonLat): LonLat | PositionFault {
  const [x, y] = Array.isArray(value) ? (value as unknown[]) : [];
  if (typeof x !== 'number' || typeof y !== 'number' || !Number.isFinite(x) || !Number.isFinite(y)) {
    return broken(`${quoted(value)} is not a position of two numbers`);
  }
  const point = toLonLat(x, y);
  if (Math.abs(point.lonDeg) <= 180 && Math.abs(point.latDeg) <= MOST_LATITUDE_DEG) return point;
  // Longitude first is the rule; where the second number cannot be a latitude but the first can, they stand
  // the other way round.
  const swappedLikely =
    Math.abs(y) <= 180 && Math.abs(y) > MOST_LATITUDE_DEG && Math.abs(x) <= MOST_LATITUDE_DEG;
  return { kind: 'out-of-range', swappedLikely };
}

/** The closing position and any immediate repeat are dropped; they are no corners. */
function withoutRepeats(points: readonly LonLat[]): readonly LonLat[] {
  return points.filter((point, at) => {
    const next = points[(at + 1) % points.length];
    return point.lonDeg !== next?.lonDeg || point.latDeg !== next.latDeg;
  });
}

function broken(detail: string): PositionFault {
  return { kind: 'broken', detail };
}

function quoted(value: unknown): string {
  const isShort =
    Array.isArray(value) && value.length <= 4 && value.every((each) => typeof each !== 'object');
  return isShort ? JSON.stringify(value).slice(0, LONGEST_QUOTE) : 'one of its entries';
}
