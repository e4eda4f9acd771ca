import { expect, test } from 'vitest';
import { at, boxOutline } from '../../../core/sheet/drawing.ts';
import {
  boundsOf,
  distanceMm,
  edgesMeetBox,
  findStrokeInBox,
  insideSubpaths,
  pathLengthMm,
  pointAlong,
  strokeMeetsBox,
} from '../../../core/sheet/pageGeometry.ts';

const BOX = { xMm: 0, yMm: 0, widthMm: 10, heightMm: 10 };
const HOLED = [boxOutline(BOX), boxOutline({ xMm: 4, yMm: 4, widthMm: 2, heightMm: 2 })];

test('a hole is outside by the even-odd rule', () => {
  expect(insideSubpaths(HOLED, at(2, 2))).toBe(true);
  expect(insideSubpaths(HOLED, at(5, 5))).toBe(false);
  expect(insideSubpaths(HOLED, at(11, 5))).toBe(false);
});

test('a stroke across a box shows only the part inside', () => {
  expect(findStrokeInBox(at(-5, 5), at(15, 5), BOX)).toEqual([at(0, 5), at(10, 5)]); // cut at the two sides
  expect(findStrokeInBox(at(-5, 5), at(-1, 5), BOX)).toBeUndefined();
  expect(strokeMeetsBox(at(-1, 11), at(11, 12), BOX)).toBe(false);
  expect(strokeMeetsBox(at(2, 2), at(3, 3), BOX)).toBe(true);
});

test('a box inside a region, or inside its hole, meets no edge; one over an edge does', () => {
  expect(edgesMeetBox(HOLED, { xMm: 1, yMm: 1, widthMm: 2, heightMm: 2 })).toBe(false);
  expect(edgesMeetBox(HOLED, { xMm: 3, yMm: 3, widthMm: 4, heightMm: 4 })).toBe(true);
  expect(edgesMeetBox(HOLED, { xMm: 4.5, yMm: 4.5, widthMm: 1, heightMm: 1 })).toBe(false);
  expect(edgesMeetBox(HOLED, { xMm: 9, yMm: 9, widthMm: 4, heightMm: 4 })).toBe(true);
});

test('bounds hold all subpaths, however many corners there are', () => {
  const many = Array.from({ length: 200_000 }, (_, i) => at(i / 1000, -1));
  expect(boundsOf([...HOLED, { points: many, closed: true }])).toEqual({
    xMm: 0,
    yMm: -1,
    widthMm: 199.999, // the last of 200,000 points a thousandth apart
    heightMm: 11, // from -1 to 10
  });
});

test('a way along a path turns its corners', () => {
  const path = [at(0, 0), at(4, 0), at(4, 3)];
  expect(pathLengthMm(path)).toBe(7); // 4 + 3
  expect(distanceMm(at(0, 0), at(3, 4))).toBe(5); // the 3-4-5 triangle
  expect(pointAlong(path, 5)).toEqual({ point: at(4, 1), dx: 0, dy: 1 }); // 4 along, then 1 down
  expect(pointAlong(path, 99).point).toEqual(at(4, 3)); // no further than the end
});
