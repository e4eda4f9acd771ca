import { describe, expect, test } from 'vitest';
import { applyEdit, inverseOf } from '../../../../core/edits/index.ts';
import { canGrab, previewOf } from '../../../../renderer/drawing/index.ts';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, pointing, ringAt, xy, yardOf } from '../../../support/drawing.ts';

const take = { kind: 'take', tool: { kind: 'move-yard' } } as const;
/** Its middle is (30, 20); its corners reach 36 m, so that the handle stands halfway, at (30, 38.03). */
const lawn = yardOf({ outlines: [outline('zone', 'lawn', rect(0, 0, 60, 40))] });
const HANDLE: readonly [number, number] = [30, 20 + Math.hypot(30, 20) / 2];

describe('moving and turning the whole yard', () => {
  test('a drag anywhere moves it, as one edit, and the yard stays in hand', () => {
    const hand = new Hand(lawn).do(take).drag([10, 10], [13, 8]);
    expect(xy(ringAt(hand.yard, 0))[0]).toEqual([3, -2]); // 3 east, 2 south
    expect(hand.labels).toEqual(['move the yard']);
    expect(hand.state.kind).toBe('move-yard');
    const [edit] = hand.edits;
    if (edit === undefined) throw new Error('no edit');
    expect(applyEdit(hand.yard, inverseOf(edit))).toEqual(lawn);
  });

  test('its handle turns it about its middle, the way the pointer goes round', () => {
    const hand = new Hand(lawn).do(take).drag(HANDLE, [80, 20]);
    // From north to east is a quarter turn clockwise: the south-west corner comes to the north-west.
    expect(xy(ringAt(hand.yard, 0))[0]).toEqual([10, 50]); // (-30, -20) about the middle becomes (-20, 30)
  });

  test('while held, the yard is shown where it would lie, and nothing is in the file yet', () => {
    const hand = new Hand(lawn).do(take, pointing('press', 10, 10), pointing('move', 20, 10));
    const preview = previewOf(hand.state, hand.context);
    expect(xy(ringAt(preview.yard, 0))[0]).toEqual([10, 0]); // 10 m east
    expect(xy(preview.pointedLength)[0]).toEqual([40, 20]); // the middle, and from it the handle
    expect(hand.yard).toBe(lawn);
    hand.do({ kind: 'interrupted' }, { kind: 'release' });
    expect(hand.labels).toEqual([]);
    expect(previewOf(hand.state, hand.context).yard).toBe(lawn);
  });

  test('the sketch does not slide along under it', () => {
    const hand = new Hand(lawn).do(take);
    expect(canGrab(hand.state, { xM: 500, yM: 500 }, 1, hand.context)).toBe(true);
  });

  test('a typed turn and a typed shift are one edit each', () => {
    const hand = new Hand(lawn).do(take).type('90');
    expect(xy(ringAt(hand.yard, 0))[0]).toEqual([10, 50]); // as turned by the handle above
    hand.type('-90', '3, -2');
    expect(xy(ringAt(hand.yard, 0))[0]).toEqual([3, -2]);
    expect(hand.labels).toHaveLength(3); // three were typed
  });

  test('arrow keys move it; letting go of them is one edit', () => {
    const arrow = { kind: 'arrow', eastM: 0.5, northM: 0, from: { xM: 0, yM: 0 } } as const;
    const hand = new Hand(lawn).do(take, arrow, arrow, { kind: 'arrows-let-go' });
    expect(xy(ringAt(hand.yard, 0))[0]).toEqual([1, 0]); // twice half a metre
    expect(hand.labels).toHaveLength(1);
  });

  test('what cannot be read, or leads out of the frame, is said and moves nothing', () => {
    const hand = new Hand(lawn).do(take).type('sideways');
    expect(hand.state.problem?.kind).toBe('value/not-a-number');
    hand.type('3, up');
    expect(hand.state.problem?.kind).toBe('value/not-a-number');
    hand.type('4000, 0');
    expect(hand.state.problem?.kind).toBe('value/out-of-range');
    expect(hand.labels).toEqual([]);
  });

  test('Escape lets go of what is held, then puts the yard down; Enter puts it down', () => {
    const hand = new Hand(lawn).do(take, pointing('press', 10, 10), pointing('move', 20, 10), {
      kind: 'escape',
    });
    expect(hand.state).toMatchObject({ kind: 'move-yard', held: null, eastM: 0 });
    hand.do({ kind: 'escape' });
    expect(hand.state.kind).toBe('select');
    hand.do(take).type('');
    expect(hand.state.kind).toBe('select');
    expect(hand.labels).toEqual([]);
  });

  test('a click alone moves nothing', () => {
    const hand = new Hand(lawn).do(take).drag([10, 10], [10, 10]).click([10, 10]);
    expect(hand.labels).toEqual([]);
  });
});
