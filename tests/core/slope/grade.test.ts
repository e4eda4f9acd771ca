import { describe, expect, test } from 'vitest';
import {
  degreesOfGrade,
  formatGrade,
  gradeOf,
  gradeOfDegrees,
  MOST_GRADE,
  STEEP_GRADE,
  surfaceFactor,
} from '../../../core/slope/grade.ts';

describe('grade', () => {
  test('is rise over run', () => {
    expect(gradeOf(8, 40)).toBe(0.2); // NWCG "Firefighter Math": 8 ft in 40 ft is 20 %
    expect(15 / gradeOf(8, 100)).toBeCloseTo(187.5, 9); // NWCG "Firefighter Math": 15 ft of rise at 8 %, printed as 188 ft
    expect(gradeOf(-8, 40)).toBe(0.2); // down is as steep as up
  });

  test('slope distance squared is run squared plus rise squared', () => {
    // U.S. Navy, Engineering Aid Basic, ch. 12: d² = run² + rise²; 30 and 40 make 50 (Pythagoras)
    expect(40 * surfaceFactor(gradeOf(30, 40))).toBeCloseTo(50, 12);
  });

  test('the correction from slope to level is always taken off', () => {
    // U.S. Navy, Engineering Aid Basic: C = s(1 - cos A), and d = √(s² - h²)
    for (const angleDeg of [5, 10, 20, 45]) {
      const [slopeM, riseM] = [100, 100 * Math.sin((angleDeg * Math.PI) / 180)];
      const levelM = slopeM / surfaceFactor(gradeOfDegrees(angleDeg));
      expect(levelM).toBeCloseTo(Math.sqrt(slopeM ** 2 - riseM ** 2), 9); // d = √(s² - h²)
      expect(slopeM - levelM).toBeCloseTo(slopeM * (1 - Math.cos((angleDeg * Math.PI) / 180)), 9); // s(1 - cos A)
      expect(levelM).toBeLessThan(slopeM);
    }
  });

  test('the map shows the level area: the surface is never smaller', () => {
    // plane surveying: a map's area is the horizontal projection
    for (let grade = 0; grade <= MOST_GRADE; grade += 0.01)
      expect(surfaceFactor(grade)).toBeGreaterThanOrEqual(1);
    expect(surfaceFactor(0)).toBe(1); // √(1 + 0)
  });

  test('10 m over 50 m is 20 % or 11.3°', () => {
    expect(degreesOfGrade(gradeOf(10, 50))).toBeCloseTo(11.3, 1); // dcode.fr, slope calculator's example
    expect(formatGrade(gradeOf(10, 50))).toBe('20.0% (11.3°)'); // the same
  });

  test.each([
    [2, 1.0002],
    [5, 1.00125],
    [8, 1.00319],
    [10, 1.00499],
    [12, 1.00717],
    [15, 1.01119],
    [20, 1.0198],
    [25, 1.03078],
    [30, 1.04403],
    [100 / 3, 1.05409],
    [40, 1.07703],
    [50, 1.11803],
    [100, Math.SQRT2],
  ])('at %f %% the surface is %f of the plan', (percent, factor) => {
    // √(1 + g²), worked to five decimals outside this program; √2 at 100 %
    expect(Math.abs(surfaceFactor(percent / 100) - factor)).toBeLessThanOrEqual(5.01e-6);
  });

  test.each([
    [5, 1.00382],
    [10, 1.01543],
    [15, 1.03528],
    [20, 1.06418],
    [25, 1.10338],
    [30, 1.1547],
    [45, Math.SQRT2],
  ])('at %f° the surface is %f of the plan', (angleDeg, factor) => {
    // sec θ, worked to five decimals outside this program; √2 at 45°
    expect(Math.abs(surfaceFactor(gradeOfDegrees(angleDeg)) - factor)).toBeLessThanOrEqual(5.01e-6);
  });

  test.each([
    [10, 5.711],
    [20, 11.31],
    [30, 16.699],
    [50, 26.565],
  ])('%f %% is %f°', (percent, angleDeg) => {
    // arctan, to three decimals
    expect(Math.abs(degreesOfGrade(percent / 100) - angleDeg)).toBeLessThanOrEqual(0.0005);
  });

  test('degrees and grade go there and back', () => {
    for (let angleDeg = 0; angleDeg < 63; angleDeg += 1) {
      expect(degreesOfGrade(gradeOfDegrees(angleDeg))).toBeCloseTo(angleDeg, 10); // identity
    }
    expect(degreesOfGrade(MOST_GRADE)).toBeCloseTo(63.435, 3); // arctan 2
    expect(STEEP_GRADE).toBeCloseTo(0.3333, 4); // one in three
  });
});
