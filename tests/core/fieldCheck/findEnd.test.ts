import { describe, expect, test } from 'vitest';
import { findEnd } from '../../../core/fieldCheck/index.ts';
import { outline, rect } from '../../support/builders.ts';

const lawn = outline('zone', 'Lawn', rect(0, 0, 10, 8));
const tap = { id: 'tap', kind: 'spigot', name: 'Tap', at: { xM: 4, yM: 0 } } as const;
const yard = { outlines: [lawn], marks: [tap] };

describe('what the end of a taped distance lies on', () => {
  test('a corner, a mark on an edge before the edge, an edge', () => {
    expect(findEnd(yard, { xM: 10, yM: 8 })).toMatchObject({ on: 'corner', words: 'corner 3 of Lawn' });
    expect(findEnd(yard, { xM: 4, yM: 0 })).toMatchObject({ on: 'mark', words: 'Tap' });
    expect(findEnd(yard, { xM: 5, yM: 8 })).toMatchObject({ on: 'edge', words: 'the edge of Lawn' });
  });

  test('a place is the same within what a tape can tell, and not beyond', () => {
    expect(findEnd(yard, { xM: 10.004, yM: 8 }).on).toBe('corner'); // within the stated 5 mm
    expect(findEnd(yard, { xM: 10.006, yM: 8.006 }).on).toBe('nothing'); // beyond them, off both edges
  });

  test('nothing, once the corner was moved away', () => {
    const moved = { ...yard, outlines: [outline('zone', 'Lawn', rect(1, 1, 10, 8))] };
    expect(findEnd(moved, { xM: 10, yM: 8 }).on).toBe('nothing');
  });
});
