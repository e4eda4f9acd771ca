import { describe, expect, test } from 'vitest';
import {
  type AreaChange,
  printedChanges,
  printedChangeSum,
  shownAloneM2,
} from '../../../core/compare/index.ts';
import { SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

function change(unchangedM2: number, lostM2: number, gainedM2: number): AreaChange {
  return { unchangedM2, lostM2, gainedM2, beforeM2: unchangedM2 + lostM2, afterM2: unchangedM2 + gainedM2 };
}

describe.each([
  ['metric', 0.1],
  ['us', SQUARE_FOOT_M2],
] as const)('%s', (units, stepM2) => {
  /** Whole steps of a shown area; floating arithmetic leaves a hair. */
  const steps = (areaM2: number): number => Math.round(areaM2 / stepM2);

  test('rows and sums add up to the last digit; what is there now is as it was given', () => {
    const random = seededRandom(7);
    const some = (mostM2: number): number => (random() < 0.4 ? 0 : between(random, 0, mostM2));
    for (let round = 0; round < 300; round++) {
      const changes = Array.from({ length: 1 + Math.floor(random() * 12) }, () =>
        change(some(400), some(9), some(9)),
      );
      // Another part of the screen may have rounded an area up or down.
      const after = changes.map(({ afterM2 }) =>
        random() < 0.5 ? Math.floor(afterM2 / stepM2) * stepM2 : Math.ceil(afterM2 / stepM2) * stepM2,
      );
      const shown = printedChanges(changes, after, units);
      const sum = printedChangeSum(shown);
      for (const row of [...shown, sum]) {
        const [before, lost, gained, now] = [row.beforeM2, row.lostM2, row.gainedM2, row.afterM2].map(steps);
        expect((before ?? 0) - (lost ?? 0) + (gained ?? 0)).toBe(now); // the law itself
        expect(Math.min(before ?? -1, lost ?? -1, gained ?? -1)).toBeGreaterThanOrEqual(0);
      }
      shown.forEach((row, i) => {
        const own = changes[i] as AreaChange;
        expect(row.afterM2).toBe(after[i]);
        expect(Math.abs(row.lostM2 - own.lostM2)).toBeLessThan(stepM2); // largest remainder
        expect(Math.abs(row.beforeM2 - own.beforeM2)).toBeLessThan(3 * stepM2); // a step for each other figure
      });
    }
  });

  test('nothing lost is shown as nothing lost, whatever the others are rounded to', () => {
    const random = seededRandom(8);
    for (let round = 0; round < 200; round++) {
      const same = change(between(random, 1, 400), 0, 0);
      const changes = [
        same,
        change(between(random, 1, 400), between(random, 0, 3), between(random, 0, 3)),
        same,
      ];
      const after = changes.map(({ afterM2 }) => shownAloneM2(afterM2, units));
      const [first, , last] = printedChanges(changes, after, units);
      expect([first?.lostM2, first?.gainedM2, last?.lostM2, last?.gainedM2]).toEqual([0, 0, 0, 0]);
      expect(first?.beforeM2).toBe(first?.afterM2);
    }
  });

  test('of a zone that is new there was nothing before, of one that is gone there is nothing now', () => {
    const changes = [change(0, 0, 50.07), change(0, 30.02, 0)];
    // The new one is shown a step above its nearest elsewhere.
    const after = [shownAloneM2(50.07, units) + stepM2, 0];
    const [anew, gone] = printedChanges(changes, after, units);
    expect([anew?.beforeM2, anew?.gainedM2, anew?.lostM2]).toEqual([0, after[0], 0]);
    expect([gone?.afterM2, gone?.gainedM2]).toEqual([0, 0]);
    expect(gone?.beforeM2).toBe(gone?.lostM2);
  });
});

test('what the grid leaves of two equal lawns is shown as none', () => {
  const [row] = printedChanges([change(10.05, 1e-9, 1e-9)], [10.1], 'metric');
  expect(row).toEqual({ beforeM2: 10.1, lostM2: 0, gainedM2: 0, afterM2: 10.1 }); // nothing changed
});

test('no zones have no changes and sums of nothing', () => {
  expect(printedChanges([], [], 'us')).toEqual([]);
  expect(printedChangeSum([])).toEqual({ beforeM2: 0, lostM2: 0, gainedM2: 0, afterM2: 0 });
});
