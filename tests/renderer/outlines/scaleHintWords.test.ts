import { expect, test } from 'vitest';
import type { ScaleHint } from '../../../core/fieldCheck/index.ts';
import { scaleHintWords } from '../../../renderer/outlines/scaleHintWords.ts';

const hint: ScaleHint = {
  checks: 3,
  ratio: 1.018,
  ratioSigma: 0.004,
  oneWay: true,
  isOff: true,
  fits: true,
  areaShare: 0.036324, // 1.018² − 1
};

test('a map that is too small says so, and by how much its areas are', () => {
  const words = scaleHintWords(hint);
  expect(words).toContain('Every one of 3 taped distances is longer than the map'); // as put in
  expect(words).toContain('1.8% longer (± 0.4%)'); // 1.018 and 0.004 in percent
  expect(words).toContain('true areas would be 3.6% larger'); // 1.018² − 1 in percent
});

test('a map that is too large says it the other way round', () => {
  const words = scaleHintWords({ ...hint, ratio: 0.99, areaShare: -0.0199 });
  expect(words).toContain('1.0% shorter'); // 0.99 − 1
  expect(words).toContain('2.0% smaller'); // 0.99² − 1 = −0.0199
});

test('distances that disagree among themselves are laid to no scale', () => {
  expect(scaleHintWords({ ...hint, fits: false })).toContain('look for a misread tape');
});

test('nothing is claimed where the tapes do not show it', () => {
  expect(scaleHintWords({ ...hint, oneWay: false, isOff: false })).toContain('no sign that the scale is off');
  expect(scaleHintWords({ ...hint, isOff: null, fits: null, ratioSigma: null })).toContain(
    'No accuracy is stated',
  );
});
