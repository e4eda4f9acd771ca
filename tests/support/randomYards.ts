import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { CutOutKind, Outline } from '../../core/yard.ts';
import { outline, rect } from './builders.ts';

/** Uniform in [0, 1), the same series for the same seed. Mulberry32 (Tommy Ettinger, public domain). */
export type Random = () => number;

export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function between(random: Random, least: number, most: number): number {
  return least + random() * (most - least);
}

export function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random() * from.length)] as T;
}

/**
 * Simple counter-clockwise ring that is seen whole from its centre: corners at growing angles, each at its own
 * distance. `jag` 0 = a circle's corners, 0.9 = needles.
 */
export function randomStar(
  random: Random,
  corners: number,
  centre: YardPoint,
  radiusM: number,
  jag: number,
): YardPoint[] {
  return Array.from({ length: corners }, (_, i) => {
    // Angles keep their order whatever the draw, so the ring cannot cross itself.
    const angle = (2 * Math.PI * (i + between(random, 0.1, 0.9))) / corners;
    const reachM = radiusM * (1 - jag * random());
    return { xM: centre.xM + reachM * Math.cos(angle), yM: centre.yM + reachM * Math.sin(angle) };
  });
}

/** Simple counter-clockwise comb: `teeth` prongs up from a bar, as a lawn between long beds. */
export function randomComb(random: Random, teeth: number, widthM: number, heightM: number): YardPoint[] {
  const ring: YardPoint[] = [
    { xM: 0, yM: 0 },
    { xM: widthM, yM: 0 },
  ];
  const stepM = widthM / (2 * teeth - 1);
  const barM = heightM * between(random, 0.1, 0.3);
  for (let tooth = teeth - 1; tooth >= 0; tooth--) {
    const topM = heightM * between(random, 0.6, 1);
    ring.push({ xM: (2 * tooth + 1) * stepM, yM: topM }, { xM: 2 * tooth * stepM, yM: topM });
    if (tooth > 0) ring.push({ xM: 2 * tooth * stepM, yM: barM }, { xM: (2 * tooth - 1) * stepM, yM: barM });
  }
  // The bar's far corner and the last tooth's foot are one place.
  return ring;
}

export interface RandomYard {
  readonly zone: Ring;
  readonly beds: readonly Ring[];
}

/** A zone with beds: some apart, some touching, overlapping or repeated, some crossing the edge or outside. */
export function randomYard(random: Random, corners: number, beds: number): RandomYard {
  const radiusM = between(random, 8, 60);
  const zone = randomStar(random, corners, { xM: 0, yM: 0 }, radiusM, between(random, 0, 0.7));
  const made: Ring[] = [];
  for (let i = 0; i < beds; i++) made.push(randomBed(random, zone, radiusM, made));
  return { zone, beds: made };
}

function randomBed(random: Random, zone: Ring, radiusM: number, others: readonly Ring[]): Ring {
  const centre = { xM: between(random, -radiusM, radiusM), yM: between(random, -radiusM, radiusM) };
  const sizeM = radiusM * between(random, 0.02, 0.3);
  const kind = pick(random, ['star', 'star', 'box', 'on-edge', 'touching', 'again', 'on-corner'] as const);
  const other = others.length > 0 ? pick(random, others) : undefined;
  const at = Math.floor(random() * zone.length);
  const corner = zone[at] as YardPoint;
  const next = zone[(at + 1) % zone.length] as YardPoint;
  switch (kind) {
    case 'box':
      return rect(centre.xM, centre.yM, sizeM, sizeM * between(random, 0.2, 2));
    case 'on-edge':
      // Shares a whole edge with the zone and reaches over it to one side.
      return [corner, next, { xM: (corner.xM + next.xM) / 2 + sizeM, yM: (corner.yM + next.yM) / 2 - sizeM }];
    case 'touching': {
      const from = other?.[0] ?? centre;
      return rect(from.xM, from.yM, sizeM, sizeM);
    }
    case 'again':
      return other ?? randomStar(random, 7, centre, sizeM, 0.5);
    case 'on-corner':
      return randomStar(random, 6, corner, sizeM, 0.4);
    default:
      return randomStar(random, 3 + Math.floor(random() * 9), centre, sizeM, between(random, 0, 0.8));
  }
}

const BED_KINDS: readonly CutOutKind[] = ['bed', 'hardscape', 'building', 'water', 'tree'];

/** The same yard as outlines of a document. */
export function yardOutlines(yard: RandomYard): Outline[] {
  return [
    outline('zone', 'lawn', yard.zone),
    ...yard.beds.map((bed, i) => outline(BED_KINDS[i % BED_KINDS.length] as CutOutKind, `bed ${i + 1}`, bed)),
  ];
}
