import { expect, test } from 'vitest';
import { ringPerimeterM, sweepLayers } from '../../core/kernel/index.ts';
import type { Ring } from '../../core/spaces.ts';
import { points, rect } from '../support/builders.ts';
import { expectNear } from '../support/expectNear.ts';
import { startGeosFaces, windsRound } from '../support/geosFaces.ts';
import { between, pick, type Random, randomStar, randomYard, seededRandom } from '../support/randomYards.ts';

const { facesOf } = await startGeosFaces();

type Layers = readonly (readonly Ring[])[];

/** Areas by the layers they are in, named by their numbers. */
function swept(layers: Layers): Map<string, number> {
  const areas = new Map<string, number>();
  const open = new Set<number>();
  sweepLayers(layers, {
    cross: (layer, isIn) => (isIn ? open.add(layer) : open.delete(layer)),
    add: (areaM2) => addTo(areas, [...open], areaM2),
  });
  return areas;
}

/** The same by the faces between all edges, each held against every layer in turn. */
function byFaces(layers: Layers): Map<string, number> {
  const areas = new Map<string, number>();
  for (const { areaM2, at } of facesOf(layers.flat())) {
    const inside = layers.flatMap((rings, layer) => (windsRound(rings, at) ? [layer] : []));
    if (inside.length > 0) addTo(areas, inside, areaM2);
  }
  return areas;
}

function addTo(areas: Map<string, number>, inside: readonly number[], areaM2: number): void {
  const name = inside.toSorted((a, b) => a - b).join();
  areas.set(name, (areas.get(name) ?? 0) + areaM2);
}

/**
 * Area per metre of edge that the two may differ by, in metres: the thinnest band the sweep makes. Worst seen on all
 * heaps: 3e-13 m².
 */
const MOST_OFF_M = 1e-11;

/** Largest difference over all sets of layers that either found. */
function worstOf(ours: ReadonlyMap<string, number>, theirs: ReadonlyMap<string, number>): number {
  const names = new Set([...ours.keys(), ...theirs.keys()]);
  return Math.max(...[...names].map((name) => Math.abs((ours.get(name) ?? 0) - (theirs.get(name) ?? 0))));
}

/** A ring of any kind that a yard or its swaths may hold, the worst among them. */
function awkwardRing(random: Random, others: readonly Ring[]): Ring {
  const at = { xM: between(random, -12, 12), yM: between(random, -12, 12) };
  const other = others.length > 0 ? pick(random, others) : rect(0, 0, 5, 5);
  const [a, b] = [other[0], other[1]] as [Ring[number], Ring[number]];
  switch (
    pick(random, ['star', 'needles', 'box', 'sliver', 'neighbour', 'again', 'tilted', 'hair'] as const)
  ) {
    case 'box':
      return rect(Math.round(at.xM), Math.round(at.yM), pick(random, [1, 2, 5]), pick(random, [1, 3, 8]));
    case 'sliver': {
      const tipM = between(random, 5, 30);
      return [at, { xM: at.xM + tipM, yM: at.yM + 1e-7 }, { xM: at.xM + tipM, yM: at.yM + 2e-4 }];
    }
    case 'neighbour':
      // Shares a whole edge with another, from the other side.
      return [b, a, { xM: a.xM + (b.yM - a.yM), yM: a.yM - (b.xM - a.xM) }];
    case 'again':
      return other;
    case 'tilted': {
      // All but upright, so that a level meets it far from where the next one does.
      const leanM = between(random, -1e-6, 1e-6);
      return points(
        [at.xM, at.yM],
        [at.xM + 2, at.yM],
        [at.xM + 2 + leanM, at.yM + 12],
        [at.xM + leanM, at.yM + 12],
      );
    }
    case 'hair':
      // A copy beside the other by a hair.
      return other.map(({ xM, yM }) => ({ xM: xM + 1e-9, yM: yM - 1e-9 }));
    default:
      return randomStar(random, 3 + Math.floor(random() * 12), at, between(random, 1, 18), random() * 0.9);
  }
}

