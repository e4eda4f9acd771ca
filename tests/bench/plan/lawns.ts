import {
  distanceToEdgeM,
  regionAreaM2,
  regionContains,
  subtractRegions,
} from '../../../core/kernel/index.ts';
import type { Region, Ring, YardPoint } from '../../../core/spaces.ts';
import { lShape, moved, points, rect, region, regularPolygon } from '../../support/builders.ts';
import { between, pick, type Random, randomStar, seededRandom } from '../../support/randomYards.ts';

/** How `lawns` are made, as the bench prints it. */
export const LAWNS_MADE =
  '1 ha each after scaling; outline rectangle, L, U, cut-off lot or ragged, by turns, stretched up to 3 times, turned ' +
  'at random; 1 to 15 holes: a house about the middle, round trees, ponds, beds, some a step in from the edge; ' +
  'besides, up to 5 beds that bite into the edge';

const AREA_M2 = 10_000;
/** Side of the square outlines are made about; cut-outs take about a tenth of it. */
const SIDE_M = 105;
const MOST_HOLES = 15;
const MOST_BITES = 5;
/** Between two holes, and between a hole and the edge. */
const LEAST_GAP_M = 1.5;
/** A lawn too crowded is begun again. */
const MOST_TRIES = 500;

const OUTLINES: readonly ((random: Random) => Ring)[] = [
  () => rect(0, 0, SIDE_M, SIDE_M),
  (random) => lShape(120, 120, 120 * between(random, 0.3, 0.55), 120 * between(random, 0.3, 0.55)),
  uShape,
  cutOffLot,
  (random) =>
    randomStar(
      random,
      12 + Math.floor(28 * random()),
      { xM: 0, yM: 0 },
      0.65 * SIDE_M,
      between(random, 0.1, 0.4),
    ),
];

/** Seeded lawns such as people have, each in one piece. Lawn after lawn takes the next kind of outline. */
export function lawns(seed: number, count: number): Region[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, i) => lawn(random, OUTLINES[i % OUTLINES.length] as () => Ring));
}

function lawn(random: Random, outlineOf: (random: Random) => Ring): Region {
  const stretch = Math.sqrt(random() < 0.4 ? between(random, 1, 1.3) : between(random, 1.3, 3));
  const outer = outlineOf(random).map(({ xM, yM }) => ({ xM: xM * stretch, yM: yM / stretch }));
  const holes = 1 + Math.floor(MOST_HOLES * random());
  const bites = Math.floor((MOST_BITES + 1) * random());
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const made = subtractRegions(
      [region(outer)],
      Array.from({ length: bites }, () => region(bite(random, outer))),
    );
    const [first] = made;
    const whole =
      first && made.length === 1 && first.holes.length === 0 ? withHoles(random, first, holes) : undefined;
    if (whole !== undefined) return scaled(whole, random() * 2 * Math.PI);
  }
  throw new Error(`no lawn with ${holes} holes in ${MOST_TRIES} tries`);
}

function uShape(random: Random): Ring {
  const [left, right, foot] = [between(random, 35, 50), between(random, 75, 90), between(random, 40, 70)];
  return points(
    [0, 0],
    [125, 0],
    [125, 125],
    [right, 125],
    [right, foot],
    [left, foot],
    [left, 125],
    [0, 125],
  );
}

/** A lot of four to six sides, no two alike. */
function cutOffLot(random: Random): Ring {
  const in_ = () => between(random, 0, 0.25 * SIDE_M);
  const far = () => 1.1 * SIDE_M - in_();
  const corners = points([in_(), in_()], [far(), in_()], [far(), far()], [in_(), far()]);
  return random() < 0.5
    ? corners
    : [...corners.slice(0, 2), ...points([1.1 * SIDE_M, 0.5 * SIDE_M]), ...corners.slice(2)];
}

/** A bed along a part of an edge, half of it outside. */
function bite(random: Random, outer: Ring): Ring {
  const { at, turnRad } = placeOnEdge(random, outer);
  const [lengthM, depthM] = [between(random, 5, 20), between(random, 2, 6)];
  return moved(rect(-lengthM / 2, -depthM, lengthM, 2 * depthM), turnRad, at.xM, at.yM);
}

