/** What a test TIFF is made of; written byte by byte here, so that no library writes what it then reads. */
export interface TiffSpec {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bits?: 8 | 16 | 32;
  readonly isFloat?: boolean;
  readonly isSigned?: boolean;
  /** 1 grey (black is zero), 2 RGB, 3 palette, 0 grey (white is zero). */
  readonly photometric: 0 | 1 | 2 | 3;
  readonly samples: number;
  readonly extraSamples?: readonly number[];
  readonly sampleAt: (x: number, y: number, band: number) => number;
  readonly palette?: (index: number) => readonly [number, number, number];
  readonly pixelScale?: readonly number[];
  readonly tiePoint?: readonly number[];
  readonly matrix?: readonly number[];
  /** Pairs of GeoKey id and short value. */
  readonly geoKeys?: readonly (readonly [number, number])[];
  readonly noData?: string;
  /** The GDAL_METADATA tag: scale, offset and unit of the band. */
  readonly metadata?: string;
  /** Overrides, for damage. */
  readonly compression?: number;
  readonly claimedWidthPx?: number;
  /** The bytes of the one strip as they stand, in place of the pixels. */
  readonly strip?: Uint8Array;
}

type Entry = { readonly tag: number; readonly type: number; readonly values: readonly number[] | string };

const SHORT = 3;
const LONG = 4;
const DOUBLE = 12;
const ASCII = 2;
const BYTES_OF: Readonly<Record<number, number>> = { [ASCII]: 1, [SHORT]: 2, [LONG]: 4, [DOUBLE]: 8 };

/** A little-endian, one-strip TIFF (TIFF 6.0; GeoTIFF 1.1 tags). */
export function tiffFile(spec: TiffSpec): Uint8Array {
  const { widthPx, heightPx, samples, bits = 8 } = spec;
  const pixelBytes = spec.strip?.length ?? (widthPx * heightPx * samples * bits) / 8;
  const entries: Entry[] = [
    { tag: 256, type: LONG, values: [spec.claimedWidthPx ?? widthPx] },
    { tag: 257, type: LONG, values: [heightPx] },
    { tag: 258, type: SHORT, values: Array.from({ length: samples }, () => bits) },
    { tag: 259, type: SHORT, values: [spec.compression ?? 1] },
    { tag: 262, type: SHORT, values: [spec.photometric] },
    { tag: 273, type: LONG, values: [8] },
    { tag: 277, type: SHORT, values: [samples] },
    { tag: 278, type: LONG, values: [heightPx] },
    { tag: 279, type: LONG, values: [pixelBytes] },
  ];
  if (spec.palette) entries.push({ tag: 320, type: SHORT, values: paletteValues(spec.palette) });
  if (spec.extraSamples) entries.push({ tag: 338, type: SHORT, values: spec.extraSamples });
  entries.push({
    tag: 339,
    type: SHORT,
    values: Array.from({ length: samples }, () => (spec.isFloat ? 3 : spec.isSigned ? 2 : 1)),
  });
  if (spec.pixelScale) entries.push({ tag: 33550, type: DOUBLE, values: spec.pixelScale });
  if (spec.tiePoint) entries.push({ tag: 33922, type: DOUBLE, values: spec.tiePoint });
  if (spec.matrix) entries.push({ tag: 34264, type: DOUBLE, values: spec.matrix });
  if (spec.geoKeys) {
    const keys = spec.geoKeys.flatMap(([id, value]) => [id, 0, 1, value]);
    entries.push({ tag: 34735, type: SHORT, values: [1, 1, 0, spec.geoKeys.length, ...keys] });
  }
  if (spec.metadata) entries.push({ tag: 42112, type: ASCII, values: `${spec.metadata}\0` });
  if (spec.noData) entries.push({ tag: 42113, type: ASCII, values: `${spec.noData}\0` });
  return laidOut(spec, pixelBytes, entries);
}

