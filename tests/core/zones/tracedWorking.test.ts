import { expect, test } from 'vitest';
import type { Traced } from '../../../core/yard.ts';
import { edgeName, edgesText, outlineEdges, tracedWorking } from '../../../core/zones/tracedWorking.ts';
import { outline, rect } from '../../support/builders.ts';

test('an outline with a hole is worked edge by edge, each under its name', () => {
  const edges = outlineEdges(outline('zone', 'lawn', rect(0, 0, 20, 10), rect(2, 2, 3, 4)), 'metric');
  expect(edges.map(({ area, curve }) => [area, curve])).toEqual([
    [200, null], // 20 * 10
    [12, null], // 3 * 4
  ]);
  const lines = edgesText(edges, 'metric');
  expect(lines).toContain('Edge');
  expect(lines).toContain('Hole 1');
  expect([0, 1, 2].map(edgeName)).toEqual(['edge', 'hole 1', 'hole 2']); // the outer one has no number
});

test('a copy of a curve has its formula and every corner it is computed with', () => {
  const circle: Traced = { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 5 };
  const working = tracedWorking(circle, 'metric');
  const lines = edgesText([working], 'metric');
  expect(lines.some((line) => line.includes('π × 5.00² = 78.5398 m²'))).toBe(true); // π 5²
  const rows = lines.filter((line) => /^\d+\s/.test(line));
  // a row each, and the line of the sum, which starts with 1/2
  expect(rows.length).toBe(working.corners.length);
  expect(working.corners.length).toBeGreaterThan(60); // 2 mm on a circle of 5 m: 2 π / √(8 · 0.002 / 5) > 60
});
