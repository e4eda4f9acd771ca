import { describe, expect, test } from 'vitest';
import { lineLengthM, regionAreaM2, regionContains } from '../../../core/kernel/index.ts';
import { type Pass, type PassRequest, planPasses } from '../../../core/passes/index.ts';
import type { Region, YardPoint } from '../../../core/spaces.ts';
import { lShape, moved, points, rect, region } from '../../support/builders.ts';
import { coverageOf } from '../../support/coverageOf.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomGround } from '../../support/randomGround.ts';

const AUTO: PassRequest = { swathM: 2, headingDeg: null, from: null, to: null };

function plan(ground: Region, request: Partial<PassRequest> = {}) {
  return planPasses({ id: 'A1', region: ground }, { ...AUTO, ...request });
}

function edgeDistanceM(at: YardPoint, ground: Region): number {
  const apart = [ground.outer, ...ground.holes].flatMap((ring) =>
    ring.map((a, i) => {
      const b = ring[(i + 1) % ring.length] as YardPoint;
      const [x, y] = [b.xM - a.xM, b.yM - a.yM];
      const part = ((at.xM - a.xM) * x + (at.yM - a.yM) * y) / (x * x + y * y || 1);
      const foot = Math.max(0, Math.min(1, part));
      return Math.hypot(at.xM - a.xM - x * foot, at.yM - a.yM - y * foot);
    }),
  );
  return Math.min(...apart);
}

describe('a rectangle of 20 m x 12 m, swath 2 m', () => {
  const { passes, headingDeg } = plan(region(rect(0, 0, 20, 12)));

  test('is walked once round, one metre inside', () => {
    const rings = passes.filter((pass) => pass.kind === 'perimeter');
    expect(rings.length).toBe(1);
    expectNear(rings[0]?.lengthM ?? Number.NaN, 56, 1e-3, 'm'); // closed form: 2 (18 + 10)
    for (const point of rings[0]?.line ?? []) {
      expectNear(edgeDistanceM(point, region(rect(0, 0, 20, 12))), 1, 1e-4, 'm'); // half the swath
    }
  });

  test('and in four lanes of 16 m along it', () => {
    const lanes = passes.filter((pass) => pass.kind === 'lane');
    expect(lanes.length).toBe(4); // closed form: (12 - 2 x 2) m / 2 m
    for (const lane of lanes) expectNear(lane.lengthM, 16, 1e-3, 'm'); // 20 - 2 x 2
    expectNear(headingDeg, 90, 1e-9, '°'); // the long side runs east
  });

  test('with a swath less walked than the fourth lane costs when turned', () => {
    const turned = plan(region(rect(0, 0, 20, 12)), { headingDeg: 0 });
    expectNear(turned.headingDeg, 0, 1e-9, '°'); // as asked
    expect(turned.passes.filter((pass) => pass.kind === 'lane').length).toBe(8); // (20 - 4) m / 2 m
  });

  test('misses only the four rounded corners', () => {
    const coverage = coverageOf([region(rect(0, 0, 20, 12))], passes, 2);
    expectNear(coverage.missedM2, 4 * (1 - Math.PI / 4), 5e-3, 'm²'); // (w/2)² (tan 45° - pi/4) a corner
    expectNear(coverage.outsideM2, 0, 1e-3, 'm²'); // every swath fits
    // Lanes meet the perimeter flush; the perimeter treats the inside of its corners twice: (w/2)² each.
    expectNear(coverage.twiceM2, 4, 1e-2, 'm²');
  });
});

describe('on any ground', () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'passes of random yard %i run half a swath inside and throw nothing out',
    (seed) => {
      const ground = randomGround(seed, 14 + seed, seed % 6).toSorted(
        (a, b) => regionAreaM2(b) - regionAreaM2(a),
      );
      const piece = ground[0] as Region;
      const swathM = Math.sqrt(regionAreaM2(piece)) / 18;
      const { passes } = plan(piece, { swathM });
      expect(passes.length).toBeGreaterThan(0);
      for (const pass of passes.filter((p) => p.kind === 'perimeter')) {
        for (const point of pass.line) {
          expect(regionContains(piece, point)).toBe(true);
          expect(edgeDistanceM(point, piece)).toBeGreaterThan(swathM / 2 - 2e-3); // round joins are within 1 mm
        }
      }
      const coverage = coverageOf([piece], passes, swathM);
      // Only lanes down necks may throw out, a quarter of their swath at most.
      expect(coverage.outsideM2).toBeLessThan(0.01 * coverage.treatedM2);
      expect(coverage.missedM2).toBeLessThan(0.05 * coverage.treatedM2);
    },
  );

  test('each pass knows its length, its section and its place', () => {
    const { passes } = plan(region(lShape(30, 20, 12, 9), rect(4, 4, 3, 2)));
    passes.forEach((pass, i) => {
      expect(pass.order).toBe(i + 1); // counted from 1
      expect(pass.sectionId).toBe('A1');
      expectNear(pass.lengthM, lineLengthM(pass.line), 0, 'm'); // its own line's
      if (pass.kind === 'perimeter') expect(pass.line.at(-1)).toEqual(pass.line[0]); // it closes
    });
    const holes = passes.filter((pass) => pass.kind === 'perimeter').length;
    expect(holes).toBe(2); // round the outside and round the bed
  });

  test('the first pass begins near where the person stands', () => {
    const from = { xM: 30, yM: 0 };
    const { passes } = planPasses({ id: 'A1', region: region(rect(0, 0, 30, 12)) }, { ...AUTO, from });
    const first = passes[0]?.line[0] as YardPoint;
    expect(Math.hypot(first.xM - 30, first.yM)).toBeLessThan(4); // two swaths
  });

  test('turned ground takes as much walking', () => {
    const ring = lShape(30, 20, 12, 9);
    const on = (passes: readonly Pass[]): number => passes.reduce((sum, pass) => sum + pass.lengthM, 0);
    const straight = on(plan(region(ring)).passes);
    for (const turnRad of [0.4, 1.3, 2.2]) {
      expectNear(on(plan(region(moved(ring, turnRad, 90, -40))).passes), straight, 0.02 * straight, 'm'); // rotation
    }
  });

  test('the same ground is walked the same way', () => {
    const ground = region(lShape(30, 20, 12, 9), rect(4, 4, 3, 2));
    expect(plan(ground)).toEqual(plan(ground));
  });
});

describe('narrow ground', () => {
  test('narrower than the swath by far has no pass', () => {
    expect(plan(region(rect(0, 0, 12, 1))).passes).toEqual([]); // half of a 2 m swath would fall beside it
  });

  test('a little narrower has one down the middle', () => {
    const { passes } = plan(region(rect(0, 0, 12, 1.8)));
    expect(passes.map((pass) => pass.kind)).toEqual(['lane']); // no room for a ring
  });

  test('a hair-thin neck between two lawns is no trouble', () => {
    const ground = region(
      points(
        [0, 0],
        [9, 0],
        [9, 4],
        [11, 4],
        [11, 0],
        [20, 0],
        [20, 9],
        [11, 9],
        [11, 4.001],
        [9, 4.001],
        [9, 9],
        [0, 9],
      ),
    );
    const { passes } = plan(ground);
    expect(passes.filter((pass) => pass.kind === 'perimeter').length).toBe(2); // one in each lawn
  });
});
