import { expect, test } from 'vitest';
import { tapeWalls } from '../../../core/staking/tapeWalls.ts';
import { outline, rect } from '../../support/builders.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const isBlocked = tapeWalls([
  outline('building', 'house', rect(0, 0, 10, 6)),
  outline('water', 'pond', rect(20, 0, 5, 5)),
]);

test('a tape does not go through a house', () => {
  expect(isBlocked(at(-2, 3), at(12, 3))).toBe(true);
  expect(isBlocked(at(-2, 3), at(5, 3))).toBe(true); // ends inside
  expect(isBlocked(at(5, -1), at(12, 3))).toBe(true); // cuts the corner
});

test('a tape lies along a wall, touches a corner, passes a house and hangs over a pond', () => {
  expect(isBlocked(at(0, 0), at(10, 0))).toBe(false);
  expect(isBlocked(at(-3, 0), at(14, 0))).toBe(false);
  expect(isBlocked(at(10, 6), at(15, 9))).toBe(false);
  expect(isBlocked(at(-2, 7), at(12, 7))).toBe(false);
  expect(isBlocked(at(18, 2), at(28, 2))).toBe(false);
});
