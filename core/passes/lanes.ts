import type { Region, YardPoint } from '../spaces.ts';

/** A straight pass from end to end. */
export type Lane = readonly [YardPoint, YardPoint];

/** Ground wider than whole lanes by less than this part of a swath takes no further lane: it is rounding. */
const SPARE_PART = 0.002;
/** A stretch shorter than this part of a swath is a corner tip that the perimeter pass reaches. */
const SHORTEST_PART = 0.05;
/** How far inside a strip its ground is looked at, as a part of the strip. */
const HAIR_PART = 1e-4;
/** How much of what whole swaths reach over the ground lies on the low side. */
const OVER_PARTS = [0, 0.5, 1];
/** Stretches of one lane nearer than this are one. */
const SAME_M = 1e-6;

/** Across the lanes, where edges lie that the first and the last swath must not hang over; null where none do. */
export interface Rims {
  readonly lowM: number | null;
  readonly highM: number | null;
}

/** What ground takes up along a strip, and across it. */
interface Stretch {
  readonly fromM: number;
  readonly toM: number;
  readonly lowM: number;
  readonly highM: number;
}

/**
 * Parallel lanes that cover every bit of the ground given: strips of one width, not above the swath, each walked
 * along the middle of its ground over the whole stretch where the strip holds some. Of the ways to lay the strips the one with the
 * least walking is taken.
 *
 * Where the ground given lies a swath inside an edge, so does every lane's swath: some ground given lies abreast of
 * every point of a lane, no further than a swath from any spot the lane treats.
 *
 * @param regions ground to cover, each on strips of its own
 * @param laneRad direction of the lanes, counter-clockwise from east
 * @returns lanes from one side to the other
 * Cost: corners plus edge-strip crossings, sorted
 */
export function lanesAcross(
  regions: readonly Region[],
  laneRad: number,
  swathM: number,
  rims: Rims = { lowM: null, highM: null },
): Lane[] {
  const dx = Math.cos(laneRad);
  const dy = Math.sin(laneRad);
  const back = (alongM: number, acrossM: number): YardPoint => ({
    xM: alongM * dx - acrossM * dy,
    yM: alongM * dy + acrossM * dx,
  });
  return regions.flatMap((region) => {
    const edges = turnedEdges(region, dx, dy);
    const lowM = Math.min(...edges.map((edge) => edge.a.acrossM));
    const highM = Math.max(...edges.map((edge) => edge.a.acrossM));
    const lanes = shortest(
      stripings(lowM, highM, swathM).map((strips) => lanesOn(edges, strips, swathM, rims)),
      swathM,
    );
    return lanes.map(({ acrossM, fromM, toM }): Lane => [back(fromM, acrossM), back(toM, acrossM)]);
  });
}

/** Strips of one width side by side. */
interface Strips {
  readonly lowM: number;
  readonly widthM: number;
  readonly count: number;
}

interface TurnedLane {
  readonly acrossM: number;
  readonly fromM: number;
  readonly toM: number;
}

/**
 * The ways to part ground of some width into as few strips as cover it: just wide enough, or of a whole swath and
 * reaching over the ground on the low side, on the high side, or on both. Where ground tapers, the strip that is
 * over is then a short one, and the long ones do not overlap.
 */
function stripings(lowM: number, highM: number, swathM: number): Strips[] {
  const count = Math.max(1, Math.ceil((highM - lowM) / swathM - SPARE_PART));
  const even = { lowM, widthM: (highM - lowM) / count, count };
  const overM = count * swathM - (highM - lowM);
  if (count === 1 || overM <= 0) return [even];
  return [even, ...OVER_PARTS.map((part) => ({ lowM: lowM - part * overM, widthM: swathM, count }))];
}

function lanesOn(edges: readonly Edge[], strips: Strips, swathM: number, rims: Rims): TurnedLane[] {
  return stretchesByStrip(edges, strips).flatMap((stretches) =>
    merged(stretches)
      .filter(({ fromM, toM }) => toM - fromM > SHORTEST_PART * swathM)
      .map(({ fromM, toM, lowM, highM }): TurnedLane => {
        return { acrossM: middleOf(lowM, highM, swathM, rims), fromM, toM };
      }),
  );
}

/** The lanes with the least walking, a swath from each to the next. */
function shortest(choices: readonly (readonly TurnedLane[])[], swathM: number): readonly TurnedLane[] {
  let best: readonly TurnedLane[] = [];
  let bestM = Infinity;
  for (const lanes of choices) {
    const walkM = lanes.reduce((sum, { fromM, toM }) => sum + toM - fromM + swathM, 0);
    if (walkM >= bestM - SAME_M) continue;
    bestM = walkM;
    best = lanes;
  }
  return best;
}

