import { expect, test } from 'vitest';
import { Defect, ok, trouble } from '../../core/result.ts';

const CLOSED = { kind: 'host/unknown-yard', where: {}, facts: {} } as const;
const GONE = { kind: 'host/unreachable', where: {}, facts: {} } as const;

test('a success holds its value, also one that is empty', () => {
  expect(ok(null)).toEqual({ ok: true, value: null }); // as given
});

test('a failure holds its problems in the order given, at least one', () => {
  expect(trouble(CLOSED).problems).toEqual([CLOSED]); // as given
  expect(trouble(CLOSED, GONE)).toEqual({ ok: false, problems: [CLOSED, GONE] }); // as given
});

test('a Defect is an error by its own name, with its words', () => {
  const defect = new Defect('a yard always has its details');
  expect(defect).toBeInstanceOf(Error);
  expect(String(defect)).toBe('Defect: a yard always has its details'); // ECMA-262, Error.prototype.toString
});
