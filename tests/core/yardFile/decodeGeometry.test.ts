import fc from 'fast-check';
import { expect, test } from 'vitest';
import wkx from 'wkx';
import {
  decodePoint,
  decodePolygon,
  encodePoint,
  encodePolygon,
  envelopeOf,
} from '../../../core/yardFile/index.ts';
import { point } from '../../support/storedYards.ts';

/** Every finite double, minus zero and the smallest ones among them. */
const coordinate = fc.double({ noNaN: true, noDefaultInfinity: true });
const anyPoint = fc.record({ xM: coordinate, yM: coordinate }, { noNullPrototype: true });
const ring = fc.array(anyPoint, { maxLength: 12 });

const SQUARE = [point(0, 0), point(4, 0), point(4, 4), point(0, 4)];

/** GeoPackage bytes around any WKB, by hand: little-endian header without envelope. */
function packed(wkb: Uint8Array): Uint8Array {
  return Uint8Array.from([0x47, 0x50, 0, 1, 0, 0, 0, 0, ...wkb]);
}

test('any polygon comes back bit for bit, also one that is not a sensible shape', () => {
  fc.assert(
    fc.property(ring, fc.array(ring, { maxLength: 3 }), (outer, holes) => {
      expect(decodePolygon(encodePolygon({ outer, holes }, -1))).toStrictEqual({
        ok: true,
        value: { outer, holes },
      });
    }),
    { numRuns: 500, seed: 20261125 },
  );
});

test('a ring drawn closed keeps its repeated point', () => {
  const outer = [...SQUARE, point(0, 0)];
  expect(decodePolygon(encodePolygon({ outer, holes: [] }, -1))).toMatchObject({ value: { outer } });
});

test('any point comes back bit for bit', () => {
  fc.assert(
    fc.property(anyPoint, (at) => {
      expect(decodePoint(encodePoint(at, 100_000))).toStrictEqual({ ok: true, value: at });
    }),
    { seed: 20261125 },
  );
});

test('bytes in the middle of a larger buffer are read from where they start', () => {
  const bytes = encodePoint(point(3, 4), -1);
  const larger = new Uint8Array(bytes.length + 20);
  larger.set(bytes, 11);
  expect(decodePoint(larger.subarray(11, 11 + bytes.length))).toStrictEqual({ ok: true, value: point(3, 4) });
});

test('polygons that wkx wrote are read, and big-endian ones', () => {
  const written = new wkx.Polygon(
    [...SQUARE, SQUARE[0] ?? point(0, 0)].map(({ xM, yM }) => new wkx.Point(xM, yM)),
  );
  expect(decodePolygon(packed(written.toWkb()))).toMatchObject({ value: { outer: SQUARE, holes: [] } });
  // Big-endian by hand: order 0, type 1, x 1.0, y 2.0, in a header that is big-endian too.
  const bigEndian = Buffer.from(
    '4750000000000000' + '0000000001' + '3ff0000000000000' + '4000000000000000',
    'hex',
  );
  expect(decodePoint(bigEndian)).toStrictEqual({ ok: true, value: point(1, 2) });
});

