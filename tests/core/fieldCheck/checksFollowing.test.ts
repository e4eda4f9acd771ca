import { expect, test } from 'vitest';
import { checksFollowing, checksFollowingMark } from '../../../core/fieldCheck/index.ts';
import { outline, points, rect } from '../../support/builders.ts';

const lawn = outline('zone', 'Lawn', rect(0, 0, 10, 8));
const diagonal = { id: 'd', name: 'd', from: { xM: 0, yM: 0 }, to: { xM: 10, yM: 8 }, tapedM: 12.9 };
const apart = { id: 'a', name: 'a', from: { xM: 0, yM: 0 }, to: { xM: 20, yM: 0 }, tapedM: 20 };

test('an end on a corner goes where the corner goes; other checks stay', () => {
  const mended = outline('zone', 'Lawn', points([0, 0], [10, 0], [10.1, 8.2], [0, 8]));
  expect(checksFollowing([diagonal, apart], lawn, mended)).toEqual([
    { ...diagonal, to: { xM: 10.1, yM: 8.2 } }, // where the third corner went
  ]);
});

test('nothing follows while no corner moves, or when one is added', () => {
  expect(checksFollowing([diagonal], lawn, { ...lawn, name: 'Back lawn' })).toEqual([]);
  const more = outline('zone', 'Lawn', points([0, 0], [5, -1], [10, 0], [10, 8], [0, 8]));
  expect(checksFollowing([diagonal], lawn, more)).toEqual([]);
});

test('an end on a mark goes with the mark', () => {
  const tap = { id: 't', kind: 'spigot', name: 'Tap', at: { xM: 20, yM: 0 } } as const;
  const there = { ...tap, at: { xM: 21, yM: 1 } };
  expect(checksFollowingMark([diagonal, apart], tap, there)).toEqual([{ ...apart, to: there.at }]); // where it went
});
