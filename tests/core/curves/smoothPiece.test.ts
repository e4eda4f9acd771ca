import { expect, test } from 'vitest';
import { smoothNeighbours, smoothPiece } from '../../../core/curves/smoothPiece.ts';
import type { TracedCorner } from '../../../core/yard.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number) => ({ xM, yM });

test('a run of one edge is straight: its inner points at even thirds', () => {
  const [, b, c] = smoothPiece(null, at(0, 0), at(3, 6), null);
  expect([b, c]).toStrictEqual([at(1, 2), at(2, 4)]); // thirds of the chord
});

test('two smooth edges leave their corner on one line, in the measure of their knots', () => {
  const [p, q, r, s] = [at(0, 0), at(4, 1), at(5, 5), at(9, 9)];
  const before = smoothPiece(null, p, q, r);
  const after = smoothPiece(p, q, r, s);
  const [ax, ay] = [q.xM - before[2].xM, q.yM - before[2].yM];
  const [bx, by] = [after[1].xM - q.xM, after[1].yM - q.yM];
  expectNear(ax * by - ay * bx, 0, 1e-12, 'm²'); // parallel
  expect(ax * bx + ay * by).toBeGreaterThan(0);
  // Both edges are √17 m long: at even knots the tangent is half the way from p to r, a third of it the inner point's.
  expectNear(bx, 5 / 6, 1e-12, 'm');
  expectNear(by, 5 / 6, 1e-12, 'm');
});

test('the end of a run is a parabola: the inner points lie on the tangents’ crossing by two thirds', () => {
  const [a, b, c, d] = smoothPiece(null, at(0, 0), at(4, 0), at(8, 4));
  // A cubic is a parabola when its third difference is nothing: d − 3c + 3b − a
  expectNear(d.xM - 3 * c.xM + 3 * b.xM - a.xM, 0, 1e-12, 'm');
  expectNear(d.yM - 3 * c.yM + 3 * b.yM - a.yM, 0, 1e-12, 'm');
});

test('corners at one place end a run, and no number is lost', () => {
  const piece = smoothPiece(at(0, 0), at(0, 0), at(2, 0), at(2, 0));
  expect(piece).toStrictEqual([at(0, 0), at(2 / 3, 0), at(2 - 2 / 3, 0), at(2, 0)]); // thirds of the chord
});

test('a run knows the corners its curve goes by', () => {
  const smooth = (xM: number): TracedCorner => ({ xM, yM: 0, run: { kind: 'smooth' } });
  const ring = [smooth(0), smooth(1), at(2, 0), at(3, 0)];
  expect(smoothNeighbours(ring, 0)).toStrictEqual({ before: null, after: ring[2] });
  expect(smoothNeighbours(ring, 1)).toStrictEqual({ before: ring[0], after: null });
  const all = [smooth(0), smooth(1), smooth(2)];
  expect(smoothNeighbours(all, 0)).toStrictEqual({ before: all[2], after: all[2] });
});
