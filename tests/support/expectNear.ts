import { expect } from 'vitest';

/** Fails unless two numbers of one unit are within a tolerance; says all three and by how much it missed. */
export function expectNear(actual: number, expected: number, tolerance: number, unit: string): void {
  const missedBy = Math.abs(actual - expected);
  const message = `${actual} ${unit} is ${missedBy} ${unit} from ${expected} ${unit}, over ${tolerance} ${unit}`;
  // A NaN is never near: the comparison is written so that it fails for one.
  expect(missedBy <= tolerance, message).toBe(true);
}
