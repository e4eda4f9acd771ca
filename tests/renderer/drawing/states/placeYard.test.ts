import { describe, expect, test } from 'vitest';
import { applyEdit, inverseOf } from '../../../../core/edits/index.ts';
import { readPlace } from '../../../../core/crs/index.ts';
import { lonLatToYard } from '../../../../core/earth/index.ts';
import { distanceM } from '../../../../core/kernel/index.ts';
import type { YardPoint } from '../../../../core/spaces.ts';
import { previewOf } from '../../../../renderer/drawing/index.ts';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, pointing, ringAt, yardOf } from '../../../support/drawing.ts';
import { expectNear } from '../../../support/expectNear.ts';

const take = { kind: 'take', tool: { kind: 'place-yard', readPlace } } as const;
const lawn = yardOf({ outlines: [outline('zone', 'lawn', rect(0, 0, 60, 40))] });
/** Two places 60 m apart from west to east: by Planimeter of GeographicLib 2.1.2 a degree is 85,393.86 m at 40° N. */
const WEST = '40, -86';
const EAST = `40, ${-86 + 60 / 85_393.86}`;

describe('placing a yard by points', () => {
  test('two corners and their places lay it down as one edit, which one undo takes back', () => {
    const hand = new Hand(lawn).do(take).click([0, 0]).type(WEST).click([60, 0]).type(EAST).type('');
    const { frame } = hand.yard.details;
    if (frame.kind !== 'placed') throw new Error('not placed');
    const corner = lonLatToYard(frame.origin, { latDeg: 40, lonDeg: -86 });
    expectNear(distanceM(ringAt(hand.yard, 0)[0] as YardPoint, corner), 0, 0.001, 'm'); // as typed; the degree is to 1e-7
    expect(hand.labels).toEqual(['place the yard']);
    expect(hand.state).toMatchObject({ kind: 'select', problem: null });
    const [edit] = hand.edits;
    if (edit === undefined) throw new Error('no edit');
    expect(applyEdit(hand.yard, inverseOf(edit))).toEqual(lawn);
  });

  test('a point snaps to a corner, and what is pointed out is shown', () => {
    const hand = new Hand(lawn).do(take).do(pointing('click', 0.2, 0.3, 1));
    expect(hand.state).toMatchObject({ kind: 'place-yard', at: { xM: 0, yM: 0 } });
    expect(previewOf(hand.state, hand.context).pointed).toEqual([{ xM: 0, yM: 0 }]);
  });

  test('places farther apart than the yard has them are taken without scaling it, and said', () => {
    const apart = `40, ${-86 + 61 / 85_393.86}`;
    const hand = new Hand(lawn).do(take).click([0, 0]).type(WEST).click([60, 0]).type(apart).type('');
    const [a, b] = ringAt(hand.yard, 0) as [YardPoint, YardPoint];
    expectNear(distanceM(a, b), 60, 1e-12, 'm'); // as drawn
    const { problem } = hand.state;
    if (problem?.kind !== 'value/scale-misfit') throw new Error('no misfit said');
    expectNear(problem.facts.ratio, 61 / 60, 1e-6, ''); // as typed
  });

  test('a point clicked again gives its place back to be typed anew', () => {
    const hand = new Hand(lawn).do(take).click([0, 0]).type('41, -86').click([60, 0]).type(EAST);
    hand.click([0, 0]);
    expect(hand.state).toMatchObject({ at: { xM: 0, yM: 0 }, known: [{ at: { xM: 60, yM: 0 } }] });
    hand.type(WEST, '');
    expect(hand.yard.details.frame.kind).toBe('placed');
  });

  test('what is missing or cannot be read is said, and nothing is placed', () => {
    const hand = new Hand(lawn).do(take).type(WEST);
    expect(hand.state.problem?.kind).toBe('value/missing'); // no point yet
    hand.click([0, 0]).type('');
    expect(hand.state.problem?.kind).toBe('value/missing'); // no place yet
    hand.type('here');
    expect(hand.state.problem?.kind).toBe('value/not-a-place');
    hand.type(WEST, '');
    expect(hand.state.problem?.kind).toBe('value/too-few'); // one point says nothing of a turn
    hand.click([60, 0]).type('41, -86', '');
    expect(hand.state.problem?.kind).toBe('value/scale-misfit'); // a degree for 60 m
    expect(hand.labels).toEqual([]);
  });

  test('Backspace takes back the point, then the last place; Escape begins again, then puts the tool down', () => {
    const hand = new Hand(lawn).do(take).click([0, 0]).type(WEST).click([60, 0]).do({ kind: 'back' });
    expect(hand.state).toMatchObject({ at: null, known: [{}] });
    hand.do({ kind: 'back' });
    expect(hand.state).toMatchObject({ known: [] });
    hand.click([0, 0]).do({ kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'place-yard', at: null, known: [] });
    hand.do({ kind: 'escape' });
    expect(hand.state.kind).toBe('select');
  });

  test('works by keys alone, and an interruption loses no place', () => {
    const hand = new Hand(lawn).do(take);
    hand.do({ kind: 'arrow', eastM: 1, northM: 0, from: { xM: 5, yM: 5 } }, { kind: 'place' }).type(WEST);
    expect(hand.state).toMatchObject({ known: [{ at: { xM: 6, yM: 5 } }] });
    hand.do({ kind: 'interrupted' });
    expect(hand.state).toMatchObject({ aim: null, known: [{ at: { xM: 6, yM: 5 } }] });
  });
});
