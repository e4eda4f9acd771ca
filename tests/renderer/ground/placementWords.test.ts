import { expect, test } from 'vitest';
import type { KnownLength, Picture, PictureCorners } from '../../../core/yard.ts';
import { placementWords } from '../../../renderer/ground/placementWords.ts';

const corners: PictureCorners = [
  { xM: 0, yM: 30 },
  { xM: 40, yM: 30 },
  { xM: 40, yM: 0 },
  { xM: 0, yM: 0 },
];
const length: KnownLength = { fromPx: { xPx: 0, yPx: 0 }, toPx: { xPx: 400, yPx: 0 }, lengthM: 20 };
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

test('a picture says how it lies, and how sure its scale is', () => {
  expect(placementWords(plan, 'metric')).toBe('no scale yet: nothing over it has an area');
  const scaled = (...lengths: readonly KnownLength[]): Picture => ({
    ...plan,
    placement: { kind: 'scaled', lengths, corners },
  });
  // √(2 × 0.05² + 0.01²) / 20 = 0.36 %, of two equal ones 1/√2 of it
  expect(placementWords(scaled(length), 'metric')).toBe('scaled by a length of 20.00 m, ± 0.36%');
  expect(placementWords(scaled(length, length), 'us')).toBe('scaled by 2 lengths, ± 0.25%');
  const placed: Picture = { ...plan, placement: { kind: 'georeferenced', crs: 'EPSG:32616', corners } };
  expect(placementWords(placed, 'us')).toBe('knows where it is, EPSG:32616');
});
