import { expect, test } from 'vitest';
import { orderSections } from '../../../core/sections/orderSections.ts';
import { points } from '../../support/builders.ts';

test('places in a row are walked from end to end', () => {
  const row = points([4, 0], [0, 0], [2, 0], [3, 0], [1, 0]);
  expect(orderSections(row)).toEqual([1, 4, 2, 3, 0]); // by rising x: the only order with no way back
});

test('every place is walked once, and the same places always in the same order', () => {
  const places = points([3, 1], [0, 5], [9, 2], [4, 4], [7, 7], [1, 1]);
  const order = orderSections(places);
  expect([...order].sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5]); // a permutation
  expect(orderSections(places)).toEqual(order); // the law: same in, same out
});

test('no place, no order', () => {
  expect(orderSections([])).toEqual([]); // nothing to walk
});
