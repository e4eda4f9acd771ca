import { newOutline } from '../../core/edits/index.ts';
import { straight } from '../../core/curves/index.ts';
import { distanceM } from '../../core/kernel/index.ts';
import { type CutGround, cutZones } from '../../core/plan/cutZones.ts';
import { tapeMarkM } from '../../core/sections/index.ts';
import { tapeSidesOf } from '../../core/staking/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { HeldCut, Mark, Outline, OutlineKind, Traced, UnitSystem } from '../../core/yard.ts';
import { resolveZones } from '../../core/zones/index.ts';
import { groundOf, lShape, moved, rect } from './builders.ts';
import { planRequest } from './planRequest.ts';
import { between, pick, type Random, randomComb, randomStar, seededRandom } from './randomYards.ts';

export interface StakedYard {
  readonly outlines: readonly Outline[];
  readonly marks: readonly Mark[];
  readonly units: UnitSystem;
  readonly cut: CutGround;
  readonly heldCuts: readonly HeldCut[];
}

const THINGS = ['bed', 'hardscape', 'building', 'water', 'tree'] as const;

/**
 * The sections of a seeded random yard, cut on tape marks: lawns of every form, straight, curved and oval, turned any
 * way, strips kept off all round or along an edge, things in them, on their edge and over one another, holes, landmarks
 * or none, and in every third a cut the person holds. Undefined where the outlines cannot stand or no cut is found.
 */
export function stakedYard(seed: number): StakedYard | undefined {
  const random = seededRandom(seed);
  const units = pick(random, ['us', 'metric'] as const);
  const outlines = [lawn(random), ...things(random)];
  const marks = Array.from({ length: Math.floor(random() * 4) }, (_, i): Mark => {
    const at = { xM: between(random, -25, 25), yM: between(random, -25, 25) };
    return { id: `m${i}`, kind: pick(random, ['spigot', 'landmark']), name: `post ${i}`, at };
  });
  const resolved = resolveZones(groundOf(outlines));
  if (!resolved.ok) return undefined;
  const areaM2 = resolved.value.zones.reduce((sum, zone) => sum + zone.treatedAreaM2, 0);
  const loadAreaM2 = areaM2 / between(random, 1.2, 8);
  const swathM = Math.min(1.8, Math.sqrt(loadAreaM2) / 3);
  const sections = (markM: number | null, heldCuts: readonly HeldCut[]): CutGround | undefined => {
    const request = planRequest({
      loadAreaM2,
      swathM,
      policy: pick(random, ['even', 'fewest']),
      markM,
      heldCuts,
      tapeSides: tapeSidesOf({ outlines, marks }),
    });
    const cut = cutZones(
      resolved.value,
      request,
      () => false,
      () => undefined,
    );
    return cut.ok ? cut.value : undefined;
  };
  const first = seed % 3 === 0 ? sections(null, [])?.cuts[0] : undefined;
  const heldCuts =
    first === undefined ? [] : [{ id: 'h', zoneId: first.zoneId, from: first.from, to: first.to }];
  const cut = sections(tapeMarkM(units), heldCuts);
  return cut === undefined || cut.cutLines.length === 0
    ? undefined
    : { outlines, marks, units, cut, heldCuts };
}

function lawn(random: Random): Outline {
  const traced = turned(random, lawnEdge(random));
  const hole = random() < 0.2 ? [straight(randomStar(random, 5, { xM: 3, yM: 2 }, 2, 0.2))] : [];
  return {
    ...newOutline({ id: 'lawn', kind: 'zone', name: 'lawn', outer: traced, holes: hole }),
    keepOffM: random() < 0.3 ? between(random, 0.2, 1.2) : null,
  };
}

function lawnEdge(random: Random): Traced {
  const kind = pick(random, ['box', 'l', 'star', 'comb', 'curved', 'smooth', 'circle', 'ellipse'] as const);
  const centre = { xM: 0, yM: 0 };
  switch (kind) {
    case 'box':
      return straight(rect(-14, -9, between(random, 20, 30), between(random, 12, 20)));
    case 'l':
      return straight(lShape(26, 20, between(random, 8, 14), between(random, 6, 12)));
    case 'comb':
      return straight(randomComb(random, 3, 30, 20));
    case 'circle':
      return { kind, centre, radiusM: between(random, 6, 18) };
    case 'ellipse':
      return {
        kind,
        centre,
        halfLengthM: 16,
        halfWidthM: between(random, 5, 12),
        bearingDeg: 360 * random(),
      };
    default: {
      const star = randomStar(random, 6 + Math.floor(4 * random()), centre, between(random, 12, 22), 0.4);
      if (kind === 'star')
        return { kind: 'corners', corners: star.map((corner) => withStrip(random, corner)) };
      return { kind: 'corners', corners: star.map((corner, i) => curved(random, star, corner, i, kind)) };
    }
  }
}

function withStrip(random: Random, corner: YardPoint) {
  return random() < 0.2 ? { ...corner, keepOffM: between(random, 0.3, 1) } : corner;
}

/** Every second edge an arc a little out of its chord, or the whole ring smooth. */
function curved(
  random: Random,
  star: readonly YardPoint[],
  from: YardPoint,
  i: number,
  kind: 'curved' | 'smooth',
) {
  if (kind === 'smooth') return { ...from, run: { kind } };
  if (i % 2 === 0) return from;
  const to = star[(i + 1) % star.length] as YardPoint;
  const out = between(random, 0.05, 0.2);
  const via = {
    xM: (from.xM + to.xM) / 2 + out * (to.yM - from.yM),
    yM: (from.yM + to.yM) / 2 - out * (to.xM - from.xM),
  };
  return { ...from, run: { kind: 'arc' as const, via } };
}

function things(random: Random): Outline[] {
  return Array.from({ length: Math.floor(random() * 5) }, (_, i) => {
    const kind: OutlineKind = pick(random, THINGS);
    const at = { xM: between(random, -14, 14), yM: between(random, -10, 10) };
    const sizeM = between(random, 0.8, 3);
    const outer: Traced =
      kind === 'tree' || random() < 0.3
        ? { kind: 'circle', centre: at, radiusM: sizeM }
        : turned(random, straight(rect(at.xM, at.yM, sizeM * 2, sizeM)));
    const keepOffM = random() < 0.2 ? between(random, 0.2, 0.8) : null;
    // Two things of one name must still be told apart.
    return {
      ...newOutline({ id: `t${i}`, kind, name: pick(random, [`thing ${i}`, kind]), outer }),
      keepOffM,
    };
  });
}

/** A ring of straight edges turned any way; others are as they are. */
function turned(random: Random, traced: Traced): Traced {
  if (traced.kind !== 'corners' || traced.corners.some(({ run }) => run !== undefined)) return traced;
  const corners = moved(traced.corners, 0, 0, pick(random, [0, 0, 360 * random()]));
  return {
    kind: 'corners',
    corners: corners.map((corner, i) => ({ ...traced.corners[i], ...corner })),
  };
}

/** How far two cuts are apart at the worse of their ends. */
export function apartM(one: readonly [YardPoint, YardPoint], other: readonly [YardPoint, YardPoint]): number {
  return Math.max(distanceM(one[0], other[0]), distanceM(one[1], other[1]));
}
