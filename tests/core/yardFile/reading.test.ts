import { expect, test } from 'vitest';
import { readAs, unreadable } from '../../../core/yardFile/index.ts';

test('a reading is the value or what is wrong, never both', () => {
  expect(readAs(0)).toStrictEqual({ ok: true, value: 0 });
  expect(unreadable('torn')).toStrictEqual({ ok: false, detail: 'torn' });
});
