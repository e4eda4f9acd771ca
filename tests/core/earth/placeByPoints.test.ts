import { describe, expect, test } from 'vitest';
import {
  lonLatToYard,
  placeByPoints,
  scaleMisfit,
  type YardPlacing,
  yardToLonLat,
} from '../../../core/earth/index.ts';
import { movePoint } from '../../../core/frame/index.ts';
import type { LonLat, YardPoint } from '../../../core/spaces.ts';
import { points } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

function placingOf(known: readonly { at: YardPoint; place: LonLat }[], middle: YardPoint): YardPlacing {
  const placing = placeByPoints(known, middle);
  if (!placing.ok) throw new Error(JSON.stringify(placing.problems));
  return placing.value;
}

const corners = points([0, 0], [60, 0], [60, 40], [0, 40]);
const middle = { xM: 30, yM: 20 };

test.each([
  ['the middle north', 39.9, -86.2],
  ['the far south', -80, 20],
  ['the equator', 0, 0],
  ['the antimeridian', -17, 180],
  ['near the pole', 89.9, 10],
])('a yard taken from %s, turned and moved, is put back where it was', (_where, latDeg, lonDeg) => {
  const random = seededRandom(9);
  for (let i = 0; i < 20; i++) {
    const origin = { latDeg, lonDeg };
    const turnDeg = between(random, -180, 180);
    const known = corners.map((at) => ({
      at,
      place: yardToLonLat(origin, movePoint({ about: middle, to: { xM: 0, yM: 0 }, turnDeg }, at)),
    }));
    const placing = placingOf(known.slice(0, 2 + (i % 3)), middle);
    const off = lonLatToYard(origin, placing.origin);
    expectNear(Math.hypot(off.xM, off.yM), 0, 1e-6, 'm'); // where it was taken from; 1e-6 m is 1e-11°
    expectNear((placing.turnDeg - turnDeg) % 360, 0, 1e-5, '°'); // 1e-5° is 5e-6 m at the yard's edge
    expectNear(placing.ratio, 1, 1e-8, ''); // nothing was scaled
    for (const left of placing.residualsM) expectNear(left, 0, 1e-6, 'm');
  }
});

test('places measured farther apart than the yard has them say so, and each point how far it is off', () => {
  const origin = { latDeg: 39.9, lonDeg: -86.2 };
  const known = corners.map((at) => ({
    at,
    place: yardToLonLat(origin, { xM: (at.xM - 30) * 1.018, yM: (at.yM - 20) * 1.018 }),
  }));
  const { ratio, residualsM } = placingOf(known, middle);
  expectNear(ratio, 1.018, 1e-7, ''); // as made
  for (const left of residualsM) expectNear(left, 0.018 * Math.hypot(30, 20), 1e-5, 'm'); // 1.8 % of half a diagonal
});

test('a misfit of scale is said from half a percent on', () => {
  expect(scaleMisfit(1.018, 'these points')).toEqual({
    kind: 'value/scale-misfit',
    where: { field: 'these points' },
    facts: { ratio: 1.018 },
  });
  expect(scaleMisfit(0.99, 'these points')).toBeDefined();
  expect(scaleMisfit(1.004, 'these points')).toBeUndefined();
});

describe('what cannot place a yard is said', () => {
  const place = { latDeg: 39.9, lonDeg: -86.2 };

  test('one point alone', () => {
    expect(placeByPoints([{ at: middle, place }], middle)).toMatchObject({
      problems: [{ kind: 'value/too-few' }],
    });
    expect(placeByPoints([], middle)).toMatchObject({ problems: [{ kind: 'value/too-few' }] });
  });

  test('two points at one place', () => {
    const known = [
      { at: middle, place },
      { at: { xM: 0, yM: 0 }, place },
    ];
    expect(placeByPoints(known, middle)).toMatchObject({ problems: [{ kind: 'value/places-coincide' }] });
  });

  test.each([
    ['a degree apart for 36 metres', { latDeg: 40.9, lonDeg: -86.2 }],
    ['on the other side of the earth', { latDeg: -39.9, lonDeg: 93.8 }],
    ['one with latitude and longitude swapped', { latDeg: -86.2, lonDeg: 39.9 }],
  ])('places %s', (_what, other) => {
    const known = [
      { at: middle, place },
      { at: { xM: 0, yM: 0 }, place: other },
    ];
    expect(placeByPoints(known, middle)).toMatchObject({ problems: [{ kind: 'value/scale-misfit' }] });
  });
});
