import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../../core/yard.ts';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, pointing, yardOf } from '../../../support/drawing.ts';

const tap: Mark = { id: 'tap', kind: 'spigot', name: 'Back tap', at: { xM: 1, yM: 1 } };
const lawn = outline('zone', 'lawn', rect(0, 0, 10, 10));
const bed = outline('bed', 'bed', rect(4, 4, 2, 2));

describe('with nothing in hand', () => {
  test('a click picks the smallest thing it falls in: mark before bed before lawn', () => {
    const yard = yardOf({ outlines: [bed, lawn], marks: [tap] });
    expect(new Hand(yard).click([1, 1]).selection).toEqual({ kind: 'mark', id: 'tap' });
    expect(new Hand(yard).click([5, 5]).selection).toEqual({ kind: 'outline', id: 'bed' });
    expect(new Hand(yard).click([9, 9]).selection).toEqual({ kind: 'outline', id: 'lawn' });
    expect(new Hand(yard).click([20, 20]).selection).toBeNull();
  });

  test('a click just outside an edge still picks its outline', () => {
    const hand = new Hand(yardOf({ outlines: [lawn] })).do(pointing('click', 10.2, 5, 0.3));
    expect(hand.selection).toEqual({ kind: 'outline', id: 'lawn' });
  });

  test('a chosen mark is dragged in one edit', () => {
    const hand = new Hand(yardOf({ marks: [tap] })).click([1, 1]).drag([1, 1], [3, 4]);
    expect(hand.labels).toEqual(['move Back tap']);
    expect(hand.yard.marks[0]?.at).toEqual({ xM: 3, yM: 4 }); // where it was let go
  });

  test('a mark torn from the hand stays where it was', () => {
    const hand = new Hand(yardOf({ marks: [tap] })).click([1, 1]);
    hand.do(pointing('press', 1, 1), pointing('move', 3, 4), { kind: 'interrupted' }, { kind: 'release' });
    expect(hand.labels).toEqual([]);
  });

  test('arrow keys move a chosen mark; letting go makes it one edit', () => {
    const east = { kind: 'arrow', eastM: 0.5, northM: 0, from: { xM: 0, yM: 0 } } as const;
    const hand = new Hand(yardOf({ marks: [tap] })).click([1, 1]).do(east, east, { kind: 'arrows-let-go' });
    expect(hand.labels).toEqual(['move Back tap']);
    expect(hand.yard.marks[0]?.at).toEqual({ xM: 2, yM: 1 }); // 1 + 2 × 0.5
  });

  test('Delete removes the chosen mark', () => {
    const hand = new Hand(yardOf({ marks: [tap] })).click([1, 1]).do({ kind: 'remove' });
    expect(hand.yard.marks).toEqual([]);
    expect(hand.selection).toBeNull();
  });

  test('choosing an outline in the columns opens its corners', () => {
    const hand = new Hand(yardOf({ outlines: [lawn] }));
    hand.do({ kind: 'choose', selection: { kind: 'outline', id: 'lawn' } });
    expect(hand.state).toMatchObject({ kind: 'reshape', outlineId: 'lawn' });
  });

  test('choosing a section in the columns leaves the hand empty', () => {
    const hand = new Hand(yardOf()).do({ kind: 'choose', selection: { kind: 'section', id: 'A1' } });
    expect(hand.state).toMatchObject({ kind: 'select', mark: null });
  });
});
