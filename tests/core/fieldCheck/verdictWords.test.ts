import { expect, test } from 'vitest';
import { verdictWords } from '../../../core/fieldCheck/index.ts';

test('a verdict is said in words, an end that was moved before all else', () => {
  expect(verdictWords({ verdict: 'inside', endsFound: true })).toBe('inside');
  expect(verdictWords({ verdict: 'outside', endsFound: true })).toBe('outside');
  expect(verdictWords({ verdict: 'not-stated', endsFound: true })).toBe('no ± stated');
  expect(verdictWords({ verdict: 'inside', endsFound: false })).toBe('an end was moved');
});
