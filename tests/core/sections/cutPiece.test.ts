import { expect, test } from 'vitest';
import { regionAreaM2, ringPerimeterM } from '../../../core/kernel/index.ts';
import { cutPiece } from '../../../core/sections/cutPiece.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const LAY = { laneRad: 0, swathM: 1, markM: null, loadAreaM2: 1e9 };
const never = (): boolean => false;

test('a piece within one load is not cut', () => {
  const ground = region(rect(0, 0, 5, 5));
  const piece = cutPiece({ region: ground, loads: 1, rests: [] }, LAY, never);
  expect(piece).toEqual({ parts: [{ region: ground, loads: 1, rests: [] }], cuts: [] }); // nothing to do
});

test('a strip is cut straight across at exact places', () => {
  const piece = cutPiece({ region: region(rect(0, 0, 30, 2)), loads: 5, rests: [] }, LAY, never);
  const places = (piece?.cuts ?? []).map(([from]) => from.xM).sort((a, b) => a - b);
  expect(places.length).toBe(4); // five parts have four borders
  places.forEach((xM, i) => {
    expectNear(xM, 6 * (i + 1), 1e-9, 'm'); // closed form: 30 m / 5
  });
});

test('a search can be stopped', () => {
  const share = { region: region(rect(0, 0, 30, 2)), loads: 5, rests: [] };
  expect(cutPiece(share, LAY, () => true)).toBeUndefined();
});

test('many loads still come out even', () => {
  const piece = cutPiece({ region: region(rect(0, 0, 60, 40)), loads: 60, rests: [] }, LAY, never);
  expect(piece?.parts.length).toBe(60);
  for (const part of piece?.parts ?? []) {
    expectNear(regionAreaM2(part.region), 40, 40e-6, 'm²'); // 2,400 m² / 60
    // Compact, not slivers nibbled off: a square of 40 m² has 4 sqrt(40) m of edge, one three times as long as wide 1.15 of it.
    expect(ringPerimeterM(part.region.outer)).toBeLessThan(1.3 * 4 * Math.sqrt(40));
  }
});

test.each([2, 3, 4, 5, 6, 7, 8, 9])(
  'narrow ways that fork and meet again are cut to %i equal loads',
  (loads) => {
    // Lanes 2 m wide round two greens, the middle one slanting, with a dead end to the north: 41 x 21 m over all.
    const ways = region(
      points([0, 0], [40, 0], [40, 20], [24, 20], [24, 30], [22, 30], [22, 20], [0, 20]),
      points([2, 2], [16, 2], [20, 18], [2, 18]),
      points([18.5, 2], [38, 2], [38, 18], [22.5, 18]),
    );
    const wholeM2 = regionAreaM2(ways);
    const piece = cutPiece({ region: ways, loads, rests: [] }, LAY, never);
    expect(piece?.parts.length).toBe(loads);
    for (const part of piece?.parts ?? []) {
      expectNear(regionAreaM2(part.region), wholeM2 / loads, 1e-6 * wholeM2, 'm²'); // equal shares
    }
  },
);
