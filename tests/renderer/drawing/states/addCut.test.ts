import { describe, expect, test } from 'vitest';
import { previewOf } from '../../../../renderer/drawing/index.ts';
import { pointing } from '../../../support/drawing.ts';
import { expectNear } from '../../../support/expectNear.ts';
import { WalkHand } from '../../../support/walkHand.ts';

const take = { kind: 'take', tool: { kind: 'add-cut' } } as const;
const arrow = (eastM: number, northM: number) =>
  ({ kind: 'arrow', eastM, northM, from: { xM: 3, yM: 1 } }) as const;

describe('a cut added', () => {
  test('by two clicks on the edge stands on tape marks, is held and in hand', () => {
    const hand = new WalkHand().do(
      take,
      pointing('click', 3.04, 0.2, 0.5),
      pointing('click', 3.97, 9.8, 0.5),
    );
    expect(hand.held).toEqual([[3, 0, 4, 10]]);
    expect(hand.labels).toEqual(['add a cut']);
    expect(hand.selection).toEqual({ kind: 'cut', id: 'new-1' });
    expect(hand.state.kind).toBe('cut');
  });

  test('shows the ground on both sides before its second end is set', () => {
    const hand = new WalkHand().do(take, pointing('click', 3, 0), pointing('move', 3, 10));
    const sides = previewOf(hand.state, hand.context).walk?.inHand?.sides;
    expectNear(sides?.left.areaM2 ?? Number.NaN, 30, 1e-6, 'm²'); // 3 × 10 by hand
    expectNear(sides?.right.areaM2 ?? Number.NaN, 170, 1e-6, 'm²'); // 17 × 10 by hand
  });

  test('begins on an edge or not at all', () => {
    const hand = new WalkHand().do(take, pointing('click', 5, 5, 0.5));
    expect(hand.state.problem?.kind).toBe('plan/cut-off-edge');
    expect(hand.do(pointing('click', 5, 0)).state.problem).toBe(null);
  });

  test('along an edge is refused', () => {
    const hand = new WalkHand().do(take, pointing('click', 3, 0), pointing('click', 9, 0));
    expect(hand.state.problem?.kind).toBe('plan/cut-parts-nothing');
    expect(hand.edits).toEqual([]);
  });

  test('is typed by coordinates, and by how far along the edge that is pointed at', () => {
    expect(new WalkHand().do(take).type('3,0', '5,10').held).toEqual([[3, 0, 5, 10]]);
    const along = new WalkHand().do(take, pointing('move', 4, 0)).type('2.5');
    along.do(pointing('move', 4, 10)).type('2.25');
    expect(along.held).toEqual([[2.5, 0, 2.25, 10]]);
    expect(new WalkHand().do(take).type('3,4').state.problem?.kind).toBe('plan/cut-off-edge');
    expect(new WalkHand().do(take).type('three').state.problem?.kind).toBe('value/missing');
  });

  test('is placed by arrow keys', () => {
    const hand = new WalkHand().do(take, arrow(0, -1), { kind: 'place' });
    hand.do(...Array.from({ length: 10 }, () => arrow(0, 1)), { kind: 'place' });
    // From 3, 1 one step south to the edge, then ten steps of 1 m north
    expect(hand.held).toEqual([[3, 0, 3, 10]]);
  });

  test('loses its first end by Backspace or Escape, and is put down by the next', () => {
    const hand = new WalkHand().do(take, pointing('click', 3, 0), { kind: 'back' });
    expect(hand.state).toMatchObject({ kind: 'add-cut', from: null });
    hand.do(pointing('click', 3, 0), { kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'add-cut', from: null });
    expect(hand.do({ kind: 'escape' }).state.kind).toBe('select');
  });

  test('keeps its first end when the window is left', () => {
    const hand = new WalkHand().do(take, pointing('click', 3, 0), { kind: 'interrupted' });
    expect(hand.state).toMatchObject({
      kind: 'add-cut',
      aim: null,
      from: { place: { at: { xM: 3, yM: 0 } } },
    });
  });

  test('cannot be taken in hand where nothing may be changed', () => {
    expect(new WalkHand(false).do(take).state.kind).toBe('select');
  });
});
