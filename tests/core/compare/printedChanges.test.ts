import { describe, expect, test } from 'vitest';
import { type AreaChange, printedChanges, printedChangeSum } from '../../../core/compare/index.ts';
import { SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

function change(unchangedM2: number, lostM2: number, gainedM2: number): AreaChange {
  return { unchangedM2, lostM2, gainedM2, beforeM2: unchangedM2 + lostM2, afterM2: unchangedM2 + gainedM2 };
}

/** Whole steps of a shown area; floating arithmetic leaves a hair. */
const steps = (areaM2: number, stepM2: number): number => Math.round(areaM2 / stepM2);

describe.each([
  ['metric', 0.1],
  ['us', SQUARE_FOOT_M2],
] as const)('%s', (units, stepM2) => {
  test('rows and sums add up to the last digit, sums of before and after are the nearest', () => {
    const random = seededRandom(7);
    for (let round = 0; round < 300; round++) {
      const changes = Array.from({ length: 1 + Math.floor(random() * 12) }, () =>
        change(
          between(random, 0, 400),
          random() < 0.4 ? 0 : between(random, 0, 9),
          random() < 0.4 ? 0 : between(random, 0, 9),
        ),
      );
      const shown = printedChanges(changes, units);
      const sum = printedChangeSum(shown);
      for (const row of [...shown, sum]) {
        const [before, lost, gained, after] = [row.beforeM2, row.lostM2, row.gainedM2, row.afterM2].map(
          (areaM2) => steps(areaM2, stepM2),
        ) as [number, number, number, number];
        expect(before - lost + gained).toBe(after); // the law itself
      }
      const total = (areaOf: (row: AreaChange) => number): number =>
        changes.reduce((sumM2, row) => sumM2 + areaOf(row), 0);
      expect(steps(sum.beforeM2, stepM2)).toBe(Math.round(total((row) => row.beforeM2) / stepM2)); // nearest, as a law
      expect(steps(sum.afterM2, stepM2)).toBe(Math.round(total((row) => row.afterM2) / stepM2)); // nearest, as a law
      shown.forEach((row, i) => {
        expect(Math.abs(row.beforeM2 - (changes[i]?.beforeM2 ?? 0))).toBeLessThan(2 * stepM2); // as the doc comment says
        expect(Math.abs(row.lostM2 - (changes[i]?.lostM2 ?? 0))).toBeLessThan(stepM2); // largest remainder
      });
    }
  });

  test('nothing lost is shown as nothing lost, whatever the others are rounded to', () => {
    const random = seededRandom(8);
    for (let round = 0; round < 200; round++) {
      const same = change(between(random, 0, 400), 0, 0);
      const changes = [
        same,
        change(between(random, 0, 400), between(random, 0, 3), between(random, 0, 3)),
        same,
      ];
      const [first, , last] = printedChanges(changes, units);
      expect([first?.lostM2, first?.gainedM2, last?.lostM2, last?.gainedM2]).toEqual([0, 0, 0, 0]);
      expect(first?.beforeM2).toBe(first?.afterM2);
    }
  });
});

test('what the grid leaves of two equal lawns is shown as none', () => {
  // 0.05 m² is half a step: a hair more in one column would round it the other way.
  const [row] = printedChanges([change(10.05, 1e-9, 0)], 'metric');
  expect(row).toMatchObject({ lostM2: 0, gainedM2: 0 });
});

test('no zones have no changes and sums of nothing', () => {
  expect(printedChanges([], 'us')).toEqual([]);
  expect(printedChangeSum([])).toEqual({ beforeM2: 0, lostM2: 0, gainedM2: 0, afterM2: 0 });
});
