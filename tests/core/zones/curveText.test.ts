import { expect, test } from 'vitest';
import type { Traced } from '../../../core/yard.ts';
import { curveText, curveWords, drawnWords, segmentTable } from '../../../core/zones/curveText.ts';
import { type CurveWorking, curveWorking } from '../../../core/zones/curveWorking.ts';
import { rect } from '../../support/builders.ts';

function curveOf(traced: Traced): CurveWorking {
  const curve = curveWorking(traced, 'metric');
  if (curve === null) throw new Error('no curve');
  return curve;
}

test('a circle’s formula is said with its numbers', () => {
  const circle = curveOf({ kind: 'circle', centre: { xM: 10, yM: -4 }, radiusM: 3.125 });
  // π 3.125² = 30.6796
  expect(curveWords(circle, 'metric')).toEqual([
    'Circle about 10.00 east, -4.00 north: A = π r² = π × 3.125² = 30.6796 m²',
  ]);
});

test('an ellipse’s too', () => {
  const ellipse = curveOf({
    kind: 'ellipse',
    centre: { xM: 0, yM: 0 },
    halfLengthM: 5,
    halfWidthM: 2,
    bearingDeg: 30,
  });
  // π 5 2 = 31.4159
  expect(curveWords(ellipse, 'metric')[0]).toContain('π a b = π × 5.00 × 2.00 = 31.4159 m²');
});

test('arcs are the polygon of the corners and a segment each, which add up', () => {
  const [a, b, c, d] = rect(0, 0, 4, 4);
  if (!a || !b || !c || !d) throw new Error('a square has four corners');
  const arcs = curveOf({
    kind: 'corners',
    corners: [{ ...a, run: { kind: 'arc', via: { xM: 2, yM: -2 } } }, b, c, d],
  });
  // half a circle of radius 2: 180°, π 2²/2 = 6.2832
  expect(segmentTable(arcs, 'metric')).toEqual([
    ['arc from corner', 'r m', 'θ', 'segment m²'],
    ['1', '2.00', '180.000000°', '6.2832'],
  ]);
  const lines = curveText(arcs, 99, 'metric');
  expect(lines.join('\n')).toContain('16.0000, and on the chord'); // 4 * 4
  expect(lines.join('\n')).toContain('together 22.2832 m²'); // 16 + 6.2832
  expect(lines.at(-1)).toBe(drawnWords(99));
});

test('smooth edges point to the ring', () => {
  expect(curveWords({ kind: 'smooth', edges: 2 }, 'us')).toEqual([
    '2 edges run smoothly through the corners; the area is that of the ring below',
  ]);
  expect(segmentTable({ kind: 'smooth', edges: 2 }, 'us')).toEqual([]);
});
