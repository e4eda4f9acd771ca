import { describe, expect, test } from 'vitest';
import { readableDeg } from '../../../renderer/map/readableDeg.ts';
import { stepAtLeast, stepAtMost } from '../../../renderer/map/niceSteps.ts';

describe('steps a ruler shows', () => {
  test('the next step up and the next step down', () => {
    expect(stepAtLeast(3.2, 'metric')).toBe(5); // 1-2-5 series
    expect(stepAtMost(3.2, 'metric')).toBe(2);
    expect(stepAtLeast(1, 'us')).toBeCloseTo(5 * 0.3048, 12); // 3.28 ft -> 5 ft
    expect(stepAtMost(0.07, 'us')).toBeCloseTo(0.25 * 0.3048 - 0.0508, 12); // 2.76 in -> 1 in
  });

  test('off the end of the ruler, its last step', () => {
    expect(stepAtLeast(1e6, 'metric')).toBe(1000);
    expect(stepAtMost(1e-6, 'metric')).toBe(0.01);
  });
});

describe('words along a line', () => {
  test.each([0, 30, 89, 90, 135, 180, -30, -90, -91, -179])('never stand on their head at %d°', (deg) => {
    const read = ((readableDeg(deg) + 180) % 360) - 180;
    expect(read).toBeGreaterThanOrEqual(-90.01);
    expect(read).toBeLessThan(90);
  });
});
