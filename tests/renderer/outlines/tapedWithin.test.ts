import { expect, test } from 'vitest';
import { FOOT_M } from '../../../core/units/index.ts';
import {
  placingSigmaM,
  readWithin,
  USUAL_WITHIN,
  withinNote,
} from '../../../renderer/outlines/tapedWithin.ts';
import { expectNear } from '../../support/expectNear.ts';
import { given, kindsOf } from '../../support/taped.ts';

test('how well corners were taped is read in the person’s units; nothing typed leaves it to the yard', () => {
  expectNear(given(readWithin('0.15', 'us')) ?? Number.NaN, 0.15 * FOOT_M, 1e-12, 'm'); // as typed
  expectNear(given(readWithin('3 cm', 'metric')) ?? Number.NaN, 0.03, 1e-12, 'm'); // as typed
  expect(given(readWithin(' ', 'us'))).toBeNull();
  expect(kindsOf(readWithin('well', 'us'))).toEqual(['value/not-a-number']);
});

test('the usual figure is marked as such, another is the person’s own', () => {
  expect(withinNote(USUAL_WITHIN.us, 'us')).toContain('not yours');
  expect(withinNote('0.3', 'us')).toBe('one standard deviation');
  expect(withinNote('', 'us')).toBe('as the yard says');
});

test('the larger of what is stated and what the misclosure shows is kept', () => {
  expect(placingSigmaM(0.05, 0.2)).toBe(0.2); // the misclosure's
  expect(placingSigmaM(0.05, 0)).toBe(0.05); // the person's
  expect(placingSigmaM(null, 0.2)).toBe(0.2);
  expect(placingSigmaM(null, 0)).toBeNull(); // nobody says
});
