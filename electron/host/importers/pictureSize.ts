import type { FileKind } from './fileKind.ts';

export interface PictureSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The size as the picture is shown, or a few words on why the file is not whole. */
export type ReadSize = { readonly size: PictureSize } | { readonly size: null; readonly detail: string };

/**
 * Width and height of a PNG, JPEG or WebP from its header, with the file walked far enough to know that its
 * end is there. A JPEG held sideways (Exif orientation 5 to 8) has its sides exchanged, as every viewer does.
 * Sources: PNG (ISO/IEC 15948) clause 5.3; JPEG (ITU-T T.81) annex B; Exif 2.3 tag 0x0112; WebP container
 * specification (VP8, VP8L, VP8X chunks).
 */
export function readPictureSize(kind: Exclude<FileKind, 'tiff' | 'geojson'>, bytes: Uint8Array): ReadSize {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (kind === 'png') return readPng(view);
  return kind === 'jpeg' ? readJpeg(view) : readWebp(view);
}

function readPng(view: DataView): ReadSize {
  if (view.byteLength < 33 || textAt(view, 12) !== 'IHDR' || view.getUint32(8) !== 13) {
    return broken('its header is missing');
  }
  const size = { widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
  let hasPixels = false;
  let at = 8;
  while (at + 12 <= view.byteLength) {
    const name = textAt(view, at + 4);
    const next = at + 12 + view.getUint32(at);
    if (next > view.byteLength) return broken('it ends in the middle of the picture');
    if (name === 'IDAT') hasPixels = true;
    if (name === 'IEND') return hasPixels ? sized(size) : broken('it holds no picture');
    at = next;
  }
  return broken('it ends in the middle of the picture');
}

function readJpeg(view: DataView): ReadSize {
  let size: PictureSize | null = null;
  let sideways = false;
  let at = 2;
  while (at + 4 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return broken('its header is damaged');
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) {
      at += 1; // fill byte
      continue;
    }
    const length = view.getUint16(at + 2);
    if (length < 2 || at + 2 + length > view.byteLength) return broken('it ends in its header');
    if (marker === 0xe1) sideways = sideways || isSideways(view, at + 4, length - 2);
    if (isStartOfFrame(marker)) {
      if (length < 8) return broken('its header is damaged');
      size = { heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) };
    }
    if (marker === 0xda) {
      if (size === null) return broken('it does not say how large it is');
      // Bytes after the end marker are allowed (some cameras add a film there); no end marker at all is not.
      if (!hasEndMarker(view, at + 2 + length)) return broken('it ends in the middle of the picture');
      return sized(sideways ? { widthPx: size.heightPx, heightPx: size.widthPx } : size);
    }
    at += 2 + length;
  }
  return broken('it ends in its header');
}

/** SOF0 to SOF15 without the table and extension markers that lie among them (DHT, JPG, DAC). */
function isStartOfFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

function hasEndMarker(view: DataView, from: number): boolean {
  for (let at = view.byteLength - 2; at >= from; at--) {
    if (view.getUint8(at) === 0xff && view.getUint8(at + 1) === 0xd9) return true;
  }
  return false;
}

/** Whether an APP1 segment is Exif and turns the picture a quarter; damaged Exif is taken as upright. */
function isSideways(view: DataView, from: number, length: number): boolean {
  const end = from + length;
  const tiff = from + 6;
  if (length < 16 || textAt(view, from) !== 'Exif') return false;
  const little = view.getUint16(tiff) === 0x4949;
  let entry = tiff + view.getUint32(tiff + 4, little);
  if (entry + 2 > end) return false;
  const entries = view.getUint16(entry, little);
  entry += 2;
  for (let i = 0; i < entries && entry + 12 <= end; i++, entry += 12) {
    if (view.getUint16(entry, little) === 0x0112) {
      const orientation = view.getUint16(entry + 8, little);
      return orientation >= 5 && orientation <= 8;
    }
  }
  return false;
}

function readWebp(view: DataView): ReadSize {
  if (view.byteLength < 30) return broken('it ends in its header');
  if (view.getUint32(4, true) + 8 > view.byteLength) return broken('it ends in the middle of the picture');
  const chunk = textAt(view, 12);
  if (chunk === 'VP8X') {
    return sized({ widthPx: 1 + threeBytes(view, 24), heightPx: 1 + threeBytes(view, 27) });
  }
  if (chunk === 'VP8L' && view.getUint8(20) === 0x2f) {
    const bits = view.getUint32(21, true);
    return sized({ widthPx: 1 + (bits & 0x3fff), heightPx: 1 + ((bits >>> 14) & 0x3fff) });
  }
  if (chunk === 'VP8 ' && view.getUint8(23) === 0x9d) {
    return sized({
      widthPx: view.getUint16(26, true) & 0x3fff,
      heightPx: view.getUint16(28, true) & 0x3fff,
    });
  }
  return broken('its header is damaged');
}

function threeBytes(view: DataView, at: number): number {
  return view.getUint8(at) | (view.getUint8(at + 1) << 8) | (view.getUint8(at + 2) << 16);
}

function textAt(view: DataView, at: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((i) => view.getUint8(at + i)));
}

function sized(size: PictureSize): ReadSize {
  return size.widthPx > 0 && size.heightPx > 0 ? { size } : broken('it says it has no width or no height');
}

function broken(detail: string): ReadSize {
  return { size: null, detail };
}
