import { expect, test } from 'vitest';
import { type PassRequest, planPasses } from '../../../core/passes/index.ts';
import type { Region, YardPoint } from '../../../core/spaces.ts';
import { mapRing, moved, points, rect, region, regularPolygon } from '../../support/builders.ts';
import { coverageOf } from '../../support/coverageOf.ts';
import { expectNear } from '../../support/expectNear.ts';

const REQUEST: PassRequest = { swathM: 2, headingDeg: null, from: null, to: null };

test.each([3, 4, 5, 6, 8])(
  'the ring in a regular polygon of %i corners misses its rounded corners and no more',
  (n) => {
    const ground = region(regularPolygon({ xM: 0, yM: 0 }, 2.2 / Math.cos(Math.PI / n), n));
    const { passes } = planPasses({ id: 'A1', region: ground }, REQUEST);
    const { missedM2, outsideM2 } = coverageOf(
      [ground],
      passes.filter(({ kind }) => kind === 'perimeter'),
      2,
    );
    const turnRad = (2 * Math.PI) / n;
    // Closed form, own work: (w/2)² (tan(β/2) − β/2) a corner that turns by β. Inside lies what is farther than w in.
    const cornersM2 = n * (Math.tan(turnRad / 2) - turnRad / 2);
    const innerM2 = n * 0.2 ** 2 * Math.tan(Math.PI / n);
    expectNear(missedM2, cornersM2 + innerM2, 0.01, 'm²');
    expectNear(outsideM2, 0, 1e-3, 'm²'); // nothing is sprayed over the edge
  },
);

test('lanes that meet the perimeter pass at an angle treat a triangle twice at each end, and leave nothing', () => {
  const rhomb = region(points([0, 0], [40, 0], [60, 20], [20, 20]));
  const { passes } = planPasses({ id: 'A1', region: rhomb }, { ...REQUEST, headingDeg: 90 });
  const lanes = passes.filter(({ kind }) => kind === 'lane');
  const acrossM = 20 - 4; // less a swath at both sides: 8 lanes of 2 m, in no need of overlap
  expect(lanes.length).toBe(acrossM / 2);
  const innerM2 = lanes.reduce((sum, { lengthM }) => sum + 2 * lengthM, 0);
  const innerWidthM = 40 - 2 * 2 * Math.SQRT2; // the slanted sides are a swath off: 2 m over sin 45°
  // Closed form: ½ w² |cot φ| twice a lane, φ = 45° and w = 2 m, over the inner parallelogram.
  expectNear(innerM2 - innerWidthM * acrossM, lanes.length * 2 * (0.5 * 4), 0.3, 'm²');
});

const GROUND = region(
  points([0, 0], [34, 2], [31, 24], [14, 20], [2, 23]),
  rect(8, 8, 5, 4),
  regularPolygon({ xM: 23, yM: 13 }, 2.5, 9),
);

function mapped(ground: Region, move: (point: YardPoint) => YardPoint, isMirror = false): Region {
  const ring = (points: readonly YardPoint[]): YardPoint[] => {
    const to = mapRing(points, move);
    return isMirror ? to.reverse() : to;
  };
  return { outer: ring(ground.outer), holes: ground.holes.map(ring) };
}

test.each<[string, Region, number]>([
  ['turned', mapped(GROUND, (p) => moved([p], 0.7, 0, 0)[0] as YardPoint), 1],
  ['moved', mapped(GROUND, (p) => ({ xM: p.xM + 120, yM: p.yM - 75 })), 1],
  ['mirrored', mapped(GROUND, ({ xM, yM }) => ({ xM: -xM, yM }), true), 1],
  ['five times as large, with the swath', mapped(GROUND, ({ xM, yM }) => ({ xM: 5 * xM, yM: 5 * yM })), 5],
])('ground that is %s is walked as well', (_, ground, scale) => {
  const quality = (of: Region, by: number): number[] => {
    const { passes } = planPasses({ id: 'A1', region: of }, { ...REQUEST, swathM: 1.8 * by });
    const { treatedM2, missedM2, twiceM2 } = coverageOf([of], passes, 1.8 * by);
    const onM = passes.reduce((sum, { lengthM }) => sum + lengthM, 0);
    return [missedM2 / treatedM2, twiceM2 / treatedM2, (onM * 1.8 * by) / treatedM2];
  };
  const [as, now] = [quality(GROUND, 1), quality(ground, scale)];
  // The law of likeness; arcs have corners by the millimetre, so that lengths agree to a percent, not to rounding.
  as.forEach((each, i) => {
    expect(Math.abs((now[i] ?? Number.NaN) - each)).toBeLessThan(0.01);
  });
});
