import { expect, test } from 'vitest';
import { tiesOf } from '../../../core/sections/holeTies.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('each hole is tied to what lies straight above its top, the higher hole first', () => {
  const low = [...rect(4, 1, 2, 2)];
  const high = [...rect(3, 5, 4, 2)];
  const ties = tiesOf(region(rect(0, 0, 10, 10), low, high));
  expect(ties.map(({ ring }) => ring)).toEqual([2, 1]);
  const [toOuter, toHigh] = ties;
  expect(toOuter?.toEdge).toBe(2); // outer corners 0 to 3 run counter-clockwise from the lower left: 2 is the top edge
  expect([8, 9, 10, 11]).toContain(toHigh?.toEdge); // 4 corners of the outer ring and 4 of the lower hole before it
  expect(toHigh?.fromCorner).toBeGreaterThanOrEqual(4);
  expect(toHigh?.fromCorner).toBeLessThan(8);
  expectNear(Math.min(toHigh?.part ?? 0, 1 - (toHigh?.part ?? 0)), 0.25, 1e-9, ''); // x = 4 or 6 on an edge from 3 to 7
});
