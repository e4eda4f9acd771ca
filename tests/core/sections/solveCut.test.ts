import { expect, test } from 'vitest';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { areaBelowRunM2 } from '../../../core/sections/runArea.ts';
import { solveCut } from '../../../core/sections/solveCut.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('a cut slides to where its area is right, past corners', () => {
  const ell = region(points([0, 0], [10, 0], [10, 2], [4, 2], [4, 8], [0, 8]));
  const facing = faceAlong(cornersOf(ell), { x: 1, y: 0 });
  const cut = solveCut(facing, { xM: 9, yM: 1 }, 20); // 20 m² lie left of x = 2.5: from 9 past the step at 4
  expectNear(cut?.[0]?.start.at.xM ?? Number.NaN, 2.5, 1e-9, 'm'); // 8 m wide there
});

test('of several runs of a line it is the one near the place', () => {
  const fork = region(points([0, 0], [6, 0], [6, 5], [4, 5], [4, 1], [2, 1], [2, 5], [0, 5]));
  const facing = faceAlong(cornersOf(fork), { x: 0, y: 1 });
  const wholeM2 = 22; // 6 x 1 and two of 2 x 4
  const cut = solveCut(facing, { xM: 5, yM: 3 }, wholeM2 - 3) ?? [];
  expectNear(cut[0]?.start.at.yM ?? Number.NaN, 3.5, 1e-9, 'm'); // 3 m² of a prong 2 m wide are its last 1.5 m
  expectNear(areaBelowRunM2(facing, 3.5, cut) ?? Number.NaN, 19, 1e-9, 'm²');
});

test('more ground than there is is not found', () => {
  const facing = faceAlong(cornersOf(region(rect(0, 0, 4, 4))), { x: 1, y: 0 });
  expect(solveCut(facing, { xM: 2, yM: 2 }, 20)).toBeUndefined();
});
