import { expect, test } from 'vitest';
import { sweepLayers } from '../../../core/kernel/index.ts';
import type { Ring } from '../../../core/spaces.ts';
import { points, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

/** Areas by the layers they are in, named by their numbers. */
function areasOf(layers: readonly (readonly Ring[])[]): Record<string, number> {
  const areas: Record<string, number> = {};
  const open = new Set<number>();
  sweepLayers(layers, {
    cross: (layer, isIn) => (isIn ? open.add(layer) : open.delete(layer)),
    add(areaM2) {
      const name = [...open].sort().join();
      areas[name] = (areas[name] ?? 0) + areaM2;
    },
  });
  return areas;
}

test('two squares that overlap are measured by which of them lies where', () => {
  const areas = areasOf([[rect(0, 0, 2, 2)], [rect(1, 1, 2, 2)]]);
  expectNear(areas['0'] ?? 0, 3, 1e-12, 'm²'); // 4 less the shared 1
  expectNear(areas['1'] ?? 0, 3, 1e-12, 'm²'); // 4 less the shared 1
  expectNear(areas['0,1'] ?? 0, 1, 1e-12, 'm²'); // 1 m x 1 m
});

test('edges that cross between corners are cut there', () => {
  const up: Ring = points([0, 0], [4, 0], [2, 4]);
  const down: Ring = points([0, 4], [2, 0], [4, 4]);
  const areas = areasOf([[up], [down]]);
  // Worked by hand: the sides cross at (1, 2) and (3, 2), so the shared kite has diagonals of 2 m and 4 m.
  expectNear(areas['0,1'] ?? 0, 4, 1e-12, 'm²');
  expectNear((areas['0'] ?? 0) + (areas['0,1'] ?? 0), 8, 1e-12, 'm²'); // half of 4 m x 4 m
});

test('a hole is in no layer, and pieces of one layer count once', () => {
  const hole = rect(1, 1, 1, 1).toReversed();
  const areas = areasOf([
    [rect(0, 0, 4, 4), hole],
    [rect(5, 0, 2, 2), rect(6, 0, 2, 2)],
  ]);
  expectNear(areas['0'] ?? 0, 15, 1e-12, 'm²'); // 16 less 1
  expectNear(areas['1'] ?? 0, 6, 1e-12, 'm²'); // 3 m x 2 m, the middle metre once
});

test('neighbours share an edge and no ground', () => {
  const slant: Ring = points([0, 0], [3, 1], [3, 3], [0, 2]);
  const above: Ring = points([0, 2], [3, 3], [3, 5], [0, 4]);
  const areas = areasOf([[slant], [above]]);
  expectNear(areas['0,1'] ?? 0, 0, 1e-12, 'm²'); // they only touch
  expectNear((areas['0'] ?? 0) + (areas['1'] ?? 0), 12, 1e-12, 'm²'); // two parallelograms of 3 m x 2 m
});

test('nothing is nothing', () => {
  expect(areasOf([])).toEqual({}); // no layer
  expect(areasOf([[points([0, 0], [1, 0])]])).toEqual({}); // a level line holds no ground
});
