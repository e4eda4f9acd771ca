import { expect, test } from 'vitest';
import {
  byKind,
  type Check,
  finite,
  listOf,
  matching,
  oneOf,
  orNull,
  record,
  text,
  whole,
} from '../../../core/yardFile/shape.ts';

const colour = byKind({
  grey: record({ kind: text, level: finite }),
  named: record({ kind: text, name: text }),
});

test.each<[string, Check, unknown, string | null]>([
  ['text', text, '', null],
  ['text', text, 5, 'is not text'],
  ['a number', finite, -0.5, null],
  ['a number', finite, Number.NaN, 'is not a finite number'],
  ['a number', finite, '5', 'is not a finite number'],
  ['a whole number', whole, 2 ** 53, 'is not a whole number'],
  ['a choice', oneOf(['a', 'b']), 'c', 'is none of a, b'],
  ['a pattern', matching(/^x+$/, 'some x'), 'xyx', 'is not some x'],
  ['a pattern', matching(/^x+$/, 'some x'), ['xx'], 'is not some x'],
  ['an optional', orNull(text), null, null],
  ['an optional', orNull(text), undefined, 'is not text'],
  ['a list', listOf(whole), [1, 2.5], 'entry 2 is not a whole number'],
  ['a list', listOf(whole), { length: 0 }, 'is not a list'],
  ['a list of two', listOf(whole, 2), [1], 'does not have 2 entries'],
  ['a record', record({ a: text }), { a: '' }, null],
  ['a record', record({ a: text }), {}, 'has no a'],
  ['a record', record({ toString: text }), {}, 'has no toString'],
  ['a record', record({ a: text }), { a: '', b: 1 }, 'has an unknown b'],
  ['a record', record({}), [], 'is not a record'],
  ['one of several', colour, { kind: 'grey', level: 1 }, null],
  ['one of several', colour, { kind: 'grey', name: 'x' }, 'has no level'],
  ['one of several', colour, { kind: 'constructor' }, 'is none of grey, named'],
  ['one of several', colour, null, 'is none of grey, named'],
])('%s', (_what, check, value, answer) => {
  expect(check(value)).toBe(answer);
});