test('every set of layers has the area GEOS finds, on 200 random heaps of awkward rings', () => {
  let [compared, worstM2] = [0, 0];
  for (let seed = 1; seed <= 200; seed++) {
    const random = seededRandom(seed);
    const rings: Ring[] = [];
    for (let i = 0; i < 3 + (seed % 9); i++) rings.push(awkwardRing(random, rings));
    const layers = rings.map((ring) => [ring]);
    const [ours, theirs] = [swept(layers), byFaces(layers)];
    const edgesM = rings.reduce((sum, ring) => sum + ringPerimeterM(ring), 0);
    const worst = worstOf(ours, theirs);
    expect(worst, `heap ${seed}`).toBeLessThanOrEqual(MOST_OFF_M * edgesM);
    worstM2 = Math.max(worstM2, worst);
    compared += theirs.size;
  }
  console.info(`sweep: ${compared} sets of layers, worst ${worstM2.toExponential(1)} m²`);
  expect(compared).toBeGreaterThan(2000); // the heaps do overlap
}, 60_000);

test('a region with its holes is one layer, as GEOS finds it, on 60 random yards', () => {
  for (let seed = 1; seed <= 60; seed++) {
    const random = seededRandom(1000 + seed);
    const { zone, beds } = randomYard(random, 9 + (seed % 20), 1);
    const hole = randomStar(random, 6, { xM: 0, yM: 0 }, 1, 0.5).toReversed();
    const layers = [[zone, hole], ...beds.map((bed) => [bed]), [rect(-5, -5, 10, 4), rect(-2, -3, 10, 4)]];
    const edgesM = layers.flat().reduce((sum, ring) => sum + ringPerimeterM(ring), 0);
    expect(worstOf(swept(layers), byFaces(layers)), `yard ${seed}`).toBeLessThanOrEqual(MOST_OFF_M * edgesM);
  }
}, 60_000);

/** Ground covered 0, 1, 2… times, the first left at nought. */
function depthsOf(layers: Layers): number[] {
  const depthsM2: number[] = [];
  let depth = 0;
  sweepLayers(layers, {
    cross: (_, isIn) => {
      depth += isIn ? 1 : -1;
    },
    add: (areaM2) => {
      depthsM2[depth] = (depthsM2[depth] ?? 0) + areaM2;
    },
  });
  return Array.from(depthsM2, (areaM2) => areaM2 ?? 0);
}

test('1,000 boxes on whole metres are as deep as counting the square metres under each says', () => {
  const random = seededRandom(7);
  const count = new Map<string, number>();
  const layers = Array.from({ length: 1000 }, () => {
    const [x, y] = [Math.floor(between(random, 0, 90)), Math.floor(between(random, 0, 90))];
    const [w, h] = [1 + Math.floor(random() * 9), 1 + Math.floor(random() * 9)];
    for (let i = x; i < x + w; i++) {
      for (let j = y; j < y + h; j++) count.set(`${i} ${j}`, (count.get(`${i} ${j}`) ?? 0) + 1);
    }
    return [rect(x, y, w, h)];
  });
  const expected: number[] = [0];
  for (const depth of count.values()) expected[depth] = (expected[depth] ?? 0) + 1;
  const depthsM2 = depthsOf(layers);
  expect(depthsM2.length).toBe(expected.length); // by counting, as below
  for (const [depth, areaM2] of depthsM2.entries()) expectNear(areaM2, expected[depth] ?? 0, 1e-9, 'm²');
  expect(expected.length).toBeGreaterThan(6); // the case does arise
});

