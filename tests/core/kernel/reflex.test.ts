import { expect, test } from 'vitest';
import { isReflex } from '../../../core/kernel/reflex.ts';
import { lShape, rect } from '../../support/builders.ts';

test('only the inner corner of an L sticks into its ground', () => {
  const ell = lShape(10, 10, 4, 4);
  expect(ell.filter((_, corner) => isReflex(ell, corner))).toEqual([{ xM: 6, yM: 6 }]); // 10 m less the notch
});

test('every corner of a bed sticks into the lawn round it, and a straight corner into nothing', () => {
  const bed = rect(2, 2, 3, 3).reverse();
  expect(bed.every((_, corner) => isReflex(bed, corner))).toBe(true); // a hole runs clockwise
  const halved = [...rect(0, 0, 4, 4), { xM: 0, yM: 2 }];
  expect(isReflex(halved, 4)).toBe(false); // exactly half a turn
});
