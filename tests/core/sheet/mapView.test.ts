import { expect, test } from 'vitest';
import {
  findGroundBounds,
  regionToPage,
  ringToPage,
  viewOf,
  yardToPage,
} from '../../../core/sheet/mapView.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const BOX = { xMm: 20, yMm: 30, widthMm: 160, heightMm: 100 };
const VIEW = viewOf({ minXM: 0, minYM: 0, maxXM: 30, maxYM: 10 }, BOX, 200);

test('the middle of the ground lies in the middle of the box', () => {
  expect(yardToPage(VIEW, { xM: 15, yM: 5 })).toEqual({ xMm: 100, yMm: 80 }); // 20 + 160/2, 30 + 100/2
});

test('north is up and a metre is 1000 / scale millimetres', () => {
  const origin = yardToPage(VIEW, { xM: 0, yM: 0 });
  const corner = yardToPage(VIEW, { xM: 30, yM: 10 });
  expectNear(corner.xMm - origin.xMm, 150, 1e-9, 'mm'); // 30 m at 1:200
  expectNear(origin.yMm - corner.yMm, 50, 1e-9, 'mm'); // 10 m at 1:200
});

test('a region keeps its holes as further closed subpaths', () => {
  const subpaths = regionToPage(VIEW, region(rect(0, 0, 10, 10), rect(2, 2, 3, 3)));
  expect(subpaths.map((subpath) => [subpath.points.length, subpath.closed])).toEqual([
    [4, true], // outer rectangle
    [4, true], // hole
  ]);
  expect(ringToPage(VIEW, rect(0, 0, 10, 10))).toEqual(subpaths[0]);
});

test('the bounds of no points are undefined, of points their upright rectangle', () => {
  expect(findGroundBounds([])).toBeUndefined();
  const bounds = findGroundBounds(rect(-3, 2, 10, 4));
  expect(bounds).toEqual({ minXM: -3, minYM: 2, maxXM: 7, maxYM: 6 }); // -3 + 10, 2 + 4
});
