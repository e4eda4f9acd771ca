import { formatAngle, formatPercent } from '../units/index.ts';

/** The steepest grade taken: 200 %, or 63.4°. Turf does not stay on ground like that; a typed value beyond is a slip. */
export const MOST_GRADE = 2;

/** Beyond one in three, mowing or spraying on foot is dangerous. Common practice, of no one source. */
export const STEEP_GRADE = 1 / 3;

/**
 * Rise over run, without a sign: up and down are equally large.
 *
 * @param runM level distance, not along the ground; above zero
 * Source: NWCG "Firefighter Math": slope in percent = rise ÷ run × 100
 */
export function gradeOf(riseM: number, runM: number): number {
  return Math.abs(riseM) / runM;
}

/** The angle to the level, in degrees. */
export function degreesOfGrade(grade: number): number {
  return (Math.atan(grade) * 180) / Math.PI;
}

export function gradeOfDegrees(angleDeg: number): number {
  return Math.tan((Math.abs(angleDeg) * Math.PI) / 180);
}

/**
 * How much larger a sloping plane is than the map of it: √(1 + g²).
 *
 * Source: U.S. Navy, Engineering Aid Basic, ch. 12 (slope distance² = run² + rise²), down the slope; across it
 * nothing changes, so areas grow by the same factor
 */
export function surfaceFactor(grade: number): number {
  return Math.hypot(1, grade);
}

/** "20.0% (11.3°)". */
export function formatGrade(grade: number): string {
  return `${formatPercent(grade)} (${formatAngle(degreesOfGrade(grade))})`;
}
