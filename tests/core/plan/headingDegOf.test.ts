import { expect, test } from 'vitest';
import { headingDegOf } from '../../../core/plan/index.ts';

test('a picked bearing is itself, a turned one last time’s and the turn, the best one is the plan’s', () => {
  expect(headingDegOf({ kind: 'best' })).toBeNull();
  expect(headingDegOf({ kind: 'picked', deg: 30 })).toBe(30);
  expect(headingDegOf({ kind: 'turned', lastDeg: 30, byDeg: 45 })).toBe(75); // 30 + 45
  expect(headingDegOf({ kind: 'turned', lastDeg: 300, byDeg: 90 })).toBe(30); // 300 + 90 - 360
});
