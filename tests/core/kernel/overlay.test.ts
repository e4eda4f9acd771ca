import { describe, expect, test } from 'vitest';
import {
  bufferLine,
  intersectRegions,
  offsetRegions,
  regionContains,
  regionsAreaM2,
  ringPerimeterM,
  signedAreaM2,
  subtractRegions,
  unionRegions,
} from '../../../core/kernel/index.ts';
import type { Region, YardPoint } from '../../../core/spaces.ts';
import { lShape, points, rect, region, regularPolygon } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomYard, seededRandom } from '../../support/randomYards.ts';

const square = region(rect(0, 0, 10, 10));

/** Inside or out by counting a ray's crossings over all rings together: even-odd, no kernel. */
function holds(regions: readonly Region[], { xM, yM }: YardPoint): boolean {
  let inside = false;
  for (const ring of regions.flatMap(({ outer, holes }) => [outer, ...holes])) {
    for (const [i, a] of ring.entries()) {
      const b = ring[(i + 1) % ring.length] as YardPoint;
      if (a.yM > yM !== b.yM > yM && xM < a.xM + ((yM - a.yM) / (b.yM - a.yM)) * (b.xM - a.xM))
        inside = !inside;
    }
  }
  return inside;
}

describe('taking away', () => {
  test.each<[string, Region[], number, number, number]>([
    // name, what is taken, area left, pieces, holes: all by hand from a 10 m square
    ['a bed inside', [region(rect(2, 2, 3, 3))], 91, 1, 1],
    ['two beds that overlap', [region(rect(2, 2, 3, 3)), region(rect(4, 4, 3, 3))], 83, 1, 1],
    ['one bed drawn twice', [region(rect(2, 2, 3, 3)), region(rect(2, 2, 3, 3))], 91, 1, 1],
    [
      'a bed drawn twice, once the other way',
      [region(rect(2, 2, 3, 3)), region(rect(2, 2, 3, 3).reverse())],
      91,
      1,
      1,
    ],
    ['two beds that share an edge', [region(rect(2, 2, 3, 3)), region(rect(5, 2, 3, 3))], 82, 1, 1],
    ['two beds that touch at a corner', [region(rect(2, 2, 2, 2)), region(rect(4, 4, 2, 2))], 92, 1, 2],
    ['a bed over the edge', [region(rect(8, 4, 4, 2))], 96, 1, 0],
    ['a bed that shares part of the edge', [region(rect(7, 4, 3, 2))], 94, 1, 0],
    ['a path right across', [region(rect(4, -1, 2, 12))], 80, 2, 0],
    ['a bed outside', [region(rect(20, 0, 3, 3))], 100, 1, 0],
    ['everything', [region(rect(-1, -1, 12, 12))], 0, 0, 0],
    ['the square itself', [region(rect(0, 0, 10, 10))], 0, 0, 0],
    ['a ring of paving with lawn inside it', [region(rect(2, 2, 6, 6), rect(4, 4, 2, 2))], 68, 2, 1],
    ['nothing', [], 100, 1, 0],
  ])('%s', (_name, minus, areaM2, pieces, holes) => {
    const left = subtractRegions([square], minus);
    expectNear(regionsAreaM2(left), areaM2, 1e-9, 'm²');
    expect(left.length).toBe(pieces);
    expect(left.reduce((count, piece) => count + piece.holes.length, 0)).toBe(holes);
  });

  test('a bow-tie takes both its halves, which run opposite ways', () => {
    const bowTie = region(points([2, 2], [6, 6], [6, 2], [2, 6]));
    // Two triangles of base 4 and height 2.
    expectNear(regionsAreaM2(subtractRegions([square], [bowTie])), 100 - 8, 1e-9, 'm²');
  });
});

describe('what both have', () => {
  test('is the overlap of two rectangles', () => {
    const both = intersectRegions([square], [region(rect(6, 7, 10, 10))]);
    expectNear(regionsAreaM2(both), 12, 1e-9, 'm²'); // 4 * 3
  });

  test('is nothing where they only touch', () => {
    expect(intersectRegions([square], [region(rect(10, 0, 5, 5))])).toEqual([]); // an edge has no area
    expect(intersectRegions([square], [])).toEqual([]); // nothing has nothing
  });
});

describe('putting together', () => {
  test('counts no ground twice', () => {
    const all = unionRegions([square, region(rect(5, 5, 10, 10)), region(rect(30, 0, 1, 1))]);
    expectNear(regionsAreaM2(all), 100 + 100 - 25 + 1, 1e-9, 'm²'); // 10², 10², less 5², and 1
    expect(all.length).toBe(2);
  });

  test('leaves the hole in the middle of four beds', () => {
    const frame = [rect(0, 0, 6, 1), rect(5, 0, 1, 6), rect(0, 5, 6, 1), rect(0, 0, 1, 6)].map((ring) =>
      region(ring),
    );
    const [round, ...others] = unionRegions(frame);
    expect(others).toEqual([]);
    expect(round?.holes.length).toBe(1);
    expectNear(regionsAreaM2(round ? [round] : []), 36 - 16, 1e-9, 'm²'); // 6² - 4²
  });

  test('of nothing is nothing', () => {
    expect(unionRegions([])).toEqual([]);
  });
});

test('rings and lines without enough corners are no ground and no walk', () => {
  const rubbish = [region([]), region(points([1, 1])), region(points([1, 1], [2, 2]))];
  expect(unionRegions(rubbish)).toEqual([]);
  expectNear(regionsAreaM2(subtractRegions([square], rubbish)), 100, 1e-9, 'm²'); // 10 * 10
  expect(offsetRegions([region([])], 1)).toEqual([]);
  expect(bufferLine([], 1)).toEqual([]);
});

