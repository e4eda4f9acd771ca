import { describe, expect, test } from 'vitest';
import { previewOf } from '../../../renderer/drawing/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { Hand, pointing, trace, ringAt, xy, yardOf } from '../../support/drawing.ts';

const lawn = outline('zone', 'lawn', rect(0, 0, 10, 6));

function shown(hand: Hand) {
  return previewOf(hand.state, hand.context);
}

describe('what the hand is doing', () => {
  test('with nothing moved the yard is the very same object, so that nothing is worked out again', () => {
    const hand = new Hand(yardOf({ outlines: [lawn] })).click([5, 3]);
    expect(shown(hand).yard).toBe(hand.yard);
  });

  test('while a corner is dragged the yard is as it would stand if it were let go', () => {
    const hand = new Hand(yardOf({ outlines: [lawn] })).click([5, 2]);
    hand.do(pointing('press', 10, 6), pointing('move', 12, 8));
    expect(xy(ringAt(shown(hand).yard, 0))[2]).toEqual([12, 8]); // where the corner is held
    expect(shown(hand).areaM2).toBe(76); // shoelace by hand: (0,0) (10,0) (12,8) (0,6) -> (0+80+72+0)/2
    expect(hand.yard.outlines[0]).toBe(lawn);
  });

  test('a draft that crosses is shown as broken, with the place, and is not part of the yard', () => {
    const hand = new Hand(yardOf({ outlines: [lawn] })).click([5, 2]);
    hand.do(pointing('press', 10, 6), pointing('move', -5, 3));
    const preview = shown(hand);
    expect(preview.yard).toBe(hand.yard);
    expect(preview.broken).toHaveLength(1);
    expect(preview.crossing).not.toBeNull();
    expect(preview.areaM2).toBeNull();
  });

  test('tracing shows the lengths of the edges and the area it would have, the pointer included', () => {
    const hand = new Hand(yardOf())
      .do(trace())
      .click([0, 0], [4, 0])
      .do(pointing('move', 4, 3));
    const preview = shown(hand);
    expect(preview.dimensions.map(({ lengthM }) => lengthM)).toEqual([4, 3]); // the two legs
    expect(preview.areaM2).toBe(6); // half of 4 × 3
    expect(preview.rubber).toHaveLength(2);
  });

  test('tracing clockwise, lengths are turned so that they stand outside', () => {
    const hand = new Hand(yardOf())
      .do(trace())
      .click([0, 0], [0, 3])
      .do(pointing('move', 4, 3));
    expect(shown(hand).dimensions[0]).toMatchObject({ from: { xM: 0, yM: 3 }, to: { xM: 0, yM: 0 } });
  });

  test('a trace that crosses under the pointer has no area', () => {
    const hand = new Hand(yardOf())
      .do(trace())
      .click([0, 0], [4, 4], [4, 0])
      .do(pointing('move', 0, 4));
    expect(shown(hand).areaM2).toBeNull();
  });

  test('what was taped to a corner follows it while it is held', () => {
    const check = { id: 'c', name: 'c', from: { xM: 0, yM: 0 }, to: { xM: 10, yM: 0 }, tapedM: 10 };
    const hand = new Hand({ ...yardOf({ outlines: [lawn] }), checks: [check] }).click([5, 2]);
    hand.do(pointing('press', 10, 0), pointing('move', 11, 1));
    expect(shown(hand).yard.checks[0]?.to).toEqual({ xM: 11, yM: 1 }); // where the pointer is
    expect(hand.yard.checks[0]).toEqual(check); // nothing is changed before it is let go
  });

  test('where nothing may be changed no handles are shown', () => {
    const hand = new Hand(yardOf({ outlines: [lawn] })).click([5, 2]);
    hand.mayEdit = false;
    expect(shown(hand)).toMatchObject({ reshaping: null, mayEdit: false });
  });
});
