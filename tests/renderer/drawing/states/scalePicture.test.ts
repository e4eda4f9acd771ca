import { tracedRing } from '../../../../core/curves/index.ts';
import { describe, expect, test } from 'vitest';
import type { Picture } from '../../../../core/yard.ts';
import { distanceM } from '../../../../core/kernel/index.ts';
import { pictureCorners, rescaleEdit } from '../../../../renderer/drawing/index.ts';
import { applyEdit, inverseOf } from '../../../../core/edits/index.ts';
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
    const known = { fromPx: { xPx: 0, yPx: 0 }, toPx: { xPx: 800, yPx: 0 }, lengthM: 40 };
    const once: Picture = { ...plan, placement: { kind: 'scaled', lengths: [known], corners } };
    const over = outline('bed', 'over', rect(0, 0, 2, 2));
    const elsewhere = outline('zone', 'elsewhere', rect(100, 100, 2, 2));
    const tap = { id: 'tap', kind: 'spigot', name: 'Tap', at: { xM: 4, yM: 0 } } as const;
    const taped = {
      ...outline('bed', 'taped', rect(5, 5, 2, 2)),
      placing: { by: 'tape', pictureId: null, sigmaM: null } as const,
    };
    const check = { id: 'c', name: 'Diagonal', from: { xM: 2, yM: 4 }, to: { xM: 100, yM: 0 }, tapedM: 98 };
    const yard = {
      ...yardOf({ pictures: [once], outlines: [over, elsewhere, taped], marks: [tap] }),
      checks: [check],
    };
    const half = rescaleEdit(yard, once, [{ ...known, lengthM: 20 }], 'scale Plan');
    if (!half.ok) throw new Error('not scaled');
    const hand = { yard: applyEdit(yard, half.value) };
    expect(xy(ringAt(hand.yard, 0))).toEqual([
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ]); // half, about (0, 0)
    expect(xy(ringAt(hand.yard, 1))).toEqual(xy(tracedRing(elsewhere.outer)));
    expect(hand.yard.outlines[2]).toBe(taped); // drawn to its own lengths
    expect(hand.yard.marks[0]?.at).toEqual({ xM: 2, yM: 0 }); // half of 4
    // Half of (2, 4); the other end lies beyond the picture.
    expect(hand.yard.checks[0]).toEqual({ ...check, from: { xM: 1, yM: 2 } });
    expect(applyEdit(hand.yard, inverseOf(half.value))).toEqual(yard);
  });

  test('a second length joins the first: the scale is that of both, by least squares, and one undo takes it back', () => {
    const before = new Hand(yardOf({ pictures: [plan] })).do(take).click([-10, 0], [10, 0]).type('40');
    const once = before.yard;
    // The picture is now 80 m wide: 20 m east of the middle is pixel 600.
    before.do(take).click([0, 0], [20, 0]).type('21');
    const twice = before.yard.pictures[0];
    if (twice?.placement.kind !== 'scaled') throw new Error('not scaled');
    expect(twice.placement.lengths.map(({ lengthM }) => lengthM)).toEqual([40, 21]); // as typed
    // 400 px are 40 m and 200 px are 21 m: (40 × 400 + 21 × 200) / (400² + 200²) = 0.101 m a pixel
    expect(distanceM(twice.placement.corners[0], twice.placement.corners[1])).toBeCloseTo(80.8, 9); // 800 × 0.101
    const last = before.edits[before.edits.length - 1];
    if (last === undefined) throw new Error('no edit');
    expect(applyEdit(before.yard, inverseOf(last))).toEqual(once);
    expect(before.state.problem).toBeNull(); // 5 % apart, which is not wild
  });

  test('a length that disagrees wildly is taken, and said with what the others make it', () => {
    const hand = new Hand(yardOf({ pictures: [plan] })).do(take).click([-10, 0], [10, 0]).type('40');
    hand.do(take).click([0, 0], [20, 0]).type('30');
    expect(hand.labels).toHaveLength(2); // two lengths, two edits
    expect(hand.state.problem).toMatchObject({
      kind: 'value/lengths-disagree',
      where: { field: 'Plan' },
      facts: { lengthM: 30 }, // as typed; the first makes it 20 m
    });
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
