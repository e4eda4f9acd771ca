import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Defect } from '../../../core/result.ts';
import { inverseOfProjective, pictureToQuad, projected, type Quad } from '../../../renderer/drawing/index.ts';
import { expectNear } from '../../support/expectNear.ts';

const trapezoid: Quad = [
  { x: 10, y: 20 },
  { x: 110, y: 0 },
  { x: 140, y: 90 },
  { x: 0, y: 70 },
];

describe('a picture on four corners', () => {
  test('each corner of the picture lands on its own corner', () => {
    const map = pictureToQuad(800, 600, trapezoid);
    const corners = [
      [0, 0],
      [800, 0],
      [800, 600],
      [0, 600],
    ] as const; // going round from the top left
    for (const [i, [x, y]] of corners.entries()) {
      const at = projected(map, { x, y });
      expectNear(at.x, trapezoid[i]?.x ?? Number.NaN, 1e-9, 'px');
      expectNear(at.y, trapezoid[i]?.y ?? Number.NaN, 1e-9, 'px');
    }
  });

  test('the middle of the picture lands where the diagonals of the four corners meet', () => {
    const at = projected(pictureToQuad(800, 600, trapezoid), { x: 400, y: 300 });
    // (10,20) + s (130,70) = (110,0) + t (-110,70): t = s + 2/7, 240 s = 480/7, so s = 2/7.
    expectNear(at.x, 330 / 7, 1e-9, 'px'); // 10 + 130 s
    expectNear(at.y, 40, 1e-9, 'px'); // 20 + 70 s
  });

  test('there and back is where one began', () => {
    const map = pictureToQuad(800, 600, trapezoid);
    const back = inverseOfProjective(map);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 800, noNaN: true }),
        fc.double({ min: 0, max: 600, noNaN: true }),
        (x, y) => {
          const at = projected(back, projected(map, { x, y }));
          expectNear(at.x, x, 1e-6, 'px');
          expectNear(at.y, y, 1e-6, 'px');
        },
      ),
      { seed: 5 },
    );
  });

  test('four corners on one line carry no picture', () => {
    const line: Quad = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 2, y: 0 },
      { x: 3, y: 0 },
    ];
    expect(() => pictureToQuad(10, 10, line)).toThrow(Defect);
  });
});
