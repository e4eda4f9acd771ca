import { expect, test } from 'vitest';
import { parseIsoDate } from '../../../renderer/ground/parseIsoDate.ts';

test('a day that is in the calendar is taken', () => {
  expect(parseIsoDate(' 2028-02-29 ')).toEqual({ ok: true, value: '2028-02-29' });
});

test.each(['2026-02-29', '2026-13-01', '12.5.2026', '2026-5-12', ''])(
  '%s is no day and is refused',
  (typed) => {
    expect(parseIsoDate(typed)).toMatchObject({ ok: false, problems: [{ kind: 'value/not-a-date' }] });
  },
);
