import { expect, test } from 'vitest';
import { at } from '../../../core/sheet/drawing.ts';
import {
  drawFlag,
  drawMark,
  drawNorthArrow,
  FLAG_HEIGHT_MM,
  FLAG_WIDTH_MM,
  SYMBOL_RADIUS_MM,
} from '../../../core/sheet/mapSymbols.ts';
import type { PageMark } from '../../../core/sheet/page.ts';
import { textsOf } from '../../support/sheetPages.ts';

function pointsOf(marks: readonly PageMark[]) {
  return marks.flatMap((mark) =>
    mark.kind === 'path' ? mark.subpaths.flatMap((subpath) => subpath.points) : [],
  );
}

test('symbols stay within the radius labels keep off', () => {
  for (const kind of ['spigot', 'landmark'] as const) {
    for (const point of pointsOf(drawMark(kind, at(50, 50)))) {
      expect(Math.hypot(point.xMm - 50, point.yMm - 50)).toBeLessThanOrEqual(SYMBOL_RADIUS_MM);
    }
  }
});

test('a spigot and a landmark are told apart by shape', () => {
  expect(pointsOf(drawMark('spigot', at(0, 0)))).not.toEqual(pointsOf(drawMark('landmark', at(0, 0))));
});

test('a flag stands on its point and is as high and wide as labels keep free', () => {
  const points = pointsOf(drawFlag(at(10, 20)));
  expect(points).toContainEqual(at(10, 20)); // the foot of the staff
  expect(Math.min(...points.map((point) => point.yMm))).toBeCloseTo(20 - FLAG_HEIGHT_MM, 9);
  expect(Math.max(...points.map((point) => point.xMm))).toBeCloseTo(10 + FLAG_WIDTH_MM, 9);
});

test('the north arrow points up the page', () => {
  const arrow = drawNorthArrow(at(30, 100), 12, 'N');
  const highest = pointsOf(arrow).reduce((best, next) => (next.yMm < best.yMm ? next : best));
  expect(highest).toEqual(at(30, 88)); // 12 mm above its foot
  expect(textsOf(arrow)).toEqual(['N']);
});