describe('laws on random yards', () => {
  test('what is left and what is taken make up the zone, and every spot is in one of them', () => {
    let spots = 0;
    for (let seed = 1; seed <= 150; seed++) {
      const random = seededRandom(seed);
      const yard = randomYard(random, 4 + Math.floor(random() * 40), 1 + Math.floor(random() * 10));
      const zone = region(yard.zone);
      const beds = yard.beds.map((bed) => region(bed));
      const left = subtractRegions([zone], beds);
      const taken = intersectRegions([zone], beds);
      const grossM2 = signedAreaM2(yard.zone);
      // A corner moves by up to a grid step; the accuracy line of the kernel.
      const slackM2 = ringPerimeterM(yard.zone) * 1e-6;
      expectNear(regionsAreaM2(left) + regionsAreaM2(taken), grossM2, slackM2, `m² (seed ${seed})`);
      for (let i = 0; i < 20; i++) {
        const spot = { xM: between(random, -60, 60), yM: between(random, -60, 60) };
        const inZone = holds([zone], spot);
        const inBed = beds.some((bed) => holds([bed], spot));
        expect(
          left.some((piece) => regionContains(piece, spot)),
          `seed ${seed}`,
        ).toBe(inZone && !inBed);
        expect(
          taken.some((piece) => regionContains(piece, spot)),
          `seed ${seed}`,
        ).toBe(inZone && inBed);
        spots += inZone ? 1 : 0;
      }
    }
    expect(spots).toBeGreaterThan(500); // enough spots lay in a zone for this to mean something
  });

  test('clean results overlay to themselves', () => {
    for (let seed = 200; seed <= 240; seed++) {
      const random = seededRandom(seed);
      const yard = randomYard(random, 20, 6);
      const left = subtractRegions(
        [region(yard.zone)],
        yard.beds.map((bed) => region(bed)),
      );
      // Everything is on the grid already; only corners on straight edges may go.
      expectNear(
        regionsAreaM2(unionRegions(left)),
        regionsAreaM2(left),
        1e-6 * ringPerimeterM(yard.zone),
        'm²',
      );
    }
  });
});

describe('growing and shrinking', () => {
  test('a square shrinks to a smaller square', () => {
    expectNear(regionsAreaM2(offsetRegions([square], -1)), 64, 1e-4, 'm²'); // 8²
  });

  test('a square grown round has quarter circles at its corners', () => {
    const grownM2 = 100 + 4 * 10 * 2 + Math.PI * 4; // square, four sides, one circle of r = 2
    // Chords of a 1 mm arc tolerance lie up to 1 mm inside a quarter of 2π 2 m of arc.
    expectNear(regionsAreaM2(offsetRegions([square], 2)), grownM2, 0.001 * 2 * Math.PI * 2, 'm²');
  });

  test('a bed hole shrinks as the lawn round it grows', () => {
    const lawn = region(rect(0, 0, 20, 20), rect(5, 5, 6, 6));
    const grownM2 = 20 * 20 + 4 * 20 + Math.PI - 4 * 4; // four sides and one circle of r = 1 more, the hole 4 m wide
    expectNear(regionsAreaM2(offsetRegions([lawn], 1)), grownM2, 0.001 * 2 * Math.PI, 'm²'); // chords as above
  });

  test('an hourglass shrinks to two pieces, and at last to none', () => {
    const hourglass = region(points([0, 0], [10, 0], [5.4, 5], [10, 10], [0, 10], [4.6, 5]));
    expect(offsetRegions([hourglass], -0.5).length).toBe(2);
    expect(offsetRegions([square], -5.001)).toEqual([]); // half its side is 5
  });
});

describe('the ground beside a walked line', () => {
  test('is length times width with flat ends, and a circle more with round ones', () => {
    const line = points([0, 0], [12, 0]);
    expectNear(regionsAreaM2(bufferLine(line, 0.9, 'flat')), 12 * 1.8, 1e-4, 'm²'); // 12 * 2 * 0.9
    const roundM2 = 12 * 1.8 + Math.PI * 0.81;
    expectNear(regionsAreaM2(bufferLine(line, 0.9, 'round')), roundM2, 0.001 * 2 * Math.PI * 0.9, 'm²');
  });

  test('round a loop has a hole in it', () => {
    const [loop, ...others] = bufferLine([...rect(0, 0, 10, 10), { xM: 0, yM: 0 }], 0.5);
    expect(others).toEqual([]);
    expect(loop?.holes.length).toBe(1);
    const insideM2 = Math.abs(signedAreaM2(loop?.holes[0] ?? []));
    expectNear(insideM2, 81, 1e-4, 'm²'); // (10 - 2 * 0.5)²
  });
});

test('a many-cornered lawn less a round bed is the one area less the other', () => {
  const lawn = region(lShape(40, 30, 10, 12));
  const bed = regularPolygon({ xM: 10, yM: 10 }, 3, 96);
  const bedM2 = (96 / 2) * 9 * Math.sin((2 * Math.PI) / 96); // n/2 r² sin(2π/n)
  const leftM2 = regionsAreaM2(subtractRegions([lawn], [region(bed)]));
  expectNear(leftM2, 40 * 30 - 10 * 12 - bedM2, 1e-6 * 2 * Math.PI * 3, 'm²');
});
