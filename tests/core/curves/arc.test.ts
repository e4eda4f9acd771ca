import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcOf } from '../../../core/curves/index.ts';
import { circleThrough } from '../../support/curveSamples.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number) => ({ xM, yM });

test('half a circle runs round its middle, counter-clockwise or clockwise as its point says', () => {
  const below = arcOf(at(0, 0), at(5, -5), at(10, 0));
  expectNear(below?.radiusM ?? Number.NaN, 5, 1e-12, 'm'); // half of the chord of 10
  expectNear(below?.sweepRad ?? Number.NaN, Math.PI, 1e-12, 'rad'); // from west by south to east
  expectNear(below?.centre.xM ?? Number.NaN, 5, 1e-12, 'm'); // the middle of the chord
  expectNear(below?.centre.yM ?? Number.NaN, 0, 1e-12, 'm');
  expectNear(arcOf(at(0, 0), at(5, 5), at(10, 0))?.sweepRad ?? Number.NaN, -Math.PI, 1e-12, 'rad'); // the other way
});

test('a point far round the circle makes the long arc', () => {
  // Unit circle: from 0° by 180° to 90° is 270° clockwise.
  const arc = arcOf(at(1, 0), at(-1, 0), at(0, 1));
  expectNear(arc?.sweepRad ?? Number.NaN, (-3 / 2) * Math.PI, 1e-12, 'rad'); // closed form
});

test.each([
  ['its point on the chord', at(0, 0), at(3, 0), at(10, 0)],
  ['its point beyond the chord', at(0, 0), at(12, 0), at(10, 0)],
  ['its point on its start', at(0, 0), at(0, 0), at(10, 0)],
  ['its point on its end', at(0, 0), at(10, 0), at(10, 0)],
  ['its point a tenth of a micrometre from its end', at(0, 0), at(10, 1e-7), at(10, 0)],
  ['both corners at one place', at(4, 4), at(3, 0), at(4, 4)],
  ['all at one place', at(4, 4), at(4, 4), at(4, 4)],
  ['a bulge of a millionth of a micrometre', at(0, 0), at(5, 1e-12), at(10, 0)],
  ['a place that is no number', at(0, 0), at(Number.NaN, 1), at(10, 0)],
  ['a place beyond all numbers', at(-1e308, 0), at(0, 1), at(1e308, 0)],
])('%s: straight', (_, from, via, to) => {
  expect(arcOf(from, via, to)).toBeNull();
});

test('its middle is where the linear equations of the circle have it', () => {
  const coordinate = fc.integer({ min: -50_000, max: 50_000 }).map((mm) => mm / 1000);
  const point = fc.record({ xM: coordinate, yM: coordinate });
  fc.assert(
    fc.property(point, point, point, (from, via, to) => {
      const arc = arcOf(from, via, to);
      const circle = circleThrough(from, via, to);
      // Both ways lose digits when the three are nearly on one line.
      fc.pre(arc !== null && circle.radiusM < 1e3);
      expectNear(arc.radiusM, circle.radiusM, 1e-6, 'm');
      expectNear(arc.centre.xM, circle.centre.xM, 1e-6, 'm');
      expectNear(arc.centre.yM, circle.centre.yM, 1e-6, 'm');
    }),
    { seed: 20261125 },
  );
});
