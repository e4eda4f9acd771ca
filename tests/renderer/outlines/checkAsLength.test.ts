import { expect, test } from 'vitest';
import { applyEdit, inverseOf } from '../../../core/edits/index.ts';
import { fieldCheck } from '../../../core/fieldCheck/index.ts';
import type { Picture, Yard } from '../../../core/yard.ts';
import { checkAsLength } from '../../../renderer/outlines/checkAsLength.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';
import { given } from '../../support/taped.ts';

/** 1,000 pixels, by one length of 500 px that was said to be 50 m: a decimetre a pixel. */
const picture: Picture = {
  id: 'p',
  name: 'Plan',
  imageHash: '0'.repeat(64),
  mediaType: 'image/png',
  widthPx: 1000,
  heightPx: 1000,
  placement: {
    kind: 'scaled',
    lengths: [{ fromPx: { xPx: 0, yPx: 0 }, toPx: { xPx: 500, yPx: 0 }, lengthM: 50 }],
    corners: [
      { xM: -50, yM: 50 },
      { xM: 50, yM: 50 },
      { xM: 50, yM: -50 },
      { xM: -50, yM: -50 },
    ],
  },
  attribution: '',
  cornerSigmaM: null,
  scaleSigma: null,
};
const lawn = outline('zone', 'Lawn', rect(-25, -20, 50, 40));
const side = { id: 's', name: 'side', from: { xM: -25, yM: -20 }, to: { xM: 25, yM: -20 }, tapedM: 51 };
const other = { id: 'o', name: 'other', from: { xM: -25, yM: -20 }, to: { xM: -25, yM: 20 }, tapedM: 40.8 };
const yard: Yard = {
  ...yardOf({
    outlines: [{ ...lawn, placing: { by: 'picture', pictureId: 'p', sigmaM: null } }],
    pictures: [picture],
  }),
  checks: [side, other],
};

test('a taped distance becomes a known length: the lawn takes the scale of both, other checks go along', () => {
  const after = applyEdit(yard, given(checkAsLength(yard, picture, side)));
  expect(after.checks.map(({ id }) => id)).toEqual(['o']); // it is a check no longer
  const { placement } = after.pictures[0] as Picture;
  expect(placement.kind === 'scaled' ? placement.lengths.map(({ lengthM }) => lengthM) : null).toEqual([
    50, 51,
  ]);
  // least squares of 50 m and 51 m over 500 px each: 0.101 m a pixel, so 40 m on the map are 40.4 m
  expectNear(fieldCheck(after, after.checks[0] as typeof other).mapM, 40.4, 1e-9, 'm');
});

test('it is one edit, and undone as one', () => {
  const edit = given(checkAsLength(yard, picture, side));
  expect(edit.label).toBe('scale Plan by side');
  expect(applyEdit(applyEdit(yard, edit), inverseOf(edit))).toEqual(yard);
});
