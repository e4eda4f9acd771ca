import { expect, test } from 'vitest';
import { tapeSigmaM } from '../../../core/fieldCheck/index.ts';
import { expectNear } from '../../support/expectNear.ts';

test('a taped distance is as sure as its two ends, and a little less so the longer it is', () => {
  expectNear(tapeSigmaM(0), 0.01, 1e-12, 'm'); // the stated 10 mm, common practice without a source
  expectNear(tapeSigmaM(30), 0.013, 1e-12, 'm'); // by hand: 10 mm and three times 1 mm
  expect(tapeSigmaM(20)).toBeGreaterThan(tapeSigmaM(10));
});
