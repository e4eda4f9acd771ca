import { expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { rectangle } from '../../../core/tape/index.ts';
import { FOOT_M, SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, EAST, given } from '../../support/taped.ts';

test('50 ft by 25 ft hold 1,250 ft², wherever they stand and however they are turned', () => {
  for (const place of [EAST, AWAY]) {
    const areaFt2 = signedAreaM2(given(rectangle(50 * FOOT_M, 25 * FOOT_M, place))) / SQUARE_FOOT_M2;
    expectNear(areaFt2, 1250, 1e-8, 'ft²'); // Clemson Cooperative Extension, HGIC 1220: 50 ft × 25 ft
  }
});

test('30 m by 20 m hold 600 m²', () => {
  // WestOne training toolbox, unit fn27 on turf areas: 30 m × 20 m
  expectNear(signedAreaM2(given(rectangle(30, 20, EAST))), 600, 1e-9, 'm²');
});

test('the length runs on the bearing and the width lies to its left', () => {
  const ring = given(rectangle(4, 3, EAST));
  // worked by hand: bearing 90 is east, its left is north
  const corners = [
    [0, 0],
    [4, 0],
    [4, 3],
    [0, 3],
  ];
  ring.forEach(({ xM, yM }, i) => {
    expectNear(xM, corners[i]?.[0] as number, 1e-12, 'm');
    expectNear(yM, corners[i]?.[1] as number, 1e-12, 'm');
  });
  expect(ring).toHaveLength(4);
});

test('a size of nothing is refused, each by its name', () => {
  const refused = rectangle(0, -1, EAST);
  expect(refused.ok ? [] : refused.problems.map(({ where }) => where)).toEqual([
    { field: 'length' },
    { field: 'width' },
  ]);
});
