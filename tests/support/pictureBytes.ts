import { encode } from 'fast-png';

/** A grey PNG. */
export function pngOf(widthPx: number, heightPx: number): Uint8Array {
  const data = new Uint8Array(widthPx * heightPx).fill(120);
  return encode({ width: widthPx, height: heightPx, data, channels: 1, depth: 8 });
}

/** The markers of a JPEG in their order (ITU-T T.81, annex B), with a made-up scan: enough for a header reader. */
export function jpegOf(widthPx: number, heightPx: number, orientation?: number): Uint8Array {
  const two = (value: number): number[] => [value >> 8, value & 0xff];
  const exif =
    orientation === undefined
      ? []
      : [
          ...[0xff, 0xe1, ...two(34)],
          ...[...'Exif\0\0'].map((each) => each.charCodeAt(0)),
          ...[0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1],
          ...[0x01, 0x12, 0, 3, 0, 0, 0, 1, ...two(orientation), 0, 0],
          ...[0, 0, 0, 0],
        ];
  return Uint8Array.from([
    ...[0xff, 0xd8],
    ...exif,
    ...[0xff, 0xc0, ...two(11), 8, ...two(heightPx), ...two(widthPx), 1, 1, 0x11, 0],
    ...[0xff, 0xda, ...two(8), 1, 1, 0, 0, 63, 0],
    ...[0x12, 0x34, 0x56],
    ...[0xff, 0xd9],
  ]);
}

/** The head of a lossless WebP (RIFF, VP8L chunk) with a made-up body. */
export function webpOf(widthPx: number, heightPx: number): Uint8Array {
  const bytes = new Uint8Array(40);
  const view = new DataView(bytes.buffer);
  const put = (at: number, words: string): void => bytes.set(new TextEncoder().encode(words), at);
  put(0, 'RIFF');
  view.setUint32(4, 32, true);
  put(8, 'WEBPVP8L');
  view.setUint32(16, 20, true);
  bytes[20] = 0x2f;
  view.setUint32(21, ((heightPx - 1) << 14) | (widthPx - 1), true);
  return bytes;
}
