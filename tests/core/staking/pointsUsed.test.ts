import { expect, test } from 'vitest';
import { yardPoints } from '../../../core/staking/namedPoints.ts';
import { pointsUsed, shortName } from '../../../core/staking/pointsUsed.ts';
import { stakeCuts } from '../../../core/staking/index.ts';
import { outline, points, rect } from '../../support/builders.ts';

test('a map names the corners that are used, each once, and no flags', () => {
  const yard = { outlines: [outline('zone', 'lawn', rect(0, 0, 20, 10))], marks: [] };
  const cut = { from: { xM: 6, yM: 0 }, to: { xM: 6, yM: 10 } };
  const { flags, lines } = stakeCuts(
    yard,
    {
      cuts: [{ zoneId: 'lawn', ...cut, heldId: null }],
      cutLines: [{ ...cut, between: ['A1', 'A2'], cut: 0 }],
    },
    'metric',
  );
  const used = pointsUsed(flags, lines).map(({ own }) => own);
  expect(used.toSorted()).toEqual(['NE corner', 'NW corner', 'SE corner', 'SW corner']); // both edges, both ways
});

test('a corner that is the only one on its side needs no label, one of several has its number', () => {
  const { all } = yardPoints({
    outlines: [outline('zone', 'lawn', points([0, 0], [10, 0], [10, 8], [8, 8], [8, 10], [0, 10]))],
    marks: [{ id: 'm', kind: 'landmark', name: 'big oak 2', at: { xM: 0, yM: 0 } }],
  });
  // The step in the north-east has three corners on that side.
  expect(all.map(shortName)).toEqual([null, null, null, 'NE 3', 'NE 2', 'NE 1', null]);
});
