import { describe, expect, test } from 'vitest';
import { previewOf } from '../../../../renderer/drawing/index.ts';
import { pointing } from '../../../support/drawing.ts';
import { expectNear } from '../../../support/expectNear.ts';
import { WalkHand } from '../../../support/walkHand.ts';

const arrow = (eastM: number, northM: number) =>
  ({ kind: 'arrow', eastM, northM, from: { xM: 0, yM: 0 } }) as const;
const letGo = { kind: 'arrows-let-go' } as const;
const sidesOf = (hand: WalkHand) => previewOf(hand.state, hand.context).walk?.inHand?.sides ?? null;

describe('a cut taken in hand', () => {
  test('shows the ground on both sides and its loads', () => {
    const sides = sidesOf(new WalkHand().takeCut());
    // Going north at 8 m: 8 × 10 m² on the left, 12 × 10 on the right; loads of 100 m².
    expectNear(sides?.left.areaM2 ?? Number.NaN, 80, 1e-6, 'm²');
    expectNear(sides?.right.areaM2 ?? Number.NaN, 120, 1e-6, 'm²');
    expect([sides?.left.loads, sides?.right.loads, sides?.moreLoads]).toEqual([1, 2, 1]);
  });

  test('is dragged by its middle, square to itself, and held where it is let go', () => {
    const hand = new WalkHand().takeCut();
    hand.do(pointing('press', 8, 5), pointing('move', 10, 6.5));
    expectNear(sidesOf(hand)?.left.areaM2 ?? Number.NaN, 100, 1e-6, 'm²'); // 10 × 10 by hand
    expect(sidesOf(hand)?.moreLoads).toBe(0);
    hand.do({ kind: 'release' });
    expect(hand.held).toEqual([[10, 0, 10, 10]]);
    expect(hand.labels).toEqual(['move a cut']);
    expect(hand.selection).toEqual({ kind: 'cut', id: 'new-1' });
  });

  test('once held keeps its id however often it is dragged', () => {
    const hand = new WalkHand().takeCut().drag([8, 5], [10, 5]).drag([10, 5], [9, 5]);
    expect(hand.held).toEqual([[9, 0, 9, 10]]);
    expect(hand.yard.jobs.at(-1)?.heldCuts[0]?.id).toBe('new-1');
  });

  test('is dragged by an end along the edge, which stops at tape marks', () => {
    const hand = new WalkHand().takeCut();
    hand.do(pointing('press', 8, 10), pointing('move', 6.07, 11));
    // Told from the corner the tape is laid from: 6.1 m along the north edge.
    expect(previewOf(hand.state, hand.context).dimensions.map(({ lengthM }) => lengthM.toFixed(3))).toEqual([
      '6.100',
    ]);
    hand.do({ kind: 'release' });
    expect(hand.held).toEqual([[8, 0, 6.1, 10]]);
  });

  test('stops between marks while a key holds it free', () => {
    const hand = new WalkHand().takeCut();
    hand.do(pointing('press', 8, 10), { ...pointing('move', 6.07, 11), free: true }, { kind: 'release' });
    expect(hand.held).toEqual([[8, 0, 6.07, 10]]);
  });

  test('goes back to where it was when it would part nothing', () => {
    const hand = new WalkHand().takeCut().drag([8, 10], [12, -1]);
    expect(hand.held).toEqual([]);
    expect(hand.state.problem?.kind).toBe('plan/cut-parts-nothing');
  });

  test('torn away by the window is not moved', () => {
    const hand = new WalkHand().takeCut();
    hand.do(pointing('press', 8, 5), pointing('move', 10, 5), { kind: 'interrupted' }, { kind: 'release' });
    expect(hand.held).toEqual([]);
    expect(hand.state.kind).toBe('cut');
  });

  test('is put back by Escape, then put down', () => {
    const hand = new WalkHand().takeCut();
    hand.do(arrow(1, 0), { kind: 'escape' }, letGo);
    expect(hand.held).toEqual([]);
    hand.do({ kind: 'escape' });
    expect([hand.state.kind, hand.selection]).toEqual(['select', null]);
  });

  test('pressed and let go where it is, is not held for that', () => {
    const hand = new WalkHand().takeCut().do(pointing('press', 8, 5), { kind: 'release' });
    expect(hand.edits).toEqual([]);
  });
});

describe('a cut worked by keys', () => {
  test('moves a tape mark for each arrow across it, and a run of arrows is one edit', () => {
    const hand = new WalkHand().takeCut().do(arrow(2, 0), arrow(2, 0), arrow(2, 0), letGo);
    // Three marks of 0.1 m
    expect(hand.held).toEqual([[8.3, 0, 8.3, 10]]);
    expect(hand.edits).toHaveLength(1);
  });

  test('stays where it is for an arrow along it', () => {
    expect(new WalkHand().takeCut().do(arrow(0, 2), letGo).held).toEqual([]);
  });

  test('has its ends chosen in turn, and each moves along its edge', () => {
    const hand = new WalkHand().takeCut().do({ kind: 'next-corner' }, arrow(-1, 0), arrow(-1, 0), letGo);
    expect(hand.held).toEqual([[7.8, 0, 8, 10]]);
    hand.do({ kind: 'previous-corner' }, arrow(1, 0), letGo);
    expect(hand.held).toEqual([[7.8, 0, 8.1, 10]]);
  });

  test('is held by Enter and let go by Delete', () => {
    const hand = new WalkHand().takeCut().type('');
    expect(hand.held).toEqual([[8, 0, 8, 10]]);
    hand.type('');
    expect(hand.labels).toEqual(['hold a cut']);
    hand.do({ kind: 'remove' });
    expect(hand.held).toEqual([]);
    expect(hand.labels).toEqual(['hold a cut', 'let a cut go']);
    expect(hand.selection).toBe(null);
  });

  test('of the plan’s own has nothing to let go', () => {
    expect(new WalkHand().takeCut().do({ kind: 'remove' }).edits).toEqual([]);
  });
});

describe('a cut given figures', () => {
  test('has an end so far along its edge', () => {
    const hand = new WalkHand().takeCut().do({ kind: 'next-corner' }).type('3.25');
    expect(hand.held).toEqual([[3.25, 0, 8, 10]]);
    expect(hand.type('25').state.problem?.kind).toBe('plan/cut-off-edge');
    expect(hand.type('far').state.problem?.kind).toBe('value/not-a-number');
  });

  test('moves so far on a bearing, and must be told which', () => {
    const hand = new WalkHand().takeCut().type('1.5 270');
    expect(hand.held).toEqual([[6.5, 0, 6.5, 10]]);
    expect(hand.type('1.5').state.problem?.kind).toBe('value/missing');
    expect(hand.type('30 90').state.problem?.kind).toBe('plan/cut-parts-nothing');
  });
});

describe('where nothing may be changed', () => {
  test('a cut is looked at only', () => {
    const hand = new WalkHand(false).takeCut();
    expect(sidesOf(hand)?.left.loads).toBe(1);
    hand.drag([8, 5], [10, 5]).type('').do(arrow(1, 0), letGo, { kind: 'remove' });
    expect(hand.edits).toEqual([]);
  });

  test('on another page it is put down', () => {
    const hand = new WalkHand().takeCut();
    hand.walkOf = () => null;
    expect(hand.do(pointing('move', 1, 1)).state.kind).toBe('select');
  });

  test('a cut that is no more is put down', () => {
    const hand = new WalkHand().do({ kind: 'choose', selection: { kind: 'cut', id: 'gone' } });
    expect(hand.do(pointing('move', 1, 1)).state.kind).toBe('select');
  });
});
