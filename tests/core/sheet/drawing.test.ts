import { expect, test } from 'vitest';
import {
  at,
  boxesOverlap,
  boxInside,
  centredText,
  circleOutline,
  findCommonBox,
  growBox,
  INK,
  line,
  pen,
  shape,
  text,
  textBox,
} from '../../../core/sheet/drawing.ts';
import { textWidthMm } from '../../../core/sheet/measureText.ts';
import { expectNear } from '../../support/expectNear.ts';

const BOX = { xMm: 0, yMm: 0, widthMm: 10, heightMm: 10 };

test('boxes that only touch do not overlap', () => {
  expect(boxesOverlap(BOX, { ...BOX, xMm: 9.9 })).toBe(true);
  expect(boxesOverlap(BOX, { ...BOX, xMm: 10 })).toBe(false);
  expect(boxesOverlap(BOX, { ...BOX, yMm: 10 })).toBe(false);
});

test('a box is inside another up to its edge and no further', () => {
  expect(boxInside(BOX, BOX)).toBe(true);
  expect(boxInside(growBox(BOX, 0.1), BOX)).toBe(false);
  expect(boxInside(growBox(BOX, -0.1), BOX)).toBe(true);
});

test('the common box of two boxes is their overlap', () => {
  expect(findCommonBox(BOX, { ...BOX, xMm: 6, yMm: 7 })).toEqual({ xMm: 6, yMm: 7, widthMm: 4, heightMm: 3 }); // 10 - 6, 10 - 7
  expect(findCommonBox(BOX, { ...BOX, xMm: 20 })).toBeUndefined();
});

test('the box of right-aligned text ends at its point', () => {
  const box = textBox(text(50, 20, 'Back lawn', { sizeMm: 3, face: 'condensed', align: 'right' }));
  expectNear(box.xMm + box.widthMm, 50, 1e-9, 'mm'); // the alignment point
  expectNear(box.widthMm, textWidthMm('Back lawn', 3, 'condensed'), 1e-9, 'mm'); // its own measure
});

test('text turned by a quarter takes its width upwards', () => {
  const mark = text(50, 50, 'Back lawn', { sizeMm: 3, face: 'condensed', turnDeg: -90 });
  const box = textBox(mark);
  expectNear(box.heightMm, textWidthMm('Back lawn', 3, 'condensed'), 1e-9, 'mm'); // width and height change places
  expect(box.yMm + box.heightMm).toBeLessThanOrEqual(50 + 1e-9);
});

test('centred text has its capitals in the middle of the point', () => {
  const mark = centredText(at(10, 10), 'A1', { sizeMm: 5, face: 'bold' });
  // IBM Plex's cap height is 698 of 1000 (its OS/2 table): half of it above the middle, the baseline half below
  expectNear(mark.at.yMm, 10 + (0.698 / 2) * 5, 1e-9, 'mm');
  expect(mark.align).toBe('centre');
});

test('every corner of a circle outline lies on the circle', () => {
  for (const point of circleOutline(at(3, 4), 2).points) {
    expectNear(Math.hypot(point.xMm - 3, point.yMm - 4), 2, 1e-12, 'mm'); // its radius
  }
});

test('a line is stroked and never filled, a shape as it is told', () => {
  const drawn = line([at(0, 0), at(1, 1)], pen(INK, 0.2));
  expect([drawn.fill, drawn.subpaths[0]?.closed]).toEqual([null, false]);
  expect(shape(drawn.subpaths, INK, null).stroke).toBeNull();
});
