import { expect, test } from 'vitest';
import { groundChange, sumOfChanges } from '../../../core/compare/groundChange.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('a square moved by half its side keeps half and loses and gains a half', () => {
  const change = groundChange([region(rect(0, 0, 4, 4))], [region(rect(2, 0, 4, 4))]);
  for (const [areaM2, worked] of [
    [change.beforeM2, 16], // 4 * 4
    [change.afterM2, 16], // 4 * 4
    [change.lostM2, 8], // 2 * 4
    [change.gainedM2, 8], // 2 * 4
    [change.unchangedM2, 8], // 2 * 4
  ] as const) {
    expectNear(areaM2, worked, 1e-5, 'm²');
  }
});

test('ground there was none of is all gained, and the other way round', () => {
  const square = [region(rect(0, 0, 4, 4))];
  expect(groundChange([], square)).toMatchObject({ beforeM2: 0, lostM2: 0, gainedM2: 16, unchangedM2: 0 }); // 4 * 4
  expect(groundChange(square, [])).toMatchObject({ afterM2: 0, lostM2: 16, gainedM2: 0, unchangedM2: 0 }); // 4 * 4
});

test('a sum is the sum of each of the five areas', () => {
  const one = { beforeM2: 5, lostM2: 1, gainedM2: 2, unchangedM2: 4, afterM2: 6 };
  const other = { beforeM2: 10, lostM2: 3, gainedM2: 0, unchangedM2: 7, afterM2: 7 };
  // 5 + 10, 1 + 3, 2 + 0, 4 + 7, 6 + 7
  expect(sumOfChanges([one, other])).toEqual({
    beforeM2: 15,
    lostM2: 4,
    gainedM2: 2,
    unchangedM2: 11,
    afterM2: 13,
  });
});
