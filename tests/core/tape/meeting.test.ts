import { expect, test } from 'vitest';
import { meeting } from '../../../core/tape/meeting.ts';
import { expectNear } from '../../support/expectNear.ts';
import { kindsOf, given } from '../../support/taped.ts';

test('lengths of 50 and 30 over a base of 40 meet at (40, 30)', () => {
  const { alongM, leftM } = given(meeting('it', 40, 50, 30));
  expectNear(alongM, 40, 1e-12, 'm'); // closed form: x = (d1² − d2² + b²) / 2b
  expectNear(leftM, 30, 1e-12, 'm'); // closed form: y = √(d1² − x²)
});

test('a very flat meeting keeps its digits', () => {
  // closed form: two equal tapes h = √(1 + y²) over a base of 2 meet at height y = 1e-6
  const h = Math.sqrt(1 + 1e-12);
  expectNear(given(meeting('it', 2, h, h)).leftM, 1e-6, 1e-10, 'm');
});

test('lengths that cannot meet are refused, and so are lengths that only meet on the base', () => {
  expect(kindsOf(meeting('it', 40, 10, 20))).toEqual(['value/tapes-do-not-meet']);
  expect(kindsOf(meeting('it', 10, 40, 20))).toEqual(['value/tapes-do-not-meet']);
  expect(kindsOf(meeting('it', 30, 10, 20))).toEqual(['value/tapes-do-not-meet']);
});
