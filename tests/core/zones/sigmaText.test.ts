import { expect, test } from 'vitest';
import { sigmaTable, sigmaWords, type SigmaWorking, tightenWords } from '../../../core/zones/index.ts';
import { SQUARE_FOOT_M2 } from '../../../core/units/index.ts';

const M2 = SQUARE_FOOT_M2;
const SIGMA: SigmaWorking = {
  parts: [
    { kind: 'scale', pictureName: 'plan.png', sigma: 0.0052, makesM2: 20 * M2, share: 0.8 },
    {
      kind: 'points',
      name: 'Back lawn',
      points: 6,
      sigmaM: 0.0762,
      by: 'pixel',
      pictureName: 'plan.png',
      makesM2: 10 * M2,
      share: 0.2,
    },
  ],
  sharedPoints: 1,
  sigmaM2: 22.4 * M2,
  unstated: [],
  unstatedScales: ['aerial.tif'],
  tightener: {
    kind: 'scale',
    pictureName: 'plan.png',
    isByLengths: true,
    share: 0.8,
    sigmaWithoutM2: 10 * M2,
  },
};

test('the table is in the person’s units', () => {
  expect(sigmaTable(SIGMA, 'us')).toEqual([
    ['± from', 'points', 'each ±', 'makes ± ft²', 'of its square'],
    ['scale of plan.png', '', '0.52%', '20.00', '80%'], // 0.0052
    ['Back lawn, one pixel of plan.png', '6', '0.25 ft', '10.00', '20%'], // 0.0762 m / 0.3048
    ['together', '', '', '22.40', ''],
  ]);
});

test('what the ± leaves out is said', () => {
  const words = sigmaWords(SIGMA, 'us').join('\n');
  expect(words).toContain('1 point stands on more than one outline and counts once');
  expect(words).toContain('shown ± 22 ft²'); // 22.4
  expect(words).toContain('the scale of aerial.tif has no ± of its own stated');
});

test('every point of a curve has its words', () => {
  const lineOf = (
    point: Extract<NonNullable<SigmaWorking['tightener']>, { kind: 'point' }>['point'],
    ring = 0,
  ) =>
    tightenWords(
      { kind: 'point', outlineId: 'l', name: 'Lawn', ring, point, share: 0.414, sigmaWithoutM2: 12 * M2 },
      'us',
    );
  const place = { xM: 0, yM: 0 };
  expect(lineOf({ kind: 'corner', at: 2, place })).toBe(
    'Corner 3 of Lawn makes 41% of this ±: measured exactly it would be ± 12 ft².',
  );
  expect(lineOf({ kind: 'via', of: 0, place }, 1)).toContain(
    'The arc after corner 1 of hole 1 of Lawn makes',
  );
  expect(lineOf({ kind: 'rim', place })).toContain('The radius of Lawn');
  expect(lineOf({ kind: 'width-end', place })).toContain('The width of Lawn');
  expect(tightenWords(SIGMA.tightener as NonNullable<SigmaWorking['tightener']>, 'us')).toBe(
    'The scale of plan.png makes 80% of this ±: longer known lengths that agree would help. Known exactly it would be ± 10 ft².',
  );
  const stated = { ...(SIGMA.tightener as NonNullable<SigmaWorking['tightener']>), isByLengths: false };
  expect(tightenWords(stated, 'us')).toBe(
    'The scale of plan.png makes 80% of this ±: known exactly it would be ± 10 ft².',
  );
});
