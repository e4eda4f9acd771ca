import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { decode } from 'fast-png';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { yardFrameText } from '../../core/earth/index.ts';
import { draftYard } from '../../electron/host/importers/index.ts';
import { expectNear } from '../support/expectNear.ts';
import { smallGeoTiff } from '../support/tiffFile.ts';

/** GDAL (Debian gdal-bin) writes the pictures and says where they lie; without it there is no oracle. */
const hasGdal = runs('gdal_translate', '--version') && runs('gdaltransform', '--version');

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'platpace-gdal-'));
  writeFileSync(join(folder, 'rgb.tif'), smallGeoTiff({ widthPx: 96, heightPx: 64, sampleAt: smooth }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Smooth, so that a lossy packing changes it little. */
function smooth(x: number, y: number, band: number): number {
  return Math.round(128 + 100 * Math.sin((x + band * 9) / 20) * Math.cos(y / 25));
}

function runs(program: string, ...words: string[]): boolean {
  try {
    execFileSync(program, words, { stdio: 'pipe' });
    return true;
  } catch {
    return false;
  }
}

function translate(to: string, ...words: string[]): Uint8Array {
  execFileSync('gdal_translate', ['-q', ...words, join(folder, 'rgb.tif'), join(folder, to)], {
    stdio: 'pipe',
  });
  return readFileSync(join(folder, to));
}

/** Where GDAL puts pixel corners in a frame of ours. */
function gdalCorners(
  file: string,
  frame: string,
  pixels: readonly (readonly [number, number])[],
): number[][] {
  const input = pixels.map((pixel) => pixel.join(' ')).join('\n');
  // GDAL takes a picture's pixel coordinates from its corner, as we do.
  const words = ['-t_srs', frame, '-output_xy', join(folder, file)];
  const out = execFileSync('gdaltransform', words, { input, stdio: 'pipe' }).toString();
  return out
    .trim()
    .split('\n')
    .map((line) => line.split(' ').map(Number));
}

describe.skipIf(!hasGdal)('a GeoTIFF against GDAL', () => {
  test.each([
    ['as it is', []],
    [
      'tiled and packed by LZW',
      ['-co', 'TILED=YES', '-co', 'BLOCKXSIZE=32', '-co', 'BLOCKYSIZE=32', '-co', 'COMPRESS=LZW'],
    ],
    ['deflated with differences', ['-co', 'COMPRESS=DEFLATE', '-co', 'PREDICTOR=2']],
    ['run-length packed', ['-co', 'COMPRESS=PACKBITS']],
    ['in separate planes', ['-co', 'INTERLEAVE=BAND']],
    ['big-endian', ['-co', 'ENDIANNESS=BIG']],
    ['as a big TIFF', ['-co', 'BIGTIFF=YES']],
    ['JPEG in YCbCr', ['-co', 'COMPRESS=JPEG', '-co', 'PHOTOMETRIC=YCBCR', '-co', 'JPEG_QUALITY=95']],
    ['JPEG in YCbCr, tiled', ['-co', 'COMPRESS=JPEG', '-co', 'PHOTOMETRIC=YCBCR', '-co', 'TILED=YES']],
    ['ZSTD packed', ['-co', 'COMPRESS=ZSTD']],
  ] as const)('%s: the same pixels', async (name, options) => {
    const bytes = translate('packed.tif', '-of', 'GTiff', ...options);
    // GDAL's own decoding of the same file is the expected picture.
    execFileSync('gdal_translate', [
      '-q',
      '-of',
      'PNG',
      join(folder, 'packed.tif'),
      join(folder, 'packed.png'),
    ]);
    const expected = decode(readFileSync(join(folder, 'packed.png')));
    const drafted = await draftYard({ fileName: `${name}.tif`, bytes });
    if (!drafted.ok) throw new Error(JSON.stringify(drafted.problems));
    const ours = decode(drafted.value.images[0]?.bytes ?? new Uint8Array());
    expect([ours.width, ours.height, ours.channels]).toEqual([96, 64, 3]);
    const isLossy = name.startsWith('JPEG');
    const differences = Array.from(ours.data, (value, at) => Math.abs(value - (expected.data[at] ?? -1000)));
    const mean = differences.reduce((sum, each) => sum + each, 0) / differences.length;
    // Lossless is equal; two JPEG decoders may differ by their rounding and by how they spread colour.
    expectNear(Math.max(...differences), 0, isLossy ? 12 : 0, 'of 255');
    expectNear(mean, 0, isLossy ? 2 : 0, 'of 255');
  });

  test.each([
    ['EPSG:26916', ['568000', '4417000', '568120.25', '4416950.5']], // UTM 16 north, pixels not square
    ['EPSG:2263', ['985000', '195000', '985150', '194900']], // New York Long Island, US survey feet
    ['EPSG:6559', ['7640000', '680000', '7640100', '679930']], // Oregon North, international feet
    ['EPSG:27700', ['530000', '180000', '530060', '179960']], // British National Grid, another datum
    ['EPSG:3857', ['-9595000', '4850000', '-9594900', '4849940']], // web map metres
    ['EPSG:4326', ['-86.2', '39.9', '-86.199', '39.8995']],
    [
      '+proj=lcc +lat_1=41 +lat_2=42 +lat_0=40 +lon_0=-87 +x_0=500000 +y_0=0 +datum=NAD83 +units=us-ft +no_defs',
      ['1650000', '3000', '1650200', '2900'],
    ], // no code at all
  ])('in %s: the same corners in the yard frame', async (crs, ullr) => {
    const bytes = translate('placed.tif', '-of', 'GTiff', '-a_srs', crs, '-a_ullr', ...ullr);
    const drafted = await draftYard({ fileName: 'placed.tif', bytes });
    if (!drafted.ok) throw new Error(JSON.stringify(drafted.problems));
    const { details, pictures } = drafted.value.document;
    const placement = pictures[0]?.placement;
    if (details.frame.kind !== 'placed' || placement?.kind !== 'georeferenced') throw new Error('not placed');
    const frame = yardFrameText(details.frame.origin);
    const expected = gdalCorners('placed.tif', frame, [
      [0, 0],
      [96, 0],
      [96, 64],
      [0, 64],
    ]);
    // Other datums than WGS84 are shifted by each program's own parameters: there only shape and size agree.
    const shiftX = crs === 'EPSG:27700' ? placement.corners[0].xM - (expected[0]?.[0] ?? 0) : 0;
    const shiftY = crs === 'EPSG:27700' ? placement.corners[0].yM - (expected[0]?.[1] ?? 0) : 0;
    expectNear(Math.hypot(shiftX, shiftY), 0, 10, 'm');
    for (const [at, { xM, yM }] of placement.corners.entries()) {
      const [x = Number.NaN, y = Number.NaN] = expected[at] ?? [];
      expectNear(Math.hypot(xM - x - shiftX, yM - y - shiftY), 0, 1e-3, 'm');
    }
  });
});
