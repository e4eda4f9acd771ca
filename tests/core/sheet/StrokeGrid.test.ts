import { expect, test } from 'vitest';
import { at } from '../../../core/sheet/drawing.ts';
import { strokeMeetsBox } from '../../../core/sheet/pageGeometry.ts';
import { StrokeGrid } from '../../../core/sheet/StrokeGrid.ts';

const FRAME = { xMm: 10, yMm: 20, widthMm: 180, heightMm: 120 };

/** Fractions of a golden step: spread evenly, the same every time. */
function spread(i: number): number {
  return (i * 0.618_033_988_75) % 1;
}

test('it counts the lines a plain search through all of them finds', () => {
  const grid = new StrokeGrid(FRAME);
  const lines = Array.from({ length: 300 }, (_, i) => [
    at(200 * spread(i), 160 * spread(7 * i + 1)),
    at(200 * spread(3 * i + 2), 160 * spread(5 * i + 3)),
  ]);
  for (const points of lines) grid.add({ points, closed: false });
  let met = 0;
  for (let i = 0; i < 200; i++) {
    const box = { xMm: 12 + 160 * spread(11 * i), yMm: 22 + 100 * spread(13 * i), widthMm: 9, heightMm: 4 };
    const plain = lines.filter(
      ([from, to]) => from !== undefined && to !== undefined && strokeMeetsBox(from, to, box),
    );
    expect(grid.countMeeting(box)).toBe(plain.length); // by the plain search
    met += plain.length;
  }
  expect(met).toBeGreaterThan(200); // the boxes did lie on lines
});

test('a line that bends through a box counts once', () => {
  const grid = new StrokeGrid(FRAME);
  grid.add({ points: [at(20, 30), at(25, 40), at(30, 30), at(35, 40)], closed: true });
  expect(grid.countMeeting({ xMm: 18, yMm: 28, widthMm: 40, heightMm: 20 })).toBe(1); // one subpath
});

test('an empty grid meets nothing', () => {
  expect(new StrokeGrid(FRAME).countMeeting(FRAME)).toBe(0);
});