/**
 * Where a stretch of ground is walked: along its middle, moved inward just so far that no swath hangs over an open
 * rim. The ground lies inside the rim and is no wider than the swath, so that it stays covered. In the middle of what
 * is a sliver, feet are on neither the swath beside it nor the perimeter pass's, nor feet on these on the lane's.
 */
function middleOf(lowM: number, highM: number, swathM: number, rims: Rims): number {
  const lowestM = rims.lowM === null ? -Infinity : rims.lowM + swathM / 2;
  const highestM = rims.highM === null ? Infinity : rims.highM - swathM / 2;
  return Math.max(lowestM, Math.min(highestM, (lowM + highM) / 2));
}

interface Turned {
  readonly alongM: number;
  readonly acrossM: number;
}
interface Edge {
  readonly a: Turned;
  readonly b: Turned;
}

function turnedEdges(region: Region, dx: number, dy: number): Edge[] {
  return [region.outer, ...region.holes].flatMap((ring) => {
    const turned = ring.map(({ xM, yM }) => ({ alongM: xM * dx + yM * dy, acrossM: yM * dx - xM * dy }));
    return turned.map((a, i) => ({ a, b: turned[(i + 1) % turned.length] as Turned }));
  });
}

/**
 * For each strip, what its ground takes up along it. Any spot of ground can be moved straight across until it meets
 * an edge or the strip's border, so the edges within and the ground along both borders are the whole answer. Both
 * are taken a hair inside the strip: ground that only touches its border belongs to the neighbour.
 */
function stretchesByStrip(edges: readonly Edge[], { lowM, widthM, count }: Strips): Stretch[][] {
  const strips: Stretch[][] = Array.from({ length: count }, () => []);
  const borders: number[][] = Array.from({ length: 2 * count }, () => []);
  const hairM = HAIR_PART * widthM;
  for (const { a, b } of edges) {
    const [low, high] = a.acrossM <= b.acrossM ? [a, b] : [b, a];
    const slope = (high.alongM - low.alongM) / (high.acrossM - low.acrossM || 1);
    const alongAt = (acrossM: number): number => low.alongM + (acrossM - low.acrossM) * slope;
    const first = clamp(Math.floor((low.acrossM - lowM) / widthM), count);
    const last = clamp(Math.floor((high.acrossM - lowM) / widthM), count);
    for (let strip = first; strip <= last; strip++) {
      const bottomM = lowM + strip * widthM + hairM;
      const topM = lowM + (strip + 1) * widthM - hairM;
      if (low.acrossM < bottomM && bottomM <= high.acrossM) borders[2 * strip]?.push(alongAt(bottomM));
      if (low.acrossM < topM && topM <= high.acrossM) borders[2 * strip + 1]?.push(alongAt(topM));
      if (low.acrossM > topM || high.acrossM < bottomM) continue;
      const from = low.acrossM < bottomM ? alongAt(bottomM) : low.alongM;
      const to = high.acrossM > topM ? alongAt(topM) : high.alongM;
      strips[strip]?.push({
        fromM: Math.min(from, to),
        toM: Math.max(from, to),
        lowM: Math.max(low.acrossM, bottomM - hairM),
        highM: Math.min(high.acrossM, topM + hairM),
      });
    }
  }
  borders.forEach((crossings, border) => {
    crossings.sort((p, q) => p - q);
    const acrossM = lowM + ((border + 1) >> 1) * widthM;
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const [fromM, toM] = [crossings[i] as number, crossings[i + 1] as number];
      strips[border >> 1]?.push({ fromM, toM, lowM: acrossM, highM: acrossM });
    }
  });
  return strips;
}

function clamp(strip: number, count: number): number {
  return Math.max(0, Math.min(count - 1, strip));
}

function merged(stretches: readonly Stretch[]): Stretch[] {
  const list: Stretch[] = [];
  for (const stretch of stretches.toSorted((p, q) => p.fromM - q.fromM)) {
    const last = list.at(-1);
    if (last === undefined || stretch.fromM > last.toM + SAME_M) list.push(stretch);
    else list[list.length - 1] = joined(last, stretch);
  }
  return list;
}

function joined(a: Stretch, b: Stretch): Stretch {
  return {
    fromM: Math.min(a.fromM, b.fromM),
    toM: Math.max(a.toM, b.toM),
    lowM: Math.min(a.lowM, b.lowM),
    highM: Math.max(a.highM, b.highM),
  };
}