test('1,000 swaths at any angle are as deep as GEOS finds', () => {
  const random = seededRandom(8);
  const layers = Array.from({ length: 1000 }, () => {
    const [x, y] = [between(random, 0, 100), between(random, 0, 100)];
    const [lengthM, rad] = [between(random, 2, 20), between(random, 0, 2 * Math.PI)];
    const [alongX, alongY] = [lengthM * Math.cos(rad), lengthM * Math.sin(rad)];
    const [acrossX, acrossY] = [-Math.sin(rad), Math.cos(rad)];
    return [
      points(
        [x, y],
        [x + alongX, y + alongY],
        [x + alongX + acrossX, y + alongY + acrossY],
        [x + acrossX, y + acrossY],
      ),
    ];
  });
  const boxes = layers.map(([ring]) => {
    const [xs, ys] = [ring?.map(({ xM }) => xM) ?? [], ring?.map(({ yM }) => yM) ?? []];
    return { west: Math.min(...xs), east: Math.max(...xs), south: Math.min(...ys), north: Math.max(...ys) };
  });
  const expected: number[] = [];
  for (const { areaM2, at } of facesOf(layers.flat())) {
    const depth = layers.filter((rings, i) => {
      const { west, east, south, north } = boxes[i] as (typeof boxes)[number];
      const isNear = at.xM >= west && at.xM <= east && at.yM >= south && at.yM <= north;
      return isNear && windsRound(rings, at);
    }).length;
    expected[depth] = (expected[depth] ?? 0) + areaM2;
  }
  const depthsM2 = depthsOf(layers);
  let worstM2 = 0;
  for (let depth = 1; depth < Math.max(expected.length, depthsM2.length); depth++) {
    const off = Math.abs((depthsM2[depth] ?? 0) - (expected[depth] ?? 0));
    worstM2 = Math.max(worstM2, off);
    expect(off, `${depth} deep`).toBeLessThanOrEqual(1e-6); // 22 km of edges to 5e-11 m
  }
  console.info(`1,000 swaths: ${depthsM2.length - 1} deep, worst ${worstM2.toExponential(1)} m²`);
}, 60_000);

test('shapes of known area: a star of two triangles, a ring of wedges, a fan of slivers', () => {
  // Two equal-sided triangles of side 3 turned by half a turn share a hexagon of side 1: sqrt(27)/2.
  const heightM = Math.sqrt(27) / 2;
  const up = points([0, 0], [3, 0], [1.5, heightM]);
  const down = up.map(({ xM, yM }) => ({ xM: 3 - xM, yM: (2 * heightM) / 3 - yM }));
  const star = swept([[up], [down]]);
  expectNear(star.get('0,1') ?? 0, Math.sqrt(27) / 2, 1e-12, 'm²'); // area of a regular hexagon of side 1
  expectNear(star.get('0') ?? 0, (3 * Math.sqrt(3)) / 4, 1e-12, 'm²'); // three triangles of side 1

  // 360 wedges round one point share edges and nothing else: n/2 r² sin(2 pi/n).
  const corner = (i: number) => ({
    xM: 10 * Math.cos((i * Math.PI) / 180),
    yM: 10 * Math.sin((i * Math.PI) / 180),
  });
  const wedges = Array.from({ length: 360 }, (_, i) => [
    [{ xM: 0, yM: 0 }, corner(i), corner((i + 1) % 360)],
  ]);
  const depthsM2 = depthsOf(wedges);
  expectNear(depthsM2[1] ?? 0, 180 * 100 * Math.sin(Math.PI / 180), 1e-9, 'm²'); // n/2 r² sin(2 pi/n)
  for (const deepM2 of depthsM2.slice(2)) expectNear(deepM2, 0, 1e-9, 'm²'); // they only touch

  // 1,000 slivers of 1 µm on one base line, each in the next: the deepest is the flattest.
  const slivers = Array.from({ length: 1000 }, (_, i) => [points([0, 0], [10, 0], [5, (i + 1) * 1e-6])]);
  const deep = depthsOf(slivers);
  for (const k of [1, 500, 1000]) expectNear(deep[k] ?? 0, 5e-6, 1e-11, 'm²'); // half of 10 m x 1 µm
});
