import { describe, expect, test } from 'vitest';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, pointing, ringAt, xy, yardOf } from '../../../support/drawing.ts';

const lawn = outline('zone', 'lawn', rect(0, 0, 10, 6));

/** The lawn, picked by a click inside it. */
function picked(): Hand {
  return new Hand(yardOf({ outlines: [lawn, outline('bed', 'bed', rect(20, 0, 3, 3))] })).click([5, 2]);
}

function ring(hand: Hand) {
  return xy(ringAt(hand.yard, 0));
}

describe('reshaping an outline', () => {
  test('dragging a corner is one edit, made when it is let go', () => {
    const hand = picked().do(pointing('press', 10, 6), pointing('move', 11, 7), pointing('move', 12, 8));
    expect(hand.labels).toEqual([]);
    hand.do({ kind: 'release' });
    expect(hand.labels).toEqual(['move a corner of lawn']);
    expect(ring(hand)).toEqual([
      [0, 0],
      [10, 0],
      [12, 8],
      [0, 6],
    ]); // the dragged corner where it was let go
  });

  test('a press that moves nothing is no edit', () => {
    expect(picked().do(pointing('press', 10, 6), { kind: 'release' }).labels).toEqual([]);
  });

  test('dragging the middle of an edge adds a corner there, as one edit', () => {
    const hand = picked().drag([5, 0], [5, -2]);
    expect(hand.labels).toEqual(['add a corner to lawn']);
    expect(ring(hand)).toEqual([
      [0, 0],
      [5, -2],
      [10, 0],
      [10, 6],
      [0, 6],
    ]); // between its neighbours
  });

  test('Delete takes away the chosen corner, not the outline', () => {
    const hand = picked().do(pointing('press', 10, 6), { kind: 'release' }, { kind: 'remove' });
    expect(hand.labels).toEqual(['remove a corner of lawn']);
    expect(ring(hand)).toEqual([
      [0, 0],
      [10, 0],
      [0, 6],
    ]); // the other three
  });

  test('a triangle does not lose a corner: what is left would be no outline', () => {
    const hand = picked().do(
      { kind: 'next-corner' },
      { kind: 'remove' },
      { kind: 'next-corner' },
      { kind: 'remove' },
    );
    expect(hand.labels).toEqual(['remove a corner of lawn']);
    expect(hand.state.problem?.kind).toBe('shape/too-few-points');
    hand.do({ kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'reshape', draft: null, problem: null });
  });

  test('Delete with no corner chosen removes the outline; Backspace never does', () => {
    expect(picked().do({ kind: 'back' }).labels).toEqual([]);
    const hand = picked().do({ kind: 'remove' });
    expect(hand.yard.outlines.map(({ id }) => id)).toEqual(['bed']);
    expect(hand.selection).toBeNull();
  });

  test('a run of arrow keys moves the whole outline in one edit', () => {
    const arrow = { kind: 'arrow', eastM: 0.5, northM: 0, from: { xM: 0, yM: 0 } } as const;
    const hand = picked().do(arrow, arrow, arrow, { kind: 'arrows-let-go' });
    expect(hand.labels).toEqual(['move lawn']);
    expect(ring(hand)).toEqual([
      [1.5, 0],
      [11.5, 0],
      [11.5, 6],
      [1.5, 6],
    ]); // 3 × 0.5 m east
  });

  test('arrow keys move the chosen corner alone', () => {
    const north = { kind: 'arrow', eastM: 0, northM: 1, from: { xM: 0, yM: 0 } } as const;
    const hand = picked().do({ kind: 'previous-corner' }, north, { kind: 'arrows-let-go' });
    expect(ring(hand)).toEqual([
      [0, 0],
      [10, 0],
      [10, 6],
      [0, 7],
    ]); // the last corner, 1 m north
  });

  test('a typed length sets the edge that leads to the chosen corner', () => {
    const hand = picked().do({ kind: 'next-corner' }, { kind: 'next-corner' }).type('8');
    expect(ring(hand)).toEqual([
      [0, 0],
      [8, 0],
      [10, 6],
      [0, 6],
    ]); // 8 m from (0, 0) along the south edge
  });

  test('a typed length and bearing with no corner chosen moves the whole', () => {
    expect(ring(picked().type('2 180'))).toEqual([
      [0, -2],
      [10, -2],
      [10, 4],
      [0, 4],
    ]); // 2 m south
  });

  test('a drag that makes the edge cross is kept to be mended, not made and not repaired', () => {
    const hand = picked().drag([10, 6], [-5, 3]);
    expect(hand.labels).toEqual([]);
    expect(hand.state.problem?.kind).toBe('shape/self-crossing');
    expect(ring(hand)).toEqual([
      [0, 0],
      [10, 0],
      [10, 6],
      [0, 6],
    ]); // the yard as it was
    hand.click([100, 100]);
    expect(hand.state).toMatchObject({ kind: 'reshape', draft: { label: 'move a corner of lawn' } });
    hand.drag([-5, 3], [9, 9]);
    expect(hand.labels).toEqual(['move a corner of lawn']);
    expect(ring(hand)).toEqual([
      [0, 0],
      [10, 0],
      [9, 9],
      [0, 6],
    ]); // mended by the second drag
  });

  test('losing the focus does not end a drag', () => {
    const hand = picked().do(pointing('press', 10, 6), { kind: 'arrows-let-go' }, pointing('move', 12, 8), {
      kind: 'release',
    });
    expect(ring(hand)).toEqual([
      [0, 0],
      [10, 0],
      [12, 8],
      [0, 6],
    ]); // as without the interruption
  });

  test('a drag torn away leaves the outline as it was', () => {
    const hand = picked().do(
      pointing('press', 10, 6),
      pointing('move', 12, 8),
      { kind: 'interrupted' },
      { kind: 'release' },
    );
    expect(hand.labels).toEqual([]);
    expect(hand.state).toMatchObject({ draft: null, held: false });
  });

  test('when the outline changes underneath, by undo, a draft of the old one is void', () => {
    const hand = picked().do(pointing('press', 10, 6), pointing('move', 12, 8));
    hand.yard = yardOf({ outlines: [{ ...lawn, name: 'renamed' }] });
    hand.do({ kind: 'release' });
    expect(hand.labels).toEqual([]);
  });

  test('when the outline is gone, nothing is selected', () => {
    const hand = picked();
    hand.yard = yardOf();
    hand.do({ kind: 'release' });
    expect(hand.state.kind).toBe('select');
    expect(hand.selection).toBeNull();
  });

  test('Escape steps back: draft, then corner, then outline', () => {
    const hand = picked().do(
      { kind: 'next-corner' },
      { kind: 'arrow', eastM: 1, northM: 0, from: { xM: 0, yM: 0 } },
    );
    hand.do({ kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'reshape', draft: null, chosen: { at: 0 } });
    hand.do({ kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'reshape', chosen: null });
    hand.do({ kind: 'escape' });
    expect(hand.state.kind).toBe('select');
  });

  test('Enter with nothing typed begins another outline of the same kind', () => {
    expect(picked().type('').state).toMatchObject({ kind: 'trace', outlineKind: 'zone', corners: [] });
  });

  test('a corner of a hole is moved in its hole, which stays clockwise', () => {
    const holed = outline('zone', 'holed', rect(0, 0, 10, 6), [...rect(2, 2, 2, 2)].reverse());
    const hand = new Hand(yardOf({ outlines: [holed] })).click([8, 3]).drag([4, 4], [5, 5]);
    expect(xy(ringAt(hand.yard, 0, 1))).toEqual([
      [2, 4],
      [5, 5],
      [4, 2],
      [2, 2],
    ]); // reversed rect, one corner moved
  });

  test('on a page that may not edit, picking an outline opens no corners', () => {
    const hand = new Hand(yardOf({ outlines: [lawn] }));
    hand.mayEdit = false;
    hand.click([5, 2]).do({ kind: 'remove' });
    expect(hand.selection).toEqual({ kind: 'outline', id: 'lawn' });
    expect(hand.yard.outlines).toHaveLength(1);
  });
});
