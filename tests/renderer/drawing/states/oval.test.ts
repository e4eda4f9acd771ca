import { describe, expect, test } from 'vitest';
import { type DrawingInput, type OvalShape, previewOf } from '../../../../renderer/drawing/index.ts';
import { Hand, pointing, trace, yardOf } from '../../../support/drawing.ts';

function take(shape: OvalShape): DrawingInput {
  return { kind: 'take', tool: { kind: 'oval', outlineKind: 'tree', shape } };
}

const outer = (hand: Hand) => hand.yard.outlines[0]?.outer;

describe('drawing a circle', () => {
  test('its centre and its rim by clicks', () => {
    const hand = new Hand(yardOf()).do(take('circle')).click([1, 2], [4, 6]);
    expect(outer(hand)).toEqual({ kind: 'circle', centre: { xM: 1, yM: 2 }, radiusM: 5 }); // 3-4-5
    expect(hand.labels).toEqual(['trace Tree ring 1']);
    expect(hand.selection).toEqual({ kind: 'outline', id: 'new-1' });
    expect(hand.state.kind).toBe('reshape');
  });

  test('by keyboard alone', () => {
    const hand = new Hand(yardOf()).do(trace('bed')).type('circle', '2,3', '1.5');
    expect(outer(hand)).toEqual({ kind: 'circle', centre: { xM: 2, yM: 3 }, radiusM: 1.5 }); // as typed
    expect(hand.yard.outlines[0]?.kind).toBe('bed');
  });

  test('the crosshair is moved by the arrow keys and Space places', () => {
    const arrow = (eastM: number) => ({ kind: 'arrow', eastM, northM: 0, from: { xM: 0, yM: 0 } }) as const;
    const hand = new Hand(yardOf()).do(take('circle'), arrow(1), { kind: 'place' }, arrow(2), {
      kind: 'place',
    });
    expect(outer(hand)).toMatchObject({ centre: { xM: 1, yM: 0 }, radiusM: 2 }); // 2 m on from the centre
  });

  test('the same place twice is no circle', () => {
    const hand = new Hand(yardOf()).do(take('circle')).click([1, 2], [1, 2]);
    expect(hand.state).toMatchObject({ kind: 'oval', points: [{ xM: 1, yM: 2 }] });
  });

  test('what follows the pointer is the circle and its area', () => {
    const hand = new Hand(yardOf())
      .do(take('circle'))
      .click([0, 0])
      .do(pointing('move', 10, 0));
    const preview = previewOf(hand.state, hand.context);
    expect(preview.areaM2).toBeCloseTo(100 * Math.PI, 6); // π r²
    expect(preview.dimensions[0]?.lengthM).toBeCloseTo(10, 9);
  });
});

describe('drawing an ellipse', () => {
  test('its centre, the end of its length, its width', () => {
    const hand = new Hand(yardOf()).do(take('ellipse')).click([0, 0], [0, 6], [2, 3]);
    expect(outer(hand)).toEqual({
      kind: 'ellipse',
      centre: { xM: 0, yM: 0 },
      halfLengthM: 6,
      halfWidthM: 2,
      bearingDeg: 0,
    }); // 2 m east of the line north through the centre
  });

  test('whole length with its bearing and whole width, typed', () => {
    const hand = new Hand(yardOf()).do(trace()).type('ellipse', '0,0', '12 90', '5');
    const drawn = outer(hand);
    expect(drawn).toMatchObject({ kind: 'ellipse', bearingDeg: 90 });
    expect(drawn?.kind === 'ellipse' && drawn.halfLengthM).toBeCloseTo(6, 9); // half of 12
    expect(drawn?.kind === 'ellipse' && drawn.halfWidthM).toBeCloseTo(2.5, 9); // half of 5
  });
});

describe('leaving an oval', () => {
  test('Backspace takes back a point, Escape all of them, then the tool', () => {
    const hand = new Hand(yardOf()).do(take('ellipse')).click([0, 0], [0, 6]).do({ kind: 'back' });
    expect(hand.state).toMatchObject({ kind: 'oval', points: [{}] });
    hand.do({ kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'oval', points: [] });
    hand.do({ kind: 'escape' });
    expect(hand.state.kind).toBe('select');
    expect(hand.labels).toEqual([]);
  });

  test('an interruption keeps the points', () => {
    const hand = new Hand(yardOf()).do(take('circle')).click([0, 0]).do({ kind: 'interrupted' });
    expect(hand.state).toMatchObject({ kind: 'oval', points: [{}], aim: null });
  });

  test('an outline left open for it is taken up again afterwards', () => {
    const hand = new Hand(yardOf()).do(trace('bed')).click([0, 0], [4, 0]).do(take('circle')).click([9, 9]);
    hand.do({ kind: 'take', tool: { kind: 'trace', outlineKind: 'bed' } });
    expect(hand.state).toMatchObject({ kind: 'trace', corners: [{}, {}] });
  });

  test('where nothing may be changed it is put down', () => {
    const hand = new Hand(yardOf()).do(take('circle')).click([0, 0]);
    hand.mayEdit = false;
    expect(hand.click([5, 5]).state.kind).toBe('select');
    expect(hand.labels).toEqual([]);
  });

  test('what cannot be read is said', () => {
    const hand = new Hand(yardOf()).do(take('circle')).click([0, 0]).type('wide');
    expect(hand.state).toMatchObject({ kind: 'oval', problem: { where: { field: 'radius' } } });
  });
});
