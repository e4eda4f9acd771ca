import { expect, test } from 'vitest';
import { placedPointsOf } from '../../../core/area/index.ts';
import { newOutline } from '../../../core/edits/index.ts';
import { outline, rect } from '../../support/builders.ts';

test('every corner of every ring was placed, and is the same point whenever it is asked for', () => {
  const lawn = outline('zone', 'lawn', rect(0, 0, 10, 8), rect(2, 2, 1, 1));
  const rings = placedPointsOf(lawn);
  expect(rings.map((ring) => ring.length)).toEqual([4, 4]); // two rectangles
  expect(rings[1]?.[2]).toEqual({ at: { xM: 3, yM: 3 }, outlineId: 'lawn', ring: 1, own: 2, from: null }); // its north-east corner
  expect(placedPointsOf(lawn)).toBe(rings); // known again by identity
});

test('of a circle the middle is a place of its own and the rim is measured from it', () => {
  const centre = { xM: 5, yM: 6 };
  const pond = newOutline({
    id: 'p',
    kind: 'water',
    name: 'pond',
    outer: { kind: 'circle', centre, radiusM: 2 },
  });
  expect(placedPointsOf(pond)[0]?.map(({ from }) => from)).toEqual([null, centre]); // centre, rim
});
