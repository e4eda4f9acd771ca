import { describe, expect, test } from 'vitest';
import { previewOf } from '../../../../renderer/drawing/index.ts';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, pointing, yardOf } from '../../../support/drawing.ts';

const take = { kind: 'take', tool: { kind: 'tape-between' } } as const;
const lawn = outline('zone', 'Lawn', rect(0, 0, 30, 40));
const tap = { id: 'tap', kind: 'spigot', name: 'Tap', at: { xM: 50, yM: 0 } } as const;
const begun = (): Hand => new Hand(yardOf({ outlines: [lawn], marks: [tap] })).do(take);

describe('taping between two places', () => {
  test('two corners and what the tape reads are noted, and the next distance can follow', () => {
    const hand = begun().click([0.005, 0], [30, 40.005]).type('50.2');
    expect(hand.yard.checks).toEqual([
      {
        id: 'new-1',
        name: 'Lawn 1 to 3', // the corners as drawn
        from: { xM: 0, yM: 0 },
        to: { xM: 30, yM: 40 },
        tapedM: 50.2,
      },
    ]);
    expect(hand.labels).toEqual(['note taped Lawn 1 to 3']);
    expect(hand.selection).toEqual({ kind: 'check', id: 'new-1' });
    expect(hand.state).toMatchObject({ kind: 'tape-between', from: null, to: null });
  });

  test('an end may be a mark or a place on an edge', () => {
    const hand = begun().click([50, 0], [30, 20]).type('28 m');
    expect(hand.yard.checks[0]).toMatchObject({ name: 'Tap to Lawn edge', from: tap.at, tapedM: 28 });
  });

  test('an end stays on its corner and its mark when they are moved, in the same edit', () => {
    const hand = begun().click([0, 0], [30, 40]).type('50').click([0, 0], [50, 0]).type('51');
    hand
      .do({ kind: 'take', tool: { kind: 'select' } })
      .click([15, 20])
      .drag([30, 40], [31, 42]);
    expect(hand.labels.at(-1)).toBe('move a corner of Lawn');
    expect(hand.yard.checks[0]?.to).toEqual({ xM: 31, yM: 42 }); // where the corner was let go
    hand.do({ kind: 'choose', selection: { kind: 'mark', id: 'tap' } }).drag([50, 0], [52, 1]);
    expect(hand.yard.checks[1]).toMatchObject({ from: { xM: 0, yM: 0 }, to: { xM: 52, yM: 1 } }); // with the mark
  });

  test('bare ground cannot be found again and is no end', () => {
    const hand = begun().click([10, 10]);
    expect(hand.state.problem?.kind).toBe('value/nothing-to-hold');
    expect(hand.state).toMatchObject({ from: null });
    expect(hand.click([0, 0]).state).toMatchObject({ from: { xM: 0, yM: 0 }, problem: null });
  });

  test('a third click moves the second end, Backspace takes one back', () => {
    const hand = begun().click([0, 0], [30, 0], [30, 40]);
    expect(hand.state).toMatchObject({ to: { xM: 30, yM: 40 } });
    expect(hand.do({ kind: 'back' }).state).toMatchObject({ from: { xM: 0, yM: 0 }, to: null });
    expect(hand.do({ kind: 'back' }).state).toMatchObject({ from: null });
  });

  test('the map’s own length stands along the line meanwhile', () => {
    const hand = begun().click([0, 0], [30, 40]);
    const { dimensions, pointedLength } = previewOf(hand.state, hand.context);
    expect(dimensions).toEqual([{ from: { xM: 0, yM: 0 }, to: { xM: 30, yM: 40 }, lengthM: 50 }]); // 30-40-50 triangle
    expect(pointedLength).toHaveLength(2);
  });

  test('the arrow keys walk the crosshair onto a corner and away again', () => {
    const east = { kind: 'arrow', eastM: 1, northM: 0, from: { xM: 28.8, yM: -0.2 } } as const;
    const hand = begun().do(east, { kind: 'place' });
    expect(hand.state).toMatchObject({ from: { xM: 30, yM: 0 } }); // within half a step of the corner
    expect(hand.do(east).state).toMatchObject({ aim: { at: { xM: 31, yM: 0 }, to: 'nothing' } });
  });

  test('a distance that cannot be read, or with an end missing, is said and noted nowhere', () => {
    const hand = begun().click([0, 0]).type('12');
    expect(hand.state.problem?.kind).toBe('value/missing');
    hand.click([30, 0]).type('about thirty');
    expect(hand.state.problem).not.toBeNull();
    expect(hand.yard.checks).toEqual([]);
  });

  test('Escape lets go of the ends, then of the tool; interruption keeps the ends', () => {
    const hand = begun()
      .click([0, 0])
      .do(pointing('move', 5, 5), { kind: 'interrupted' });
    expect(hand.state).toMatchObject({ kind: 'tape-between', from: { xM: 0, yM: 0 }, aim: null });
    expect(hand.do({ kind: 'escape' }).state).toMatchObject({ kind: 'tape-between', from: null });
    expect(hand.do({ kind: 'escape' }).state.kind).toBe('select');
  });

  test('where nothing may be changed the tool is put down', () => {
    const hand = begun().click([0, 0]);
    hand.mayEdit = false;
    expect(hand.do(pointing('move', 1, 1)).state.kind).toBe('select');
  });
});
