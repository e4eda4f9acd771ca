import { expect, test } from 'vitest';
import type { Picture } from '../../../core/yard.ts';
import { placingOver } from '../../../renderer/drawing/placingOver.ts';
import { points, rect } from '../../support/builders.ts';

const picture = (id: string, west: number, east: number): Picture => {
  const [a, b, c, d] = points([west, 10], [east, 10], [east, -10], [west, -10]);
  if (!a || !b || !c || !d) throw new Error('four corners');
  return {
    id,
    name: `${id}.png`,
    imageHash: '',
    mediaType: 'image/png',
    widthPx: 100,
    heightPx: 100,
    placement: { kind: 'georeferenced', crs: 'EPSG:32613', corners: [a, b, c, d] },
    attribution: '',
    cornerSigmaM: null,
    scaleSigma: null,
  };
};

const pictures = [picture('below', -20, 20), picture('above', -20, 0)];

test('an outline is traced over the topmost picture that lies under all of it', () => {
  expect(placingOver(pictures, rect(-9, -5, 8, 8)).pictureId).toBe('above'); // within both
  expect(placingOver(pictures, rect(-5, -5, 8, 8)).pictureId).toBe('below'); // reaches past the upper one
});

test('what reaches past every picture, and what lies over one without a scale, is placed by hand', () => {
  const byHand = { by: 'hand', pictureId: null, sigmaM: null };
  expect(placingOver(pictures, rect(15, -5, 8, 8))).toEqual(byHand); // past the east edge
  const unscaled = pictures.map((row) => ({ ...row, placement: { kind: 'unscaled' as const } }));
  expect(placingOver(unscaled, rect(-9, -5, 8, 8))).toEqual(byHand); // nothing over it has a length
});
