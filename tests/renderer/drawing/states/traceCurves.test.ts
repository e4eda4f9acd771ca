import { describe, expect, test } from 'vitest';
import { regionAreaM2 } from '../../../../core/kernel/index.ts';
import { previewOf } from '../../../../renderer/drawing/index.ts';
import type { Yard } from '../../../../core/yard.ts';
import { tracedRegion } from '../../../../core/curves/index.ts';
import { Hand, pointing, trace, yardOf } from '../../../support/drawing.ts';

function cornersOf(yard: Yard) {
  const outer = yard.outlines[0]?.outer;
  return outer?.kind === 'corners' ? outer.corners : [];
}

function areaM2(yard: Yard): number {
  const outline = yard.outlines[0];
  return outline === undefined ? 0 : regionAreaM2(tracedRegion(outline));
}

const run = (kind: 'straight' | 'smooth') => ({ kind: 'run', edge: { kind } }) as const;
const arc = { kind: 'run', edge: { kind: 'arc', via: null } } as const;

describe('tracing curves', () => {
  test('arc: the next point is on the arc, the one after it the corner', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [10, 0]).do(arc).click([12, 3], [10, 6]);
    hand.do(run('straight')).click([0, 6]).type('');
    expect(cornersOf(hand.yard)[1]).toEqual({
      xM: 10,
      yM: 0,
      run: { kind: 'arc', via: { xM: 12, yM: 3 } },
    }); // as clicked
    expect(hand.labels).toEqual(['trace Zone 1']);
  });

  test('a half circle by its radius, from two corners', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', '20,0', 'arc 10 m right', '');
    expect(areaM2(hand.yard)).toBeCloseTo(50 * Math.PI, 6); // ½ π 10²
  });

  test('a radius is that of one edge, arcs go on until the person says otherwise', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', 'arc 10 left', '4,0');
    expect(hand.state).toMatchObject({ edge: { kind: 'straight' } });
    hand.type('arc', '6,1', '4,2');
    expect(hand.state).toMatchObject({ edge: { kind: 'arc', via: null } });
  });

  test('a radius too small for the corner is said and nothing is placed', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', 'arc 1 left', '4,0');
    expect(hand.state).toMatchObject({
      corners: [{ xM: 0, yM: 0 }],
      problem: { kind: 'value/radius-below-half-chord' },
    });
  });

  test('a radius without a side is asked for it', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', 'arc 10');
    expect(hand.state.problem).toMatchObject({ kind: 'value/missing', where: { field: 'left or right' } });
  });

  test('smooth on and off', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', 'smooth', '10,0', '12,5', 'straight', '0,6', '');
    expect(cornersOf(hand.yard).map((corner) => corner.run?.kind)).toEqual([
      'smooth',
      'smooth',
      undefined,
      undefined,
    ]); // two edges while it was on
  });

  test('what closes the outline runs as the next edge would', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', '10,0', '10,6', '0,6').do(arc).click([-2, 3]);
    hand.click([0, 0]);
    expect(cornersOf(hand.yard)[3]?.run).toEqual({ kind: 'arc', via: { xM: -2, yM: 3 } }); // as clicked
  });

  test('a shape clicked clockwise keeps each arc on its own edge', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [0, 6]).do(arc).click([5, 9], [10, 6]);
    hand.do(run('straight')).click([10, 0]).type('');
    const at = cornersOf(hand.yard).findIndex(({ run: edge }) => edge !== undefined);
    expect(cornersOf(hand.yard)[at]).toMatchObject({ xM: 10, yM: 6, run: { via: { xM: 5, yM: 9 } } });
    expect(cornersOf(hand.yard)[at + 1]).toEqual({ xM: 0, yM: 6 }); // counter-clockwise its other end
  });

  test('Backspace takes back the point on the arc, then the corner with its edge', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0]).do(arc).click([2, 2], [4, 0], [6, 2]);
    hand.do({ kind: 'back' });
    expect(hand.state).toMatchObject({ corners: [{}, {}], edge: { kind: 'arc', via: null } });
    hand.do({ kind: 'back' });
    expect(hand.state).toMatchObject({ corners: [{ xM: 0, yM: 0 }] });
    expect(hand.state.kind === 'trace' && hand.state.corners[0]?.run).toBeUndefined();
  });

  test('Escape and another tool put the curves aside with the corners', () => {
    const hand = new Hand(yardOf()).do(trace()).type('0,0', 'arc 10 left', '4,0').do({ kind: 'escape' });
    hand.do({ kind: 'back' });
    expect(hand.state).toMatchObject({ corners: [{ run: { kind: 'arc' } }, {}] });
  });

  test('an interruption loses neither the point on the arc nor the corners', () => {
    const hand = new Hand(yardOf())
      .do(trace())
      .click([0, 0])
      .do(arc)
      .click([2, 2])
      .do({ kind: 'interrupted' });
    expect(hand.state).toMatchObject({ corners: [{}], edge: { via: { xM: 2, yM: 2 } }, aim: null });
  });

  test('while the pointer moves, the band is the arc and its length is written', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0]).do(arc).click([10, 10]);
    hand.do(pointing('move', 20, 0));
    const preview = previewOf(hand.state, hand.context);
    expect(preview.rubber.length).toBeGreaterThan(10);
    // A half circle of 10 m: π r along it, the drawn corners at most 2 mm off it.
    expect(preview.dimensions[0]?.lengthM).toBeCloseTo(10 * Math.PI, 1);
    expect(preview.dimensions[0]?.curve?.radiusM).toBeCloseTo(10, 9);
    expect(preview.areaM2).toBeCloseTo(50 * Math.PI, 6); // ½ π r²
  });
});

describe('mending a trace that crosses', () => {
  test('the corners are walked so that they do not cross, and the trace stays open', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 4], [4, 0], [0, 4]).type('');
    hand.type('mend');
    expect(hand.labels).toEqual([]);
    expect(hand.state).toMatchObject({ kind: 'trace', problem: null });
    hand.type('');
    expect(areaM2(hand.yard)).toBe(16); // the 4 m square of its corners
  });

  test('with nothing wrong it does nothing', () => {
    const hand = new Hand(yardOf()).do(trace()).click([0, 0], [4, 0]);
    const before = hand.state;
    expect(hand.do({ kind: 'mend' }).state).toBe(before);
  });

  test('a crossing arc is said to be beyond it', () => {
    const hand = new Hand(yardOf())
      .do(trace())
      .click([0, 0])
      .do(arc)
      .click([5, 8], [10, 0])
      .do(run('straight'));
    hand.click([10, 6], [0, 6]).type('').do({ kind: 'mend' });
    expect(hand.state.problem?.kind).toBe('shape/not-uncrossed');
  });
});
