import type { GeoTIFFImage } from 'geotiff';

/** Eight-bit pixels, row by row from the top left. */
export interface TiffPixels {
  readonly channels: 3 | 4;
  readonly data: Uint8Array;
  readonly notes: readonly string[];
}

type Samples = ArrayLike<number>;

/** TIFF 6.0, section 8: PhotometricInterpretation and ExtraSamples. */
const WHITE_IS_ZERO = 0;
const BLACK_IS_ZERO = 1;
const RGB = 2;
const ASSOCIATED_ALPHA = 1;
const UNASSOCIATED_ALPHA = 2;

/** Share of the values cut off at each end when more than eight bits are brought to eight. */
const STRETCH_TAIL = 0.005;
/** How many values the stretch looks at; more change it by less than one grey level. */
const STRETCH_SAMPLE = 200_000;
/** A true alpha band is nearly all clear or all solid; one with more in between holds something else. */
const MOST_HALF_CLEAR = 0.2;

/** The picture as a person expects to see it; throws when the file's pixels cannot be decoded. */
export async function readTiffPixels(image: GeoTIFFImage): Promise<TiffPixels> {
  const photometric = image.fileDirectory.getValue('PhotometricInterpretation');
  const count = image.getWidth() * image.getHeight();
  if (photometric === RGB || photometric === BLACK_IS_ZERO || photometric === WHITE_IS_ZERO) {
    return readBands(image, photometric, count);
  }
  // Palette, YCbCr, CMYK and CIELab: geotiff brings them to eight-bit RGB itself.
  const rgb = await image.readRGB({ interleave: true });
  return { channels: 3, data: Uint8Array.from(rgb as unknown as ArrayLike<number>), notes: [] };
}

async function readBands(image: GeoTIFFImage, photometric: number, count: number): Promise<TiffPixels> {
  const colours = photometric === RGB && image.getSamplesPerPixel() >= 3 ? 3 : 1;
  const extra: ArrayLike<number> = image.fileDirectory.getValue('ExtraSamples') ?? [];
  const mayBeAlpha =
    image.getSamplesPerPixel() > colours &&
    (extra[0] === ASSOCIATED_ALPHA || extra[0] === UNASSOCIATED_ALPHA);
  const samples = Array.from({ length: colours + (mayBeAlpha ? 1 : 0) }, (_, band) => band);
  const bands = (await image.readRasters({ interleave: false, samples })) as unknown as Samples[];
  const noData = image.getGDALNoData();
  const notes: string[] = [];

  const toByte = byteScale(image, bands.slice(0, colours), noData, notes);
  const alpha = mayBeAlpha ? trueAlpha(image, bands[colours] ?? [], notes) : null;
  const channels = alpha !== null || noData !== null ? 4 : 3;
  const data = new Uint8Array(count * channels);
  for (let pixel = 0; pixel < count; pixel++) {
    const at = pixel * channels;
    let empty = noData !== null;
    for (let channel = 0; channel < 3; channel++) {
      const value = bands[colours === 3 ? channel : 0]?.[pixel] ?? 0;
      if (empty && value !== noData && !Number.isNaN(value)) empty = false;
      const byte = toByte(value);
      data[at + channel] = photometric === WHITE_IS_ZERO ? 255 - byte : byte;
    }
    if (channels === 4) data[at + 3] = empty ? 0 : (alpha?.[pixel] ?? 255);
  }
  return { channels, data, notes };
}

/** How a sample becomes a byte: as it is at eight bits, spread out below, stretched above. */
function byteScale(
  image: GeoTIFFImage,
  bands: readonly Samples[],
  noData: number | null,
  notes: string[],
): (value: number) => number {
  const bits = image.getBitsPerSample(0);
  const isWhole = image.getSampleFormat(0) === 1;
  if (isWhole && bits === 8) return (value) => value;
  if (isWhole && bits < 8) return (value) => Math.round((value * 255) / (2 ** bits - 1));
  const [low, high] = stretchOf(bands, noData);
  notes.push(
    `Its ${bits}-bit values from ${brief(low)} to ${brief(high)} are shown from black to white; the picture is for tracing, not for measuring brightness.`,
  );
  const scale = high > low ? 255 / (high - low) : 0;
  return (value) => Math.max(0, Math.min(255, Math.round((value - low) * scale) || 0));
}

/** One pair of limits for all colours, so that their balance stays. */
function stretchOf(bands: readonly Samples[], noData: number | null): readonly [number, number] {
  const values: number[] = [];
  for (const band of bands) {
    const step = Math.max(1, Math.floor((band.length * bands.length) / STRETCH_SAMPLE));
    for (let at = 0; at < band.length; at += step) {
      const value = band[at];
      if (value !== undefined && Number.isFinite(value) && value !== noData) values.push(value);
    }
  }
  values.sort((a, b) => a - b);
  const tail = Math.floor(values.length * STRETCH_TAIL);
  return [values[tail] ?? 0, values[values.length - 1 - tail] ?? 1];
}

/**
 * The alpha band, or null when what the file calls alpha is something else: four-band aerial pictures often
 * carry near infrared there, and taken at its word it would make the lawn half transparent.
 */
function trueAlpha(image: GeoTIFFImage, band: Samples, notes: string[]): Samples | null {
  const most = 2 ** image.getBitsPerSample(0) - 1;
  const scale = 255 / most;
  let halfClear = 0;
  let clear = 0;
  for (let at = 0; at < band.length; at++) {
    const value = (band[at] ?? most) * scale;
    if (value > 8 && value < 247) halfClear++;
    else if (value <= 8) clear++;
  }
  if (halfClear > band.length * MOST_HALF_CLEAR || clear === band.length) {
    notes.push('Its fourth band does not look like transparency and was left out.');
    return null;
  }
  return scale === 1 ? band : Uint8Array.from(band, (value) => Math.round(value * scale));
}

function brief(value: number): string {
  return String(Number(value.toPrecision(4)));
}
