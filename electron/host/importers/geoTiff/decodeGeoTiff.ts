import { encode } from 'fast-png';
import { fromArrayBuffer } from 'geotiff';
import { boundDeflate } from './boundedDeflate.ts';
import { holdsHeights, readTiffHeights } from './tiffHeights.ts';
import { readTiffPixels } from './tiffPixels.ts';
import { readTiffPlace, type TiffPlace } from './tiffPlace.ts';

/** What became of a TIFF, in plain data that crosses from the decoding thread. */
export type DecodedTiff =
  | {
      readonly kind: 'picture';
      readonly widthPx: number;
      readonly heightPx: number;
      readonly png: Uint8Array;
      readonly place: TiffPlace;
      readonly notes: readonly string[];
    }
  | {
      readonly kind: 'heights';
      readonly widthPx: number;
      readonly heightPx: number;
      readonly heightsM: Float32Array;
      readonly place: TiffPlace;
      readonly notes: readonly string[];
    }
  | { readonly kind: 'no-place' }
  | { readonly kind: 'too-many-pixels'; readonly widthPx: number; readonly heightPx: number }
  | { readonly kind: 'unreadable'; readonly detail: string };

/** Beyond this a window cannot draw the picture smoothly, and decoding needs more than a gigabyte. */
export const MOST_TIFF_PIXELS = 40_000_000;
/** Bands past these are never shown; a header that claims thousands is damaged or hostile. */
const MOST_BANDS = 32;

/**
 * Reads the first picture of a GeoTIFF and its place, and packs it anew as PNG; of an elevation grid the heights
 * (`holdsHeights` tells the two apart). May loop or need much memory on a hostile file, so it runs in a thread with a time limit (`readGeoTiff`). `onPixels` is told the size
 * before the slow part begins.
 */
export async function decodeGeoTiff(
  bytes: Uint8Array,
  onPixels: (pixels: number) => void,
): Promise<DecodedTiff> {
  boundDeflate();
  try {
    const tiff = await fromArrayBuffer(ownBuffer(bytes));
    const image = await tiff.getImage(0);
    const widthPx = image.getWidth();
    const heightPx = image.getHeight();
    if (!(widthPx > 0 && heightPx > 0)) return unreadable('it says it has no width or no height');
    if (widthPx * heightPx > MOST_TIFF_PIXELS) return { kind: 'too-many-pixels', widthPx, heightPx };
    if (image.getSamplesPerPixel() > MOST_BANDS) return unreadable('it claims too many bands');
    const place = await readTiffPlace(image);
    if (place === null) return { kind: 'no-place' };
    onPixels(widthPx * heightPx);
    if (holdsHeights(image)) {
      const { heightsM, notes } = await readTiffHeights(image, place);
      if (heightsM.length !== widthPx * heightPx) return unreadable('its heights do not fill its size');
      return { kind: 'heights', widthPx, heightPx, heightsM, place, notes };
    }
    const { data, channels, notes } = await readTiffPixels(image);
    if (data.length !== widthPx * heightPx * channels) return unreadable('its pixels do not fill its size');
    const png = encode({ width: widthPx, height: heightPx, data, channels, depth: 8 });
    return { kind: 'picture', widthPx, heightPx, png, place, notes };
  } catch (error) {
    return unreadable(
      `its pixels or tags are damaged (${error instanceof Error ? error.message : 'unknown'})`,
    );
  }
}

function ownBuffer(bytes: Uint8Array): ArrayBuffer {
  return bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
}

function unreadable(detail: string): DecodedTiff {
  return { kind: 'unreadable', detail };
}
