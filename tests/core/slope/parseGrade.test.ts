import { describe, expect, test } from 'vitest';
import { problemText } from '../../../core/problemText.ts';
import { parseGrade } from '../../../core/slope/parseGrade.ts';

describe('what a person types of a slope', () => {
  test.each([
    ['8 ft in 40 ft', 0.2], // 8 / 40
    ['8 in 40', 0.2], // 8 / 40
    ["8' in 40'", 0.2], // 8 / 40
    ['8 in in 40 ft', 8 / 480], // 8 inches in 480
    ['8 in in 40 in', 0.2], // 8 / 40
    ['2 1/2 ft in 10 ft', 0.25], // 2.5 / 10
    ['1/2 ft / 10 ft', 0.05], // 0.5 / 10
    ['1 m over 50 m', 0.02], // 1 / 50
    ['30 cm per 3 m', 0.1], // 30 / 300
    ['1:4', 0.25], // rise first
    ['8/40', 0.2], // 8 / 40
    ['1 in 12', 1 / 12], // the ramp everyone knows
    ['20 %', 0.2], // per hundred
    ['20%', 0.2], // per hundred
    ['7.5 percent', 0.075], // per hundred
    ['-20 %', 0.2], // downhill
    ['0 %', 0], // level
    ['0 ft in 40 ft', 0], // level
    ['200 %', 2], // the steepest taken
  ])('“%s”', (typed, grade) => {
    const read = parseGrade(typed, 'slope');
    expect(read.ok && read.value).toBeCloseTo(grade, 12);
  });

  test.each([
    ['11.3°', 11.3], // as typed
    ['11° 18′', 11.3], // 18/60 of a degree
    ['11.3 deg', 11.3], // as typed
    ['−5°', 5], // downhill
    ['63.4 degrees', 63.4], // the steepest taken
  ])('“%s” is tan of its angle', (typed, angleDeg) => {
    const read = parseGrade(typed, 'slope');
    expect(read.ok && read.value).toBeCloseTo(Math.tan((angleDeg * Math.PI) / 180), 12);
  });

  test.each([
    ['250 %', 'value/too-steep'],
    ['4:1', 'value/too-steep'], // run first, as some trades say it
    ['63.5°', 'value/too-steep'],
    ['90°', 'value/too-steep'],
    ['120°', 'value/too-steep'],
    ['20', 'value/missing-unit'], // percent or degrees?
    ['8 in 40 ft', 'value/missing-unit'], // eight inches, or eight feet?
    ['8 ft in 40', 'value/missing-unit'],
    ['8 ft', 'value/missing-unit'],
    ['8 ft in 0 ft', 'value/not-positive'],
    ['8 in 0', 'value/not-positive'],
    ['steep', 'value/not-a-number'],
    ['abc %', 'value/not-a-number'],
    ['8 ft %', 'value/not-a-number'],
    ['', 'value/missing'],
    ['  ', 'value/missing'],
    ['-', 'value/missing'],
  ])('“%s” is refused as %s', (typed, kind) => {
    const read = parseGrade(typed, 'slope');
    expect(read.ok ? read.value : read.problems[0].kind).toBe(kind);
  });

  test('what is too steep is said in words a person can act on', () => {
    const read = parseGrade('250 %', 'slope');
    if (read.ok) throw new Error('taken');
    const { what, mend } = problemText(read.problems[0], 'us');
    expect(what).toBe('Slope: 250.0% is steeper than turf can lie.'); // 2.5 as percent
    expect(mend).toContain('rise first');
    const wall = parseGrade('120°', 'slope');
    expect(!wall.ok && problemText(wall.problems[0], 'us').what).toBe(
      'Slope: that is steeper than turf can lie.',
    ); // no grade beyond a wall
  });
});
