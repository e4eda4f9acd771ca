import { describe, expect, test } from 'vitest';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, pointing, yardOf } from '../../../support/drawing.ts';

const take = { kind: 'take', tool: { kind: 'place-mark', markKind: 'spigot' } } as const;

describe('placing a mark', () => {
  test('a click sets it and hands it over selected', () => {
    const hand = new Hand(yardOf()).do(take).click([2, 3]);
    expect(hand.yard.marks).toEqual([
      { id: 'new-1', kind: 'spigot', name: 'Spigot 1', at: { xM: 2, yM: 3 } },
    ]); // the click
    expect(hand.labels).toEqual(['place Spigot 1']);
    expect(hand.selection).toEqual({ kind: 'mark', id: 'new-1' });
  });

  test('it snaps to the wall it hangs on', () => {
    const house = outline('building', 'house', rect(0, 0, 10, 8));
    const hand = new Hand(yardOf({ outlines: [house] })).do(take, pointing('click', 4, -0.2, 0.5));
    expect(hand.yard.marks[0]?.at).toEqual({ xM: 4, yM: 0 }); // foot of the perpendicular on the south wall
  });

  test('typed coordinates set it', () => {
    const hand = new Hand(yardOf()).do(take).type('-2.5, 4');
    expect(hand.yard.marks[0]?.at).toEqual({ xM: -2.5, yM: 4 }); // as typed, in metres
  });

  test('what cannot be read is said and sets nothing', () => {
    const hand = new Hand(yardOf()).do(take).type('there');
    expect(hand.state.problem).not.toBeNull();
    expect(hand.labels).toEqual([]);
  });

  test('Escape and interruption set nothing', () => {
    expect(new Hand(yardOf()).do(take, { kind: 'escape' }).state.kind).toBe('select');
    const hand = new Hand(yardOf()).do(take, pointing('move', 1, 1), { kind: 'interrupted' }).type('');
    expect(hand.labels).toEqual([]);
  });
});
