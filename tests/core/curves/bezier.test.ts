import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Bezier, bezierAreaM2, bezierAt, bezierPoints } from '../../../core/curves/bezier.ts';
import { MOST_OFF_CURVE_M } from '../../../core/curves/index.ts';
import { areaToChordM2, mostApartM } from '../../support/curveSamples.ts';
import { expectNear } from '../../support/expectNear.ts';

const coordinate = fc.double({ min: -10, max: 10, noNaN: true });
const point = fc.record({ xM: coordinate, yM: coordinate });
const anyPiece: fc.Arbitrary<Bezier> = fc.tuple(point, point, point, point);
const line = (piece: Bezier) => [piece[0], ...bezierPoints(piece), piece[3]];
const samples = (piece: Bezier, n: number) => Array.from({ length: n + 1 }, (_, i) => bezierAt(piece, i / n));

test('the area of a piece is that of very many of its points', () => {
  fc.assert(
    fc.property(anyPiece, (piece) => {
      const n = 4000;
      // The chords' area converges as 1/n²; two counts tell the rest (Richardson).
      const [half, whole] = [areaToChordM2(samples(piece, n / 2)), areaToChordM2(samples(piece, n))];
      expectNear(bezierAreaM2(piece), whole + (whole - half) / 3, 1e-9, 'm²');
    }),
    { seed: 20261125, numRuns: 50 },
  );
});

test('what is drawn has the area of the piece, whatever its bends, loops and cusps', () => {
  fc.assert(
    fc.property(anyPiece, (piece) => {
      expectNear(areaToChordM2(line(piece)), bezierAreaM2(piece), 1e-9, 'm²');
    }),
    { seed: 20261125, numRuns: 500 },
  );
});

test('what is drawn is nowhere farther than 2 mm from the piece, nor the piece from it', () => {
  fc.assert(
    fc.property(anyPiece, (piece) => {
      const n = 1200;
      // Second differences of points at most 20 m apart: 6 · 80 m, so these chords are off by 480 / 8n².
      expect(mostApartM(line(piece), samples(piece, n))).toBeLessThanOrEqual(MOST_OFF_CURVE_M + 60 / n ** 2);
    }),
    { seed: 20261125, numRuns: 15 },
  );
});

test('a piece whose points lie at even thirds of a line is its chord', () => {
  const [a, b, c, d] = [0, 1, 2, 3].map((i) => ({ xM: i, yM: 2 * i })) as [
    Bezier[0],
    Bezier[0],
    Bezier[0],
    Bezier[0],
  ];
  expect(bezierPoints([a, b, c, d])).toStrictEqual([]);
});

test('a piece at one place, or of absurd size, comes to few corners', () => {
  const here = { xM: 4, yM: 4 };
  expect(bezierPoints([here, here, here, here])).toStrictEqual([]);
  const far = { xM: 1e300, yM: 1e300 };
  expect(bezierPoints([here, far, { xM: -1e300, yM: 7 }, here]).length).toBeLessThan(100);
});
