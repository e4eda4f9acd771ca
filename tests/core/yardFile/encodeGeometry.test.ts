import fc from 'fast-check';
import { expect, test } from 'vitest';
import wkx from 'wkx';
import { encodePoint, encodePolygon, withSrsId } from '../../../core/yardFile/index.ts';
import { point } from '../../support/storedYards.ts';

const TRIANGLE = [point(0, 0), point(2, 0), point(0, 1)];

function hex(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('hex');
}

test('a point is the bytes the standard describes', () => {
  // Worked by hand from OGC 12-128r17 clause 2.1.3 and OGC 06-103r4 clause 8: 'GP', version 0, flags 1
  // (little-endian, no envelope), srs_id -1; WKB little-endian, type 1, x 1.0, y -2.0.
  const expected = ['4750', '00', '01', 'ffffffff', '01', '01000000', '000000000000f03f', '00000000000000c0'];
  expect(hex(encodePoint(point(1, -2), -1))).toBe(expected.join(''));
});

test('a triangle is the bytes the standard describes: envelope, one ring, closed', () => {
  // Worked by hand from the same clauses: flags 3 (little-endian, XY envelope), srs_id 100000 = 0x000186a0;
  // envelope minx 0 maxx 2 miny 0 maxy 1; WKB type 3, one ring of four points.
  const [zero, one, two] = ['0000000000000000', '000000000000f03f', '0000000000000040'];
  const header = ['4750', '00', '03', 'a0860100', zero, two, zero, one];
  const ring = ['01000000', '04000000', zero, zero, two, zero, zero, one, zero, zero];
  expect(hex(encodePolygon({ outer: TRIANGLE, holes: [] }, 100_000))).toBe(
    [...header, '01', '03000000', ...ring].join(''),
  );
});

test('an outline without a point is an empty polygon and says so', () => {
  // Flags 0x11: bits B (little-endian) and Y (empty) of OGC 12-128r17 clause 2.1.3, no envelope; no rings.
  expect(hex(encodePolygon({ outer: [], holes: [] }, 0))).toBe(`475000110000000001030000000${'0'.repeat(7)}`);
});

test('wkx reads what we write, point for point', () => {
  const coordinate = fc.double({ noNaN: true, noDefaultInfinity: true });
  const ring = fc.array(fc.record({ xM: coordinate, yM: coordinate }), { minLength: 3, maxLength: 20 });
  fc.assert(
    fc.property(ring, fc.array(ring, { maxLength: 3 }), (outer, holes) => {
      const bytes = encodePolygon({ outer, holes }, 100_000);
      const read = wkx.Geometry.parse(Buffer.from(bytes.subarray(8 + 32))).toGeoJSON() as {
        coordinates: number[][][];
      };
      const closed = [outer, ...holes].map((open) =>
        [...open, open[0] ?? point(0, 0)].map(({ xM, yM }) => [xM, yM]),
      );
      expect(read.coordinates).toStrictEqual(closed);
    }),
    { seed: 20261125 },
  );
});

test('the same geometry under another srs_id differs in nothing else', () => {
  const bytes = encodePolygon({ outer: TRIANGLE, holes: [] }, -1);
  expect(hex(withSrsId(bytes, 100_000))).toBe(hex(encodePolygon({ outer: TRIANGLE, holes: [] }, 100_000)));
  expect(hex(bytes)).toBe(hex(encodePolygon({ outer: TRIANGLE, holes: [] }, -1)));
});

test('the srs_id of a big-endian geometry is written big-endian', () => {
  expect(hex(withSrsId(Buffer.from('47500000000000000000000001', 'hex'), 1))).toBe(
    '47500000000000010000000001',
  );
});

test('bytes too short for an srs_id come back as they are', () => {
  expect(hex(withSrsId(Uint8Array.of(1, 2, 3), 7))).toBe('010203');
});
