import { inflateSync } from 'node:zlib';
import { addDecoder, BaseDecoder } from 'geotiff';

/** TIFF 6.0 technical note: Adobe deflate, and the number used before it had one. */
const DEFLATE = [8, 32946];
/** The largest block of the largest picture read, at eight bytes a pixel; only a bomb unpacks to more. */
const MOST_BLOCK_BYTES = 320_000_000;

/**
 * Unpacks deflated blocks with an end: a few megabytes can claim gigabytes, and a thread's memory limit does not
 * count what it holds outside the script heap. Throws past the limit.
 */
class BoundedDeflate extends BaseDecoder {
  override decodeBlock(buffer: ArrayBufferLike): ArrayBufferLike {
    const {
      buffer: whole,
      byteOffset,
      byteLength,
    } = inflateSync(new Uint8Array(buffer), {
      maxOutputLength: MOST_BLOCK_BYTES,
    });
    return whole.slice(byteOffset, byteOffset + byteLength);
  }
}

/** Puts the bounded unpacker in the place of the library's own. */
export function boundDeflate(): void {
  addDecoder(DEFLATE, () => Promise.resolve(BoundedDeflate));
}
