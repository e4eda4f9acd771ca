import { tracedRing } from '../../../../core/curves/index.ts';
import { describe, expect, test } from 'vitest';
import type { Picture } from '../../../../core/yard.ts';
import { distanceM } from '../../../../core/kernel/index.ts';
import { pictureCorners } from '../../../../renderer/drawing/index.ts';
import { outline, rect } from '../../../support/builders.ts';
import { Hand, ringAt, xy, yardOf } from '../../../support/drawing.ts';

const plan: Picture = {
  id: 'plan',
  name: 'Plan',
  imageHash: '00',
  mediaType: 'image/png',
  widthPx: 800,
  heightPx: 600,
  attribution: '',
  cornerSigmaM: null,
  scaleSigma: null,
  placement: { kind: 'unscaled' },
};
const none = { xPx: Number.NaN, yPx: Number.NaN };
const take = { kind: 'take', tool: { kind: 'scale-picture', pictureId: 'plan' } } as const;

describe('scaling a picture', () => {
  test('two clicks and a length make that length true on the picture', () => {
    const hand = new Hand(yardOf({ pictures: [plan] })).do(take).click([-10, 0], [10, 0]).type('40');
    const scaled = hand.yard.pictures[0];
    if (scaled?.placement.kind !== 'scaled') throw new Error('not scaled');
    const { lengths, corners } = scaled.placement;
    const { fromPx, toPx, lengthM } = lengths[0] ?? { fromPx: none, toPx: none, lengthM: Number.NaN };
    expect(lengthM).toBe(40); // as typed
    // 20 m as shown became 40 m: the picture is twice as wide as it was shown.
    const [northWest, northEast] = pictureCorners(plan);
    expect(distanceM(corners[0], corners[1])).toBeCloseTo(2 * distanceM(northWest, northEast), 9);
    // 800 px shown 40 m wide round the origin: 10 m west is pixel 200, the middle row is 300.
    expect(fromPx.xPx).toBeCloseTo(200, 9);
    expect(toPx.xPx).toBeCloseTo(600, 9);
    expect(fromPx.yPx).toBeCloseTo(300, 9);
    expect(hand.labels).toEqual(['scale Plan']);
  });

  test('scaled again, what was traced over it keeps its place on it, what lies elsewhere stays', () => {
    const corners = pictureCorners(plan);
    const once: Picture = {
      ...plan,
      placement: {
        kind: 'scaled',
        lengths: [{ fromPx: { xPx: 0, yPx: 0 }, toPx: { xPx: 800, yPx: 0 }, lengthM: 40 }],
        corners,
      },
    };
    const over = outline('bed', 'over', rect(0, 0, 2, 2));
    const elsewhere = outline('zone', 'elsewhere', rect(100, 100, 2, 2));
    const tap = { id: 'tap', kind: 'spigot', name: 'Tap', at: { xM: 4, yM: 0 } } as const;
    const yard = yardOf({ pictures: [once], outlines: [over, elsewhere], marks: [tap] });
    const hand = new Hand(yard).do(take).click([0, 0], [10, 0]).type('5');
    expect(xy(ringAt(hand.yard, 0))).toEqual([
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ]); // half, about (0, 0)
    expect(xy(ringAt(hand.yard, 1))).toEqual(xy(tracedRing(elsewhere.outer)));
    expect(hand.yard.marks[0]?.at).toEqual({ xM: 2, yM: 0 }); // half of 4
  });

  test('scaled for the first time, it takes nothing with it: what lies there was drawn to its own lengths', () => {
    const under = outline('bed', 'under', rect(0, 0, 2, 2));
    const yard = yardOf({ pictures: [plan], outlines: [under] });
    const hand = new Hand(yard).do(take).click([0, 0], [10, 0]).type('5');
    expect(hand.yard.pictures[0]?.placement.kind).toBe('scaled');
    expect(hand.yard.outlines[0]).toBe(under);
  });

  test('nothing is traced or placed while a picture has no scale, and the picture is named', () => {
    for (const tool of [
      { kind: 'trace', outlineKind: 'zone' },
      { kind: 'place-mark', markKind: 'spigot' },
    ] as const) {
      const hand = new Hand(yardOf({ pictures: [plan] }))
        .do({ kind: 'take', tool })
        .click([0, 0], [5, 0], [5, 5]);
      expect(hand.labels).toEqual([]);
      hand.do({ kind: 'take', tool });
      expect(hand.state).toMatchObject({
        kind: 'select',
        problem: { kind: 'value/no-scale', where: { field: 'Plan' } },
      });
    }
  });

  test('Backspace takes back one end at a time; Escape begins again, then puts the tool down', () => {
    const hand = new Hand(yardOf({ pictures: [plan] }))
      .do(take)
      .click([-10, 0], [10, 0])
      .do({ kind: 'back' });
    expect(hand.state).toMatchObject({ from: { xM: -10 }, to: null });
    hand.do({ kind: 'escape' });
    expect(hand.state).toMatchObject({ kind: 'scale-picture', from: null });
    hand.do({ kind: 'escape' });
    expect(hand.state.kind).toBe('select');
  });

  test('a length before both ends, and a length of nothing, are said and scale nothing', () => {
    const hand = new Hand(yardOf({ pictures: [plan] })).do(take).type('40');
    expect(hand.state.problem?.kind).toBe('value/missing');
    hand.click([-10, 0], [10, 0]).type('0');
    expect(hand.state.problem).not.toBeNull();
    expect(hand.labels).toEqual([]);
  });

  test('a picture that knows where it is is not scaled by hand', () => {
    const corners = pictureCorners(plan);
    const placed: Picture = { ...plan, placement: { kind: 'georeferenced', crs: 'EPSG:26913', corners } };
    const hand = new Hand(yardOf({ pictures: [placed] })).do(take).click([-10, 0], [10, 0]).type('40');
    expect(hand.state.kind).toBe('select');
    expect(hand.labels).toEqual([]);
  });
});