function withHoles(random: Random, ground: Region, count: number): Region | undefined {
  const holes: Ring[] = [];
  const shapes = [
    house,
    ...Array.from({ length: count - 1 }, () => pick(random, [tree, tree, pond, bed, edgeBed])),
  ];
  for (const shape of shapes) {
    const hole = Array.from({ length: 40 }, () => shape(random, ground.outer)).find((ring) =>
      isClear(ring, ground, holes),
    );
    if (hole === undefined) return undefined;
    holes.push(hole);
  }
  return region(ground.outer, ...holes);
}

/** A box or an L, 2 to 6 % of the lawn, about the middle of the outline's box. */
function house(random: Random, outer: Ring): Ring {
  const { xM, yM } = placeInBox(random, outer, 0.3);
  const [lengthM, depthM] = [between(random, 16, 26), between(random, 11, 20)];
  const shape =
    random() < 0.5 ? rect(0, 0, lengthM, depthM) : lShape(lengthM, depthM, lengthM / 2, depthM / 3);
  return moved(shape, pick(random, [0, 0, Math.PI / 2, between(random, 0, Math.PI)]), xM, yM);
}

const tree = (random: Random, outer: Ring): Ring =>
  regularPolygon(placeInBox(random, outer, 1), between(random, 0.8, 2.5), 8);
const pond = (random: Random, outer: Ring): Ring =>
  randomStar(random, 10, placeInBox(random, outer, 1), between(random, 3, 7), 0.25);

function bed(random: Random, outer: Ring): Ring {
  const { xM, yM } = placeInBox(random, outer, 1);
  return moved(rect(0, 0, between(random, 4, 14), between(random, 1.5, 4)), random() * Math.PI, xM, yM);
}

/** A bed along an edge with a way left between the two. */
function edgeBed(random: Random, outer: Ring): Ring {
  const { at, turnRad } = placeOnEdge(random, outer);
  const [lengthM, depthM, wayM] = [between(random, 5, 15), between(random, 1.5, 3.5), between(random, 2, 5)];
  return moved(rect(-lengthM / 2, wayM, lengthM, depthM), turnRad, at.xM, at.yM);
}

/** A place on an edge and the edge's direction; the ground lies to its left. */
function placeOnEdge(random: Random, outer: Ring): { at: YardPoint; turnRad: number } {
  const place = Math.floor(random() * outer.length);
  const [from, to] = [outer[place], outer[(place + 1) % outer.length]] as [YardPoint, YardPoint];
  const part = random();
  return {
    at: { xM: from.xM + part * (to.xM - from.xM), yM: from.yM + part * (to.yM - from.yM) },
    turnRad: Math.atan2(to.yM - from.yM, to.xM - from.xM),
  };
}

/** A place in the middle part of the outline's box. */
function placeInBox(random: Random, outer: Ring, part: number): YardPoint {
  const along = (values: readonly number[]): number => {
    const [least, most] = [Math.min(...values), Math.max(...values)];
    return (least + most) / 2 + part * (most - least) * (random() - 0.5);
  };
  return { xM: along(outer.map(({ xM }) => xM)), yM: along(outer.map(({ yM }) => yM)) };
}

function isClear(ring: Ring, ground: Region, holes: readonly Ring[]): boolean {
  return (
    ring.every((corner) => regionContains(ground, corner)) &&
    gapM(ring, ground.outer) >= LEAST_GAP_M &&
    holes.every((hole) => {
      const isInside = [ring, hole].some((a, i, both) =>
        regionContains(region(a), (both[1 - i] as Ring)[0] as YardPoint),
      );
      return !isInside && gapM(ring, hole) >= LEAST_GAP_M;
    })
  );
}

/** Between the edges of two rings that do not cross: reached at a corner of one of them. */
function gapM(a: Ring, b: Ring): number {
  return Math.min(...a.map((at) => toRingM(at, b)), ...b.map((at) => toRingM(at, a)));
}

function toRingM(at: YardPoint, ring: Ring): number {
  return Math.min(
    ...ring.map((from, i) => distanceToEdgeM(from, ring[(i + 1) % ring.length] as YardPoint, at)),
  );
}

function scaled(ground: Region, turnRad: number): Region {
  const by = Math.sqrt(AREA_M2 / regionAreaM2(ground));
  const place = (ring: Ring): Ring =>
    moved(ring, turnRad, 0, 0).map(({ xM, yM }) => ({ xM: xM * by, yM: yM * by }));
  return { outer: place(ground.outer), holes: ground.holes.map(place) };
}
