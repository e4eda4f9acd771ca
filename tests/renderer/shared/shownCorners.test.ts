import { expect, test } from 'vitest';
import { ringWorking } from '../../../core/zones/index.ts';
import { MOST_CORNERS_SHOWN, shownCorners } from '../../../renderer/shared/shownCorners.ts';
import { regularPolygon } from '../../support/builders.ts';

const ringOf = (corners: number) => ringWorking(regularPolygon({ xM: 0, yM: 0 }, 5, corners), 'metric');

test('a ring is listed whole up to sixty corners, and numbered from one', () => {
  const shown = shownCorners(ringOf(MOST_CORNERS_SHOWN), MOST_CORNERS_SHOWN);
  expect(shown.map(({ number }) => number)).toEqual(Array.from({ length: 60 }, (_, i) => i + 1)); // the limit
});

test('a longer one is folded to its first and last corners, and comes out whole when unfolded', () => {
  const ring = ringOf(200);
  expect(shownCorners(ring, 60).map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 199, 200]); // 8 and 2
  expect(shownCorners(ring, Infinity)).toHaveLength(200); // all of them
  expect(shownCorners(ring, 60).at(-1)).toMatchObject(ring.corners[199] as object);
});
