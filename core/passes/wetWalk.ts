import { BoxIndex, distanceM, type RingBounds } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Pass } from './pass.ts';

/** Feet this near to the edge of a swath keep off it, as a part of the swath: some 4 cm of 1.8 m. */
const EDGE_PART = 0.02;
/** Points nearer than this are one. */
const SAME_M = 1e-9;

/** A pass as far as feet go: what of it counts for where they tread. */
export type TroddenPass = Pick<Pass, 'line' | 'sectionId' | 'round'>;

/** A straight piece of a pass. */
interface Strip {
  readonly a: YardPoint;
  readonly b: YardPoint;
  /** Place of its pass in the order walked. */
  readonly pass: number;
  /** Whether the pass goes on beyond `b` in another direction: the ground outside the turn is treated too. */
  readonly turns: boolean;
}

/** From and to, in metres along a straight way. */
type Stretch = readonly [number, number];

/**
 * Metres walked over turf that an earlier pass has treated: on the ways between passes and on the passes themselves.
 *
 * Not counted are a pass's own swath, the first half swath of the way off a pass over its swath (nobody leaves a
 * ring without it), and in the second of two rounds what the first has treated of the same section: it is meant to be
 * walked over.
 *
 * @param passes in walking order
 * @param ways the way to each pass from the one before, and after them perhaps one to where the walk ends; null where
 *   nothing is walked
 * @returns metres for each of `ways`, with those of the pass it leads to
 * Accuracy: exact for straight pieces; at a turn within a pass all ground within half a swath counts as treated
 * Cost: pieces times those near them
 */
export function wetWalkM(
  passes: readonly TroddenPass[],
  ways: readonly (readonly YardPoint[] | null)[],
  swathM: number,
): number[] {
  const strips = new BoxIndex(
    passes.flatMap(({ line }, pass) => stripsOf(line, pass)),
    ({ a, b }) => boxOf(a, b, swathM / 2),
  );
  const isDry = (strip: Strip, walked: number): boolean => {
    const [own, now] = [passes[strip.pass] as TroddenPass, passes[Math.min(walked, passes.length - 1)]];
    return strip.pass >= walked || (own.sectionId === now?.sectionId && own.round !== now.round);
  };
  const alongM = (line: readonly YardPoint[], walked: number, isOff: boolean): number => {
    let wetM = 0;
    let goneM = 0;
    line.forEach((to, i) => {
      const from = line[i - 1];
      if (from === undefined) return;
      const wet = strips.meeting(boxOf(from, to, 0)).flatMap((strip) => {
        if (isDry(strip, walked)) return [];
        const freeM = isOff && strip.pass === walked - 1 ? swathM / 2 - goneM : 0;
        return wetStretches(from, to, strip, swathM).flatMap(([start, end]): Stretch[] =>
          end > freeM ? [[Math.max(start, freeM), end]] : [],
        );
      });
      wetM += unionLengthM(wet);
      goneM += distanceM(from, to);
    });
    return wetM;
  };
  return ways.map((way, walked) => {
    const line = passes[walked]?.line;
    return (
      (way === null ? 0 : alongM(way, walked, true)) + (line === undefined ? 0 : alongM(line, walked, false))
    );
  });
}

function boxOf(a: YardPoint, b: YardPoint, roomM: number): RingBounds {
  return {
    minXM: Math.min(a.xM, b.xM) - roomM,
    minYM: Math.min(a.yM, b.yM) - roomM,
    maxXM: Math.max(a.xM, b.xM) + roomM,
    maxYM: Math.max(a.yM, b.yM) + roomM,
  };
}

/** The straight pieces of a pass. */
function stripsOf(line: readonly YardPoint[], pass: number): Strip[] {
  const [first, last] = [line[0], line.at(-1)];
  const closes =
    first !== undefined && last !== undefined && line.length > 3 && distanceM(first, last) < SAME_M;
  return line.flatMap((b, i) => {
    const a = line[i - 1];
    if (a === undefined || distanceM(a, b) < SAME_M) return [];
    return [{ a, b, pass, turns: i + 1 < line.length || closes }];
  });
}

/** Where along a straight way feet are on the swath of a strip. */
function wetStretches(from: YardPoint, to: YardPoint, strip: Strip, swathM: number): Stretch[] {
  const lengthM = distanceM(from, to);
  if (lengthM < SAME_M) return [];
  const { a, b } = strip;
  const stripM = distanceM(a, b);
  const [dx, dy] = [(to.xM - from.xM) / lengthM, (to.yM - from.yM) / lengthM];
  const [ux, uy] = [(b.xM - a.xM) / stripM, (b.yM - a.yM) / stripM];
  const [px, py] = [from.xM - a.xM, from.yM - a.yM];
  const edgeM = EDGE_PART * swathM;
  const halfM = swathM / 2 - edgeM;
  // Along the strip it counts from end to end, across it to half a swath on both sides.
  const along = within(px * ux + py * uy, dx * ux + dy * uy, edgeM, stripM - edgeM, [0, lengthM]);
  const both = along && within(py * ux - px * uy, dy * ux - dx * uy, -halfM, halfM, along);
  const round = strip.turns ? nearPoint(from.xM - b.xM, from.yM - b.yM, dx, dy, halfM, lengthM) : null;
  return [both, round].filter((stretch) => stretch !== null);
}

/** Where along a way of a length and a direction, that begins at (x, y), the origin is within reach. */
function nearPoint(
  x: number,
  y: number,
  dx: number,
  dy: number,
  reachM: number,
  lengthM: number,
): Stretch | null {
  const middleM = -(x * dx + y * dy);
  const left = reachM * reachM - (x * x + y * y - middleM * middleM);
  if (left <= 0) return null;
  const [start, end] = [Math.max(0, middleM - Math.sqrt(left)), Math.min(lengthM, middleM + Math.sqrt(left))];
  return end > start ? [start, end] : null;
}

/** The part of a stretch in which a value that begins at `at` and rises by `rise` a metre lies between two bounds. */
function within(at: number, rise: number, low: number, high: number, [fromM, toM]: Stretch): Stretch | null {
  if (high <= low) return null;
  if (Math.abs(rise) < 1e-12) return at > low && at < high ? [fromM, toM] : null;
  const [p, q] = [(low - at) / rise, (high - at) / rise];
  const [start, end] = [Math.max(fromM, Math.min(p, q)), Math.min(toM, Math.max(p, q))];
  return end > start ? [start, end] : null;
}

/** Length under any of some stretches. */
function unionLengthM(stretches: readonly Stretch[]): number {
  let lengthM = 0;
  let reachedM = -Infinity;
  for (const [from, to] of stretches.toSorted((p, q) => p[0] - q[0])) {
    lengthM += Math.max(0, to - Math.max(from, reachedM));
    reachedM = Math.max(reachedM, to);
  }
  return lengthM;
}
