import { describe, expect, test } from 'vitest';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, pointing, trace, ringAt, xy, yardOf } from '../../../support/drawing.ts';

describe('tracing an outline', () => {
  test('four clicks and one on the first corner make an outline, selected and open to the hand', () => {
    const hand = new Hand(yardOf()).do(trace('bed')).click([0, 0], [4, 0], [4, 3], [0, 3], [0, 0]);
    expect(xy(ringAt(hand.yard, 0))).toEqual([
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ]); // as clicked
    expect(hand.yard.outlines[0]).toMatchObject({ id: 'new-1', kind: 'bed', name: 'Bed 1' });
    expect(hand.labels).toEqual(['trace Bed 1']);
    expect(hand.state.kind).toBe('reshape');
    expect(hand.selection).toEqual({ kind: 'outline', id: 'new-1' });
  });

  test('a ring clicked clockwise is kept counter-clockwise, from the same first corner', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [0, 3], [4, 3], [4, 0]).type('');
    expect(xy(ringAt(hand.yard, 0))).toEqual([
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ]); // the same ring, reversed
  });

  test('Enter with fewer than three corners closes nothing', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 0]).do({ kind: 'leave' }).type('');
    expect(hand.labels).toEqual([]);
    expect(hand.state).toMatchObject({
      kind: 'trace',
      corners: [
        { xM: 0, yM: 0 },
        { xM: 4, yM: 0 },
      ],
    });
  });

  test('an outline can be traced with the keyboard alone', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', '4 90', '3 l90', '4 l90', '');
    // East 4, turned left north 3, turned left west 4: worked by hand.
    expect(xy(ringAt(hand.yard, 0))).toEqual([
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ]);
  });

  test('the crosshair is moved by the arrow keys from where the person looks, and Space sets a corner', () => {
    const from = { xM: 10, yM: 20 };
    const east = { kind: 'arrow', eastM: 2, northM: 0, from } as const;
    const north = { kind: 'arrow', eastM: 0, northM: 2, from } as const;
    const hand = new Hand(yardOf()).do(trace(), east, { kind: 'place' }, east, { kind: 'place' }, north, {
      kind: 'place',
    });
    expect(hand.state).toMatchObject({
      corners: [
        { xM: 12, yM: 20 },
        { xM: 14, yM: 20 },
        { xM: 14, yM: 22 },
      ], // steps of 2 m counted from (10, 20)
    });
  });

  test('a bare length goes towards the pointer', () => {
    const hand = new Hand(yardOf())
      .do(trace())
      .click([0, 0])
      .do(pointing('move', 30, 40))
      .type('5');
    const corners = hand.state.kind === 'trace' ? hand.state.corners : [];
    expect(xy(corners)).toEqual([
      [0, 0],
      [3, 4],
    ]); // 3-4-5 triangle
  });

  test('an edge that crosses is said with its crossing point, and stays open for mending', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 4], [4, 0], [0, 4]).type('');
    expect(hand.labels).toEqual([]);
    // The diagonals of a 4 m square meet in its middle.
    expect(hand.state.problem).toMatchObject({
      kind: 'shape/self-crossing',
      facts: { crossing: { xM: 2, yM: 2 } },
    });
    hand.do({ kind: 'back' }, { kind: 'back' }, { kind: 'back' }).click([4, 0], [4, 4], [0, 4]).type('');
    expect(hand.labels).toEqual(['trace Zone 1']);
  });

  test('corners on one line enclose nothing and make no outline', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [2, 0], [4, 0]).type('');
    expect(hand.state.problem?.kind).toBe('shape/zero-area');
    expect(hand.labels).toEqual([]);
  });

  test('a double click does not put the same corner twice', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 0], [4, 0]);
    expect(hand.state).toMatchObject({
      corners: [
        { xM: 0, yM: 0 },
        { xM: 4, yM: 0 },
      ],
    });
  });

  test('Backspace takes corners back one by one and the problem with them', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 0]).type('what');
    expect(hand.state.problem).not.toBeNull();
    hand.do({ kind: 'back' });
    expect(hand.state).toMatchObject({ corners: [{ xM: 0, yM: 0 }], problem: null });
  });

  test('Escape puts the open outline aside; Backspace takes it up again', () => {
    const hand = new Hand(yardOf()).do(trace('water')).click([0, 0], [4, 0], [4, 3]).do({ kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'trace', corners: [] });
    hand.do({ kind: 'back' });
    expect(hand.state).toMatchObject({
      kind: 'trace',
      outlineKind: 'water',
      corners: [{}, {}, {}],
      setAside: null,
    });
  });

  test('Escape with no corner puts the tool down', () => {
    const hand = new Hand(yardOf()).do(trace(), { kind: 'escape' });
    expect(hand.state.kind).toBe('select');
  });

  test('taking another tool puts the open outline aside and keeps it through other work', () => {
    const hand = new Hand(yardOf())
      .do(trace('bed'))
      .click([0, 0], [4, 0])
      .do({ kind: 'take', tool: { kind: 'place-mark', markKind: 'spigot' } })
      .click([9, 9])
      .do(trace('zone'), { kind: 'back' });
    expect(hand.state).toMatchObject({ kind: 'trace', outlineKind: 'bed', corners: [{}, {}] });
  });

  test('an interruption loses no corner', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 0]).do({ kind: 'interrupted' });
    expect(hand.state).toMatchObject({ corners: [{}, {}], aim: null });
  });

  test('where nothing may be changed the tool is put down and its corners put aside', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 0], [4, 3]);
    hand.mayEdit = false;
    hand.click([0, 0]);
    expect(hand.labels).toEqual([]);
    expect(hand.state).toMatchObject({ kind: 'select', setAside: { corners: [{}, {}, {}] } });
  });

  test('names count up past those taken', () => {
    const taken = outline('zone', 'Zone 1', rect(50, 50, 1, 1));
    const hand = new Hand(yardOf({ outlines: [taken] })).do(trace()).type('0,0', '4 90', '3 0', '');
    expect(hand.yard.outlines[1]?.name).toBe('Zone 2');
  });
});

describe('an outline left open for another tool', () => {
  test('goes on where it was when its own kind is taken again', () => {
    const zone = { kind: 'take', tool: { kind: 'trace', outlineKind: 'zone' } } as const;
    const bed = { kind: 'take', tool: { kind: 'trace', outlineKind: 'bed' } } as const;
    const hand = new Hand(yardOf()).do(zone).click([0, 0], [10, 0], [10, 10]).do(bed);
    expect(hand.state).toMatchObject({ kind: 'trace', outlineKind: 'bed', corners: [] });
    hand.do(zone);
    expect(hand.state).toMatchObject({ kind: 'trace', outlineKind: 'zone', setAside: null });
    hand.type('');
    expect(xy(ringAt(hand.yard, 0))).toEqual([
      [0, 0],
      [10, 0],
      [10, 10],
    ]); // the three corners clicked
  });
});
