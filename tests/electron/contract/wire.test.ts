import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Defect } from '../../../core/result.ts';
import { decodeWire, encodeWire } from '../../../electron/contract/wire.ts';

const leaf = fc.oneof(
  fc.constant(null),
  fc.boolean(),
  fc.string({ unit: 'binary' }).filter((text) => !/\p{Surrogate}/u.test(text)),
  fc.double(),
  fc.constantFrom(-0, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 2 ** 53, 5e-324),
  fc.uint8Array({ maxLength: 40 }),
);
const name = fc.oneof(
  fc.constantFrom('$bytes', '$number', '$', '$$bytes', '0', '10', 'constructor', 'toString', 'then'),
  fc.string().filter((text) => text !== '__proto__'),
);
const { tree } = fc.letrec((tie) => ({
  tree: fc.oneof(
    { maxDepth: 6 },
    leaf,
    fc.array(tie('tree'), { maxLength: 5 }),
    fc
      .array(fc.tuple(name, tie('tree')), { maxLength: 5 })
      .map((members) => Object.fromEntries(members) as unknown),
  ),
}));

describe('what is sent is what arrives', () => {
  test('for any plain data with bytes in it, every number bit for bit', () => {
    fc.assert(
      fc.property(tree, (value) => {
        const decoded = decodeWire(encodeWire(value));
        // The law: decode undoes encode. Node's comparison, because a member may be called "constructor".
        expect(isDeepStrictEqual(decoded, { ok: true, value })).toBe(true);
      }),
      { seed: 20261125, numRuns: 2_000 },
    );
  });

  test('members that are undefined are left out, as the other carrier and JSON do', () => {
    expect(decodeWire(encodeWire({ a: undefined, b: 1 }))).toEqual({ ok: true, value: { b: 1 } }); // the law above
  });

  test('bytes that lie inside a larger buffer arrive alone', () => {
    const inside = new Uint8Array([9, 8, 7, 6, 5]).subarray(1, 3);
    const decoded = decodeWire(encodeWire({ inside }));
    expect(decoded).toEqual({ ok: true, value: { inside: new Uint8Array([8, 7]) } }); // bytes 1 and 2 of the five
  });
});

describe('what is not plain data is our own mistake', () => {
  test.each([
    ['a date', new Date(0)],
    ['a map', new Map()],
    ['a function', () => 1],
    ['a hole in a list', [undefined]],
    ['a member named __proto__', JSON.parse('{"__proto__": 1}')],
  ])('%s throws a Defect', (_name, value) => {
    expect(() => encodeWire(value)).toThrow(Defect);
  });
});

/** JSON text in the wire's frame, with bytes behind it. */
function framed(json: string, blobs: readonly number[] = [], length = new TextEncoder().encode(json).length) {
  const body = [...new TextEncoder().encode(json), ...blobs];
  const whole = new Uint8Array(4 + body.length);
  new DataView(whole.buffer).setUint32(0, length, true);
  whole.set(body, 4);
  return whole;
}

describe('what none of ours would send is refused', () => {
  test.each([
    ['nothing at all', new Uint8Array()],
    ['half a length', new Uint8Array([1, 0])],
    ['a length past the end', framed('{}', [], 3)],
    ['the greatest length', framed('{}', [], 0xffff_ffff)],
    ['JSON that is cut off', framed('{"a":')],
    ['text that is not UTF-8', new Uint8Array([1, 0, 0, 0, 0xff])],
    ['a prototype set by name', framed('{"__proto__": {"isAdmin": true}}')],
    ['a prototype set by name, deeper', framed('[{"a": {"__proto__": null}}]')],
    ['a marker that is none of ours', framed('{"$other": 1}')],
    ['a marker among other members', framed('{"$bytes": 1, "a": 2}', [1])],
    ['more bytes than there are', framed('{"$bytes": 2}', [1])],
    ['the same bytes asked for twice', framed('[{"$bytes": 1}, {"$bytes": 1}]', [1])],
    ['bytes nobody asked for', framed('{}', [1])],
    ['a negative count', framed('{"$bytes": -1}')],
    ['a count that is no whole number', framed('{"$bytes": 0.5}', [1])],
    ['a count that is text', framed('{"$bytes": "1"}', [1])],
    ['a number that is none of the four', framed('{"$number": "1e999"}')],
    ['lists nested a hundred thousand deep', framed('['.repeat(100_000) + ']'.repeat(100_000))],
  ])('%s', (_name, bytes) => {
    expect(decodeWire(bytes)).toEqual({ ok: false }); // the one answer to a stranger
  });

  test('no object that is read has gained a prototype of the sender’s', () => {
    expect(({} as { isAdmin?: boolean }).isAdmin).toBeUndefined();
    const decoded = decodeWire(framed('{"constructor": {"prototype": {"isAdmin": true}}}'));
    expect(decoded.ok).toBe(true);
    expect(({} as { isAdmin?: boolean }).isAdmin).toBeUndefined();
  });

  test('any bytes at all are read or refused, never thrown at', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(typeof decodeWire(bytes).ok).toBe('boolean'); // the law: it always answers
      }),
      { seed: 20261125, numRuns: 5_000 },
    );
  });
});
