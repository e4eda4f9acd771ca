import { expect, test } from 'vitest';
import { cancelled, thingOf } from '../../../core/plan/cancelled.ts';
import { rect, region } from '../../support/builders.ts';
import { resolvedOf } from '../../support/randomGround.ts';

test('a cancelled plan names its zones; ground without zones is the yard', () => {
  const yard = resolvedOf({ Front: [region(rect(0, 0, 5, 5))], Back: [region(rect(9, 0, 5, 5))] });
  expect(cancelled(yard)).toEqual({ kind: 'plan/cancelled', where: { thing: 'Front, Back' }, facts: {} });
  expect(thingOf(resolvedOf({}))).toBe('The yard');
});
