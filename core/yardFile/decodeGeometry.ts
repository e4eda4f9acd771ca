import type { Region, YardPoint } from '../spaces.ts';
import {
  FLAG_EMPTY,
  FLAG_LITTLE_ENDIAN,
  HEADER_BYTES,
  MAGIC_G,
  MAGIC_P,
  WKB_POINT,
  WKB_POLYGON,
} from './encodeGeometry.ts';
import { type Reading, readAs, unreadable } from './reading.ts';

/** Bytes of each envelope kind the standard knows: none, XY, XYZ, XYM, XYZM. */
const ENVELOPE_BYTES = [0, 32, 48, 48, 64];
const FLAG_EXTENDED = 0b10_0000;

export interface Envelope {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/**
 * A polygon out of GeoPackage binary of either byte order, with any envelope. The closing point of each ring
 * is dropped; nothing else is changed. Not read: Z or M values, curves, several parts.
 */
export function decodePolygon(bytes: Uint8Array): Reading<Region> {
  const wkb = openWkb(bytes, WKB_POLYGON);
  if (!wkb.ok) return wkb;
  const { view, littleEndian } = wkb.value;
  let at = wkb.value.at;
  if (view.byteLength < at + 4) return unreadable('the geometry ends too soon');
  const rings = view.getUint32(at, littleEndian);
  at += 4;
  const read: YardPoint[][] = [];
  for (let i = 0; i < rings; i += 1) {
    if (view.byteLength < at + 4) return unreadable('the geometry ends too soon');
    const count = view.getUint32(at, littleEndian);
    at += 4;
    // Before anything is set aside for it: a count from a hostile file may be four thousand million.
    if (count > (view.byteLength - at) / 16) return unreadable('the geometry ends too soon');
    const ring: YardPoint[] = [];
    for (let k = 0; k < count; k += 1, at += 16) {
      const point = pointAt(view, at, littleEndian);
      if (point === null) return unreadable('a coordinate is not a finite number');
      ring.push(point);
    }
    const [first, last] = [ring[0], ring[ring.length - 1]];
    if (first && last) {
      if (ring.length < 2 || !samePoint(first, last)) return unreadable('a ring is not closed');
      ring.pop();
    }
    read.push(ring);
  }
  if (at !== view.byteLength) return unreadable('there is more after the geometry');
  const [outer = [], ...holes] = read;
  return readAs({ outer, holes });
}

/** A point out of GeoPackage binary. POINT EMPTY (NaN coordinates) is not read: a mark is somewhere. */
export function decodePoint(bytes: Uint8Array): Reading<YardPoint> {
  const wkb = openWkb(bytes, WKB_POINT);
  if (!wkb.ok) return wkb;
  const { view, at, littleEndian } = wkb.value;
  if (view.byteLength !== at + 16) return unreadable('the geometry has the wrong length');
  const point = pointAt(view, at, littleEndian);
  return point === null ? unreadable('a coordinate is not a finite number') : readAs(point);
}

/** The extent of GeoPackage binary, from its header where it is stated; null when empty or not readable. */
export function envelopeOf(bytes: Uint8Array): Envelope | null {
  const header = openHeader(bytes);
  if (!header.ok || header.value.empty) return null;
  const { view, littleEndian, at } = header.value;
  if (at > HEADER_BYTES) {
    const [minX, maxX, minY, maxY] = [0, 8, 16, 24].map((offset) =>
      view.getFloat64(HEADER_BYTES + offset, littleEndian),
    ) as [number, number, number, number];
    return { minX, maxX, minY, maxY };
  }
  const point = decodePoint(bytes);
  if (point.ok)
    return { minX: point.value.xM, maxX: point.value.xM, minY: point.value.yM, maxY: point.value.yM };
  const polygon = decodePolygon(bytes);
  if (!polygon.ok || polygon.value.outer.length === 0) return null;
  const xs = polygon.value.outer.map((corner) => corner.xM);
  const ys = polygon.value.outer.map((corner) => corner.yM);
  const least = (values: number[]) => values.reduce((a, b) => Math.min(a, b));
  const most = (values: number[]) => values.reduce((a, b) => Math.max(a, b));
  return { minX: least(xs), maxX: most(xs), minY: least(ys), maxY: most(ys) };
}

interface Opened {
  readonly view: DataView;
  readonly at: number;
  readonly littleEndian: boolean;
  readonly empty: boolean;
}

function openHeader(bytes: Uint8Array): Reading<Opened> {
  if (bytes.length < HEADER_BYTES || bytes[0] !== MAGIC_G || bytes[1] !== MAGIC_P) {
    return unreadable('not a GeoPackage geometry');
  }
  const flags = bytes[3] ?? 0;
  const envelopeBytes = ENVELOPE_BYTES[(flags >> 1) & 0b111];
  if (bytes[2] !== 0 || (flags & FLAG_EXTENDED) !== 0 || envelopeBytes === undefined) {
    return unreadable('a GeoPackage geometry of an unknown form');
  }
  const at = HEADER_BYTES + envelopeBytes;
  if (bytes.length < at) return unreadable('the geometry ends too soon');
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const littleEndian = (flags & FLAG_LITTLE_ENDIAN) !== 0;
  return readAs({ view, at, littleEndian, empty: (flags & FLAG_EMPTY) !== 0 });
}

function openWkb(bytes: Uint8Array, type: number): Reading<Opened> {
  const header = openHeader(bytes);
  if (!header.ok) return header;
  const { view, at } = header.value;
  if (view.byteLength < at + 5) return unreadable('the geometry ends too soon');
  const order = view.getUint8(at);
  if (order > 1) return unreadable('a geometry of an unknown byte order');
  const found = view.getUint32(at + 1, order === 1);
  if (found !== type) return unreadable(`geometry type ${found} where ${type} belongs`);
  return readAs({ view, at: at + 5, littleEndian: order === 1, empty: header.value.empty });
}

function pointAt(view: DataView, at: number, littleEndian: boolean): YardPoint | null {
  const xM = view.getFloat64(at, littleEndian);
  const yM = view.getFloat64(at + 8, littleEndian);
  return Number.isFinite(xM) && Number.isFinite(yM) ? { xM, yM } : null;
}

function samePoint(a: YardPoint, b: YardPoint): boolean {
  return a.xM === b.xM && a.yM === b.yM;
}
