import { describe, expect, test } from 'vitest';
import { pointing } from '../../../support/drawing.ts';
import { WalkHand } from '../../../support/walkHand.ts';

const take = (end: 'start' | 'finish') => ({ kind: 'take', tool: { kind: 'place-end', end } }) as const;
const jobOf = (hand: WalkHand) => hand.yard.jobs.at(-1);

describe('where the walk starts and finishes', () => {
  test('is set by a click, drawn to a corner', () => {
    const hand = new WalkHand().do(take('start'), pointing('click', 0.2, 0.1, 0.5));
    expect(jobOf(hand)?.startAt).toEqual({ xM: 0, yM: 0 });
    expect(jobOf(hand)?.finishAt).toBe(null);
    expect([hand.labels, hand.state.kind]).toEqual([['place the start'], 'select']);
  });

  test('is typed', () => {
    const hand = new WalkHand().do(take('finish')).type('12,3.5');
    expect(jobOf(hand)?.finishAt).toEqual({ xM: 12, yM: 3.5 });
    expect(new WalkHand().do(take('finish')).type('there').state.problem?.kind).toBe('value/missing');
  });

  test('is placed by arrow keys and Space', () => {
    const arrow = { kind: 'arrow', eastM: 1, northM: 0, from: { xM: 3, yM: 4 } } as const;
    const hand = new WalkHand().do(take('start'), arrow, arrow, { kind: 'place' });
    expect(jobOf(hand)?.startAt).toEqual({ xM: 5, yM: 4 });
  });

  test('is left as it was by Escape, and when the window is left', () => {
    const hand = new WalkHand().do(take('start'), pointing('move', 1, 1), { kind: 'interrupted' });
    expect(hand.state).toMatchObject({ kind: 'place-end', aim: null });
    hand.do({ kind: 'escape' });
    expect([hand.state.kind, hand.edits]).toEqual(['select', []]);
  });

  test('is not to be set where nothing may be changed', () => {
    expect(new WalkHand(false).do(take('start')).state.kind).toBe('select');
  });
});
