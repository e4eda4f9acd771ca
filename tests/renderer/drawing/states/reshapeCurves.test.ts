import { describe, expect, test } from 'vitest';
import { newOutline } from '../../../../core/edits/index.ts';
import { findCrossing } from '../../../../core/kernel/index.ts';
import { tracedRing } from '../../../../core/curves/index.ts';
import type { Outline, Traced, TracedCorner } from '../../../../core/yard.ts';
import { previewOf, promptOf } from '../../../../renderer/drawing/index.ts';
import { outline, points } from '../../../support/builders.ts';
import { Hand, pointing, ringAt, xy, yardOf } from '../../../support/drawing.ts';

const CURVED: readonly TracedCorner[] = [
  { xM: 0, yM: 0, keepOffM: 0.5 },
  { xM: 10, yM: 0, run: { kind: 'arc', via: { xM: 12, yM: 3 } } },
  { xM: 10, yM: 6, run: { kind: 'smooth' } },
  { xM: 5, yM: 8, run: { kind: 'smooth' } },
  { xM: 0, yM: 6 },
];

function lawn(outer: Traced): Outline {
  return newOutline({ id: 'lawn', kind: 'zone', name: 'lawn', outer });
}

function picked(outer: Traced = { kind: 'corners', corners: CURVED }): Hand {
  return new Hand(yardOf({ outlines: [lawn(outer)] })).do({
    kind: 'choose',
    selection: { kind: 'outline', id: 'lawn' },
  });
}

function corners(hand: Hand): readonly TracedCorner[] {
  const outer = hand.yard.outlines[0]?.outer;
  return outer?.kind === 'corners' ? outer.corners : [];
}

const straightRun = { kind: 'run', edge: { kind: 'straight' } } as const;
const arcRun = { kind: 'run', edge: { kind: 'arc', via: null } } as const;
const next = { kind: 'next-corner' } as const;

describe('reshaping an outline with curves', () => {
  test('a corner dragged keeps its curve and its strip, and all the others', () => {
    const hand = picked().drag([0, 0], [-1, -1]).drag([10, 0], [11, -1]);
    expect(corners(hand)).toEqual([
      { xM: -1, yM: -1, keepOffM: 0.5 },
      { xM: 11, yM: -1, run: { kind: 'arc', via: { xM: 12, yM: 3 } } },
      ...CURVED.slice(2),
    ]); // only the places dragged changed
    expect(hand.labels).toEqual(['move a corner of lawn', 'move a corner of lawn']);
  });

  test('the point on an arc is dragged', () => {
    const hand = picked().drag([12, 3], [13, 3]);
    expect(corners(hand)[1]?.run).toEqual({ kind: 'arc', via: { xM: 13, yM: 3 } }); // where it was let go
    expect(hand.labels).toEqual(['bend an edge of lawn']);
  });

  test('an edge dragged with Alt bends; let go where it was taken, it stays straight', () => {
    const press = { ...pointing('press', 5, 0), free: true };
    const hand = picked().do(press, { kind: 'release' });
    expect(hand.labels).toEqual([]);
    expect(hand.state).toMatchObject({ draft: null, held: false });
    hand.do(press, { ...pointing('move', 5, -2), free: true }, { kind: 'release' });
    expect(corners(hand)[0]).toEqual({
      xM: 0,
      yM: 0,
      keepOffM: 0.5,
      run: { kind: 'arc', via: { xM: 5, yM: -2 } },
    }); // the strip stays
    expect(hand.labels).toEqual(['bend an edge of lawn']);
  });

  test('a bend torn away leaves the edge straight', () => {
    const hand = picked().do({ ...pointing('press', 5, 0), free: true }, pointing('move', 5, -2), {
      kind: 'interrupted',
    });
    expect(hand.state).toMatchObject({ draft: null, held: false });
    expect(hand.do({ kind: 'release' }).labels).toEqual([]);
  });

  test('a corner added on an edge with a strip has it on both parts', () => {
    const hand = picked().drag([5, 0], [5, -1]);
    expect(corners(hand).slice(0, 2)).toEqual([
      { xM: 0, yM: 0, keepOffM: 0.5 },
      { xM: 5, yM: -1, keepOffM: 0.5 },
    ]); // split in two
  });

  test('the keys go through corners and the points of arcs', () => {
    const hand = picked().do(next, next, next);
    expect(hand.state).toMatchObject({ chosen: { of: 'via', at: 1 } });
    hand.do({ kind: 'arrow', eastM: 0.5, northM: 0, from: { xM: 0, yM: 0 } }, { kind: 'arrows-let-go' });
    expect(corners(hand)[1]?.run).toEqual({ kind: 'arc', via: { xM: 12.5, yM: 3 } }); // 0.5 m east
  });

  test('a figure typed for an arc is its radius', () => {
    const hand = picked().do(next, next, next).type('5');
    const run = corners(hand)[1]?.run;
    // On a chord of 6 m an arc of 5 m rises 5 − √(5² − 3²) = 1 m, half way along.
    expect(run?.kind === 'arc' && run.via.xM).toBeCloseTo(11, 9);
    expect(run?.kind === 'arc' && run.via.yM).toBeCloseTo(3, 9);
    hand.type('2');
    expect(hand.state.problem?.kind).toBe('value/radius-below-half-chord');
  });

  test('the edge from the chosen corner is made an arc, smooth, straight again, an edit each', () => {
    const hand = picked().do(next, arcRun);
    expect(corners(hand)[0]?.run).toEqual({ kind: 'arc', via: { xM: 5, yM: -2.5 } }); // out by a quarter of 10 m
    expect(hand.state).toMatchObject({ chosen: { of: 'via', at: 0 } });
    hand.type('smooth').do(straightRun);
    expect(corners(hand)[0]).toEqual({ xM: 0, yM: 0, keepOffM: 0.5 }); // as before
    expect(hand.labels).toEqual([
      'bend an edge of lawn',
      'bend an edge of lawn',
      'straighten an edge of lawn',
    ]);
  });

  test('with no edge in hand it is said', () => {
    expect(picked().do(arcRun).state.problem).toMatchObject({ kind: 'value/missing' });
  });

  test('Delete on the point of an arc straightens its edge; a corner between smooth edges goes smoothly', () => {
    const hand = picked().do(next, next, next, { kind: 'remove' });
    expect(corners(hand)[1]).toEqual({ xM: 10, yM: 0 }); // no run
    hand.do(pointing('press', 5, 8), { kind: 'release' }, { kind: 'remove' });
    expect(corners(hand)).toHaveLength(4); // five less one
    expect(corners(hand)[2]).toEqual({ xM: 10, yM: 6, run: { kind: 'smooth' } }); // goes on to (0, 6)
  });

  test('the whole is moved with its curves', () => {
    const hand = picked().type('2 180');
    expect(corners(hand)[1]).toMatchObject({ run: { via: { xM: 12 } } });
    const run = corners(hand)[1]?.run;
    expect(run?.kind === 'arc' && run.via.yM).toBeCloseTo(1, 9); // 3 − 2
  });

  test('figures typed on the page are one edit, refused when they leave no shape', () => {
    const circle: Traced = { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 2 };
    const hand = picked(circle).do({
      kind: 'redraw',
      ring: 0,
      traced: { ...circle, radiusM: 3 },
      label: 'size lawn',
    });
    expect(hand.yard.outlines[0]?.outer).toEqual({ ...circle, radiusM: 3 }); // as given
    hand.do({ kind: 'redraw', ring: 0, traced: { ...circle, radiusM: 0 }, label: 'size lawn' });
    expect(hand.labels).toEqual(['size lawn']);
    expect(hand.state.problem?.kind).toBe('shape/no-size');
  });
});

