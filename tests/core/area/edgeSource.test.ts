import { expect, test } from 'vitest';
import { cutLineSource, outlineSources, placedPointsOf } from '../../../core/area/index.ts';
import { tracedRing } from '../../../core/curves/index.ts';
import { newOutline } from '../../../core/edits/index.ts';
import { snapRing } from '../../../core/kernel/index.ts';
import { outline, points, rect } from '../../support/builders.ts';

test('corners are found again after the ring is turned about and doubled corners are dropped', () => {
  const doubled = points([0, 0], [0, 0], [0, 10], [10, 10], [10, 0]);
  const lawn = outline('zone', 'lawn', doubled);
  const ring = [...snapRing(doubled)].reverse();
  const [source] = outlineSources(lawn, [ring]);
  const placed = placedPointsOf(lawn)[0] ?? [];
  const owns = source?.moves.map((move) => placed.indexOf(move as (typeof placed)[number]));
  expect(ring.length).toBe(4); // of five, two at one place
  expect(owns?.map((own) => placed[own]?.at)).toEqual(ring); // each corner is the point at its own place
});

test('the corners of a circle follow its middle and its rim', () => {
  const pond = newOutline({
    id: 'p',
    kind: 'water',
    name: 'pond',
    outer: { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 5 },
  });
  const [source] = outlineSources(pond, [snapRing(tracedRing(pond.outer))]);
  const placed = placedPointsOf(pond)[0];
  for (const move of source?.moves ?? []) {
    expect('own' in move ? [] : move.map(({ point }) => point)).toEqual(placed); // centre and rim
  }
});

test('widths of strips are told, nought is none', () => {
  const corners = rect(0, 0, 10, 10).map((corner, i) => ({ ...corner, keepOffM: i }));
  const lawn = { ...outline('zone', 'lawn', corners), keepOffM: 0.5 };
  expect(outlineSources(lawn, [corners])[0]?.stripWidthsM).toEqual([0.5, 1, 2, 3]); // all round, then edge by edge
});

test('a cut line has two ends of its own', () => {
  const { ring, isOpen, moves } = cutLineSource({ xM: 0, yM: 0 }, { xM: 5, yM: 0 });
  expect([ring.length, isOpen, moves.length]).toEqual([2, true, 2]); // from, to
});
