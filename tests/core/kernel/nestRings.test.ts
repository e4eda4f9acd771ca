import { describe, expect, test } from 'vitest';
import { nestRings, placeInRing } from '../../../core/kernel/nestRings.ts';
import { points, rect } from '../../support/builders.ts';

describe('flat rings are sorted into regions', () => {
  test('a hole goes to the smallest ring round it: a pond on an island in a lake', () => {
    const land = rect(0, 0, 100, 100);
    const lake = rect(10, 10, 80, 80).reverse();
    const island = rect(30, 30, 20, 20);
    const pond = rect(35, 35, 5, 5).reverse();
    for (const rings of [
      [land, lake, island, pond],
      [pond, island, lake, land],
      [lake, pond, land, island],
    ]) {
      const regions = nestRings(rings);
      expect(regions.length).toBe(2);
      expect(regions.find(({ outer }) => outer === land)?.holes).toEqual([lake]);
      expect(regions.find(({ outer }) => outer === island)?.holes).toEqual([pond]);
    }
  });

  test('a hole that touches its ring at corners only still belongs to it', () => {
    const outer = rect(0, 0, 10, 10);
    const diamond = points([0, 5], [5, 10], [10, 5], [5, 0]);
    expect(nestRings([outer, diamond])[0]?.holes).toEqual([diamond]);
  });

  test('a hole beside a smaller ring in whose box it lies goes to the larger', () => {
    const outer = rect(-50, -50, 100, 100);
    const wedge = points([0, 0], [20, 0], [20, 20]);
    const hole = points([2, 10], [2, 12], [4, 12], [4, 10]);
    const regions = nestRings([outer, wedge, hole]);
    expect(regions.find((one) => one.outer === outer)?.holes).toEqual([hole]);
    expect(regions.find((one) => one.outer === wedge)?.holes).toEqual([]);
  });

  test('rings without area are dropped', () => {
    expect(nestRings([points([0, 0], [1, 1], [2, 2]), []])).toEqual([]);
  });
});

test('a point lies inside, outside or on a ring', () => {
  const ring = points([0, 0], [10, 0], [10, 10], [5, 5], [0, 10]);
  expect(placeInRing(ring, { xM: 1, yM: 5 })).toBe('inside');
  expect(placeInRing(ring, { xM: 5, yM: 6 })).toBe('outside'); // in the notch
  expect(placeInRing(ring, { xM: 5, yM: 5 })).toBe('on'); // a corner
  expect(placeInRing(ring, { xM: 10, yM: 3 })).toBe('on'); // an edge
  expect(placeInRing(ring, { xM: -1, yM: 0 })).toBe('outside'); // level with an edge
  expect(placeInRing([...ring].reverse(), { xM: 1, yM: 5 })).toBe('inside'); // either way round
});