function laidOut(spec: TiffSpec, pixelBytes: number, entries: readonly Entry[]): Uint8Array {
  const directoryAt = 8 + pixelBytes + (pixelBytes % 2);
  const directoryBytes = 2 + entries.length * 12 + 4;
  const sizes = entries.map((entry) => entry.values.length * (BYTES_OF[entry.type] ?? 1));
  const total = directoryAt + directoryBytes + sizes.reduce((sum, size) => sum + (size > 4 ? size : 0), 0);
  const view = new DataView(new ArrayBuffer(total));
  view.setUint16(0, 0x4949);
  view.setUint16(2, 42, true);
  view.setUint32(4, directoryAt, true);
  if (spec.strip) new Uint8Array(view.buffer).set(spec.strip, 8);
  else writePixels(view, spec);
  view.setUint16(directoryAt, entries.length, true);
  let heap = directoryAt + directoryBytes;
  for (const [index, { tag, type, values }] of entries.entries()) {
    const at = directoryAt + 2 + index * 12;
    const size = sizes[index] ?? 0;
    view.setUint16(at, tag, true);
    view.setUint16(at + 2, type, true);
    view.setUint32(at + 4, values.length, true);
    if (size <= 4) writeValues(view, at + 8, type, values);
    else {
      view.setUint32(at + 8, heap, true);
      writeValues(view, heap, type, values);
      heap += size;
    }
  }
  return new Uint8Array(view.buffer);
}

function writePixels(
  view: DataView,
  { widthPx, heightPx, samples, bits = 8, isFloat, sampleAt }: TiffSpec,
): void {
  let at = 8;
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      for (let band = 0; band < samples; band++, at += bits / 8) {
        const value = sampleAt(x, y, band);
        if (isFloat) view.setFloat32(at, value, true);
        else if (bits === 16) view.setUint16(at, value & 0xffff, true);
        else view.setUint8(at, value);
      }
    }
  }
}

function writeValues(view: DataView, from: number, type: number, values: readonly number[] | string): void {
  const numbers = typeof values === 'string' ? [...values].map((each) => each.charCodeAt(0)) : values;
  for (const [index, value] of numbers.entries()) {
    const at = from + index * (BYTES_OF[type] ?? 1);
    if (type === DOUBLE) view.setFloat64(at, value, true);
    else if (type === LONG) view.setUint32(at, value, true);
    else if (type === SHORT) view.setUint16(at, value, true);
    else view.setUint8(at, value);
  }
}

/** 256 reds, then greens, then blues, in sixteen bits. */
function paletteValues(palette: NonNullable<TiffSpec['palette']>): number[] {
  const colours = Array.from({ length: 256 }, (_, index) => palette(index));
  return [0, 1, 2].flatMap((channel) => colours.map((colour) => (colour[channel] ?? 0) * 257));
}

/** UTM zone 16 north on WGS84, pixels of half a metre, as GeoKeys. */
export const UTM16_KEYS: NonNullable<TiffSpec['geoKeys']> = [
  [1024, 1], // GTModelType: projected
  [1025, 1], // GTRasterType: pixel is area
  [3072, 32616], // ProjectedCRS: EPSG:32616
];

/** A small RGB picture placed in UTM zone 16 north, for tests that need any sound GeoTIFF. */
export function smallGeoTiff(more: Partial<TiffSpec> = {}): Uint8Array {
  return tiffFile({
    widthPx: 40,
    heightPx: 30,
    photometric: 2,
    samples: 3,
    sampleAt: (x, y, band) => [x * 6, y * 8, 100][band] ?? 0,
    pixelScale: [0.5, 0.5, 0],
    tiePoint: [0, 0, 0, 568000, 4417000, 0],
    geoKeys: UTM16_KEYS,
    ...more,
  });
}

/** A small elevation grid in UTM zone 16 north: 60 × 40 heights 2 m apart, from its outer north-west corner. */
export function smallDem(more: Partial<TiffSpec> = {}): Uint8Array {
  return tiffFile({
    widthPx: 60,
    heightPx: 40,
    bits: 32,
    isFloat: true,
    photometric: 1,
    samples: 1,
    sampleAt: (x, y) => 200 + 0.3 * x + 0.16 * y,
    pixelScale: [2, 2, 0],
    tiePoint: [0, 0, 0, 568000, 4417000, 0],
    geoKeys: UTM16_KEYS,
    ...more,
  });
}
