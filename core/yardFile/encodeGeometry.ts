import type { Region, Ring, YardPoint } from '../spaces.ts';

/**
 * GeoPackage binary: an 8-byte header (magic, version, flags, srs_id), an envelope, then ISO WKB.
 * Everything little-endian. Flags: bit 0 little-endian, bits 1-3 envelope kind, bit 4 empty geometry.
 * Source: OGC 12-128r17 (GeoPackage 1.3), clause 2.1.3; WKB: OGC 06-103r4, clause 8.
 */
export const MAGIC_G = 0x47;
export const MAGIC_P = 0x50;
export const HEADER_BYTES = 8;
export const FLAG_LITTLE_ENDIAN = 0b1;
export const FLAG_EMPTY = 0b1_0000;
const FLAG_ENVELOPE_XY = 0b10;
const ENVELOPE_XY_BYTES = 32;
export const WKB_POINT = 1;
export const WKB_POLYGON = 3;

/**
 * A polygon as GeoPackage binary. Rings are written as drawn, each closed by repeating its first point.
 * An outline without any point becomes POLYGON EMPTY.
 * Accuracy: coordinates are copied bit for bit.
 */
export function encodePolygon(region: Region, srsId: number): Uint8Array<ArrayBuffer> {
  const empty = region.outer.length === 0 && region.holes.length === 0;
  const rings = empty ? [] : [region.outer, ...region.holes];
  const points = rings.flat();
  const envelopeBytes = points.length === 0 ? 0 : ENVELOPE_XY_BYTES;
  const ringBytes = rings.reduce((sum, ring) => sum + 4 + 16 * closedLength(ring), 0);
  const bytes = new Uint8Array(HEADER_BYTES + envelopeBytes + 1 + 4 + 4 + ringBytes);
  const view = new DataView(bytes.buffer);
  const flags = FLAG_LITTLE_ENDIAN | (points.length === 0 ? FLAG_EMPTY : FLAG_ENVELOPE_XY);
  let at = writeHeader(view, flags, srsId);
  if (points.length > 0) at = writeEnvelope(view, at, points);
  at = writeWkbStart(view, at, WKB_POLYGON);
  view.setUint32(at, rings.length, true);
  at += 4;
  for (const ring of rings) {
    view.setUint32(at, closedLength(ring), true);
    at += 4;
    for (let i = 0; i < closedLength(ring); i += 1)
      at = writePoint(view, at, ring[i % ring.length] as YardPoint);
  }
  return bytes;
}

/** A point as GeoPackage binary, without envelope as the standard advises for points. */
export function encodePoint(point: YardPoint, srsId: number): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(HEADER_BYTES + 1 + 4 + 16);
  const view = new DataView(bytes.buffer);
  const at = writeWkbStart(view, writeHeader(view, FLAG_LITTLE_ENDIAN, srsId), WKB_POINT);
  writePoint(view, at, point);
  return bytes;
}

/** The same geometry under another srs_id. Bytes too short to hold one are copied as they are. */
export function withSrsId(bytes: Uint8Array, srsId: number): Uint8Array<ArrayBuffer> {
  const copy = new Uint8Array(bytes);
  if (copy.length < HEADER_BYTES) return copy;
  const littleEndian = ((copy[3] ?? 0) & FLAG_LITTLE_ENDIAN) !== 0;
  new DataView(copy.buffer).setInt32(4, srsId, littleEndian);
  return copy;
}

function closedLength(ring: Ring): number {
  return ring.length === 0 ? 0 : ring.length + 1;
}

function writeHeader(view: DataView, flags: number, srsId: number): number {
  view.setUint8(0, MAGIC_G);
  view.setUint8(1, MAGIC_P);
  view.setUint8(2, 0); // version 1 of the binary format is written as 0
  view.setUint8(3, flags);
  view.setInt32(4, srsId, true);
  return HEADER_BYTES;
}

function writeEnvelope(view: DataView, at: number, points: readonly YardPoint[]): number {
  let [minX, maxX, minY, maxY] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { xM, yM } of points) {
    minX = Math.min(minX, xM);
    maxX = Math.max(maxX, xM);
    minY = Math.min(minY, yM);
    maxY = Math.max(maxY, yM);
  }
  [minX, maxX, minY, maxY].forEach((value, i) => {
    view.setFloat64(at + 8 * i, value, true);
  });
  return at + ENVELOPE_XY_BYTES;
}

function writeWkbStart(view: DataView, at: number, type: number): number {
  view.setUint8(at, 1); // little-endian
  view.setUint32(at + 1, type, true);
  return at + 5;
}

function writePoint(view: DataView, at: number, point: YardPoint): number {
  view.setFloat64(at, point.xM, true);
  view.setFloat64(at + 8, point.yM, true);
  return at + 16;
}