test.each([
  ['nothing', '', 'not a GeoPackage geometry'],
  ['text', '68656c6c6f20776f726c64', 'not a GeoPackage geometry'],
  ['a header alone', '4750000100000000', 'the geometry ends too soon'],
  ['an envelope cut short', `4750000300000000${'00'.repeat(20)}`, 'the geometry ends too soon'],
  [
    'an envelope of no known kind',
    `4750000b00000000${'00'.repeat(80)}`,
    'a GeoPackage geometry of an unknown form',
  ],
  [
    'a later version of the format',
    '4750010100000000' + '0103000000' + '00000000',
    'a GeoPackage geometry of an unknown form',
  ],
  [
    'an extended geometry',
    '4750002100000000' + '0103000000' + '00000000',
    'a GeoPackage geometry of an unknown form',
  ],
  ['a line', '4750000100000000' + '0102000000' + '00000000', 'geometry type 2 where 3 belongs'],
  ['several polygons', '4750000100000000' + '0106000000' + '00000000', 'geometry type 6 where 3 belongs'],
  [
    'a polygon with heights',
    '4750000100000000' + '01eb030000' + '00000000',
    'geometry type 1003 where 3 belongs',
  ],
  [
    'a byte order that is none',
    '4750000100000000' + '0203000000' + '00000000',
    'a geometry of an unknown byte order',
  ],
  [
    'four thousand million rings',
    '4750000100000000' + '0103000000' + 'ffffffff',
    'the geometry ends too soon',
  ],
  [
    'four thousand million points',
    '4750000100000000' + '0103000000' + '01000000ffffffff',
    'the geometry ends too soon',
  ],
  [
    'a ring of one point',
    `475000010000000001030000000100000001000000${'00'.repeat(16)}`,
    'a ring is not closed',
  ],
  [
    'a ring that does not close',
    `4750000100000000${'0103000000'}0100000002000000${'00'.repeat(16)}${'00'.repeat(8)}000000000000f03f`,
    'a ring is not closed',
  ],
  [
    'more bytes than it says',
    '4750000100000000' + '0103000000' + '0000000000',
    'there is more after the geometry',
  ],
])('%s is no polygon, and no crash', (_what, bytes, detail) => {
  expect(decodePolygon(Buffer.from(bytes, 'hex'))).toStrictEqual({ ok: false, detail });
});

test.each([
  ['7ff0000000000000', 'infinity'],
  ['fff0000000000000', 'minus infinity'],
  ['7ff8000000000000', 'not a number'],
])('a coordinate of %s (%s) is refused', (bits) => {
  const bytes = Buffer.from(`47500000000000000000000001${bits}${'0'.repeat(16)}`, 'hex');
  expect(decodePoint(bytes)).toStrictEqual({ ok: false, detail: 'a coordinate is not a finite number' });
});

test('a good geometry with any bytes changed, or cut anywhere, is read or refused but never thrown about', () => {
  const good = encodePolygon({ outer: SQUARE, holes: [[point(1, 1), point(1, 2), point(2, 2)]] }, -1);
  const spots = fc.array(fc.tuple(fc.nat({ max: good.length - 1 }), fc.nat({ max: 255 })), { maxLength: 6 });
  fc.assert(
    fc.property(spots, fc.nat({ max: good.length }), (changes, length) => {
      const bytes = Uint8Array.from(good);
      for (const [at, value] of changes) bytes[at] = value;
      const read = decodePolygon(bytes.subarray(0, length));
      envelopeOf(bytes.subarray(0, length));
      expect(read.ok === true || read.detail.length > 0).toBe(true);
      if (read.ok) {
        const all = [read.value.outer, ...read.value.holes].flat();
        expect(all.every(({ xM, yM }) => Number.isFinite(xM) && Number.isFinite(yM))).toBe(true);
      }
    }),
    { numRuns: 2_000, seed: 20261125 },
  );
});

test('the envelope is read from the header where there is one, and else from the points', () => {
  const region = { outer: SQUARE, holes: [] };
  const envelope = { minX: 0, maxX: 4, minY: 0, maxY: 4 }; // the square's sides
  const withHeader = encodePolygon(region, -1);
  expect(envelopeOf(withHeader)).toStrictEqual(envelope);
  expect(envelopeOf(packed(withHeader.subarray(8 + 32)))).toStrictEqual(envelope);
  expect(envelopeOf(encodePoint(point(3, -4), -1))).toStrictEqual({ minX: 3, maxX: 3, minY: -4, maxY: -4 });
  expect(envelopeOf(encodePolygon({ outer: [], holes: [] }, -1))).toBeNull();
  expect(envelopeOf(Uint8Array.of(1, 2, 3))).toBeNull();
});
