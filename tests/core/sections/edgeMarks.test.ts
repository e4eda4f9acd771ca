import { expect, test } from 'vitest';
import { findChords } from '../../../core/sections/chords.ts';
import { edgeMarks } from '../../../core/sections/edgeMarks.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { TapeSides } from '../../../core/sections/TapeSides.ts';
import { rect, region } from '../../support/builders.ts';

function marksAt(eastM: number): number[] {
  const facing = faceAlong(cornersOf(region(rect(0, 0, 10.05, 4))), { x: 1, y: 0 });
  const start = findChords(facing, eastM)?.[0]?.start;
  if (start === undefined) throw new Error('no cut there');
  return edgeMarks(start, 0.1, new TapeSides([]))
    .map(({ xM }) => Math.round(xM * 1e6) / 1e6)
    .sort((a, b) => a - b);
}

test('marks lie on either hand of the cut, counted from either corner', () => {
  expect(marksAt(3.337)).toEqual([3.25, 3.3, 3.35, 3.4]); // 6.8 and 6.7 m from 10.05; 3.3 and 3.4 m from 0
});

test('a corner itself is a mark', () => {
  expect(marksAt(0.03)[0]).toBe(0); // no tape needed
});