describe('reshaping a circle and an ellipse', () => {
  const circle: Traced = { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 2 };
  const ellipse: Traced = {
    kind: 'ellipse',
    centre: { xM: 0, yM: 0 },
    halfLengthM: 4,
    halfWidthM: 2,
    bearingDeg: 90,
  };

  test('the rim sizes it, the centre moves it', () => {
    const hand = picked(circle).drag([2, 0], [3, 4]).drag([0, 0], [1, 1]);
    expect(hand.yard.outlines[0]?.outer).toEqual({ kind: 'circle', centre: { xM: 1, yM: 1 }, radiusM: 5 }); // 3-4-5
    expect(hand.labels).toEqual(['size lawn', 'move lawn']);
  });

  test('typed: a radius for the rim, whole length and width for the ends', () => {
    expect(picked(circle).do(next, next).type('7').yard.outlines[0]?.outer).toMatchObject({ radiusM: 7 });
    const hand = picked(ellipse).do(next, next).type('10').do(next).type('3');
    expect(hand.yard.outlines[0]?.outer).toMatchObject({ halfLengthM: 5, halfWidthM: 1.5 }); // halves
  });

  test('Delete with a point of it chosen takes nothing away', () => {
    const hand = picked(circle).do(next).do({ kind: 'back' });
    expect(hand.yard.outlines).toHaveLength(1);
  });
});

describe('uncrossing an outline in the yard', () => {
  const bowTie = outline('zone', 'tie', points([0, 0], [4, 4], [4, 0], [0, 4]));
  const tie = () =>
    new Hand(yardOf({ outlines: [bowTie] })).do({
      kind: 'choose',
      selection: { kind: 'outline', id: 'tie' },
    });
  const offers = (hand: Hand) =>
    promptOf(hand.state, 'metric', hand.yard, true).offers.map(({ words }) => words);

  test('it is offered, shown, and kept only by Enter', () => {
    const hand = tie();
    expect(offers(hand)).toEqual(['mend']);
    expect(previewOf(hand.state, hand.context).crossing).toEqual({ xM: 2, yM: 2 }); // the diagonals' middle
    hand.do({ kind: 'mend' }, { kind: 'arrows-let-go' }, { kind: 'release' });
    expect(hand.labels).toEqual([]);
    expect(offers(hand)).toEqual(['keep it', 'put it back']);
    expect(previewOf(hand.state, hand.context).areaM2).toBe(16); // the square of its corners
    hand.type('');
    expect(hand.labels).toEqual(['uncross tie']);
    expect(findCrossing(ringAt(hand.yard, 0))).toBeUndefined();
    expect(xy(ringAt(hand.yard, 0))[0]).toEqual([0, 0]); // the first corner stays the first
  });

  test('Escape puts it back', () => {
    const hand = tie().do({ kind: 'mend' }, { kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'reshape', draft: null });
    expect(hand.yard.outlines[0]).toBe(bowTie);
  });

  test('a drag that crosses can be mended at once', () => {
    const hand = picked({ kind: 'corners', corners: points([0, 0], [10, 0], [10, 6], [0, 6]) });
    hand.drag([10, 6], [-5, 3]).do({ kind: 'mend' }).type('');
    expect(hand.labels).toEqual(['uncross lawn']);
    const outer = hand.yard.outlines[0]?.outer;
    expect(outer && findCrossing(tracedRing(outer))).toBeUndefined();
  });

  test('what does not cross is left alone', () => {
    const hand = picked();
    const before = hand.state;
    expect(hand.do({ kind: 'mend' }).state).toBe(before);
    expect(offers(hand)).toEqual([]);
  });
});
