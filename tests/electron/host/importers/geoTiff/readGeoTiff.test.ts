import { deflateSync } from 'node:zlib';
import { decode } from 'fast-png';
import { describe, expect, test } from 'vitest';
import { readGeoTiff } from '../../../../../electron/host/importers/geoTiff/readGeoTiff.ts';
import { smallGeoTiff, UTM16_KEYS } from '../../../../support/tiffFile.ts';

/** The pixel of a decoded picture, as an array of its channels. */
async function pixelsOf(bytes: Uint8Array): Promise<{
  at: (x: number, y: number) => number[];
  notes: readonly string[];
}> {
  const read = await readGeoTiff(bytes);
  if (read.kind !== 'picture') throw new Error(`not a picture: ${JSON.stringify(read)}`);
  const { width, channels, data } = decode(read.png);
  return {
    at: (x, y) => Array.from(data.slice((y * width + x) * channels, (y * width + x + 1) * channels)),
    notes: read.notes,
  };
}

describe('a GeoTIFF becomes a picture', () => {
  test('that keeps eight-bit colours as they are', async () => {
    const { at, notes } = await pixelsOf(smallGeoTiff());
    expect(at(7, 11)).toEqual([42, 88, 100]); // what smallGeoTiff writes there: 7 × 6, 11 × 8, 100
    expect(notes).toEqual([]);
  });

  test('that drops a fourth band holding near infrared, and says so', async () => {
    const sampleAt = (x: number, _y: number, band: number): number => (band === 3 ? 80 + x : 50);
    const { at, notes } = await pixelsOf(smallGeoTiff({ samples: 4, extraSamples: [2], sampleAt }));
    expect(at(3, 3)).toEqual([50, 50, 50]); // the three colours as written, no alpha
    expect(notes.join()).toContain('fourth band');
  });

  test('that keeps a fourth band holding transparency', async () => {
    const sampleAt = (x: number, _y: number, band: number): number => (band === 3 ? (x < 20 ? 0 : 255) : 50);
    const { at } = await pixelsOf(smallGeoTiff({ samples: 4, extraSamples: [2], sampleAt }));
    expect(at(3, 3)).toEqual([50, 50, 50, 0]); // as written: clear west of x = 20
    expect(at(30, 3)).toEqual([50, 50, 50, 255]); // as written: solid east of it
  });

  test('with sixteen bits stretched from darkest to lightest', async () => {
    const sampleAt = (x: number): number => 1000 + 100 * x;
    const { at, notes } = await pixelsOf(smallGeoTiff({ bits: 16, sampleAt }));
    expect(at(0, 0)).toEqual([0, 0, 0]); // the least value, 1000, is black
    expect(at(39, 0)).toEqual([255, 255, 255]); // the most, 4900, is white
    expect(at(13, 0)).toEqual([85, 85, 85]); // (2300 − 1000) / 3900 × 255 = 85
    expect(notes.join()).toContain('16-bit');
  });

  test('with a grey band of eight bits in grey, and no-data clear', async () => {
    const bytes = smallGeoTiff({ photometric: 1, samples: 1, sampleAt: (x) => x, noData: '0' });
    const { at } = await pixelsOf(bytes);
    expect(at(0, 0)[3]).toBe(0); // no data is clear
    expect(at(17, 5)).toEqual([17, 17, 17, 255]); // as written
  });

  test('with a palette looked up', async () => {
    const bytes = smallGeoTiff({
      photometric: 3,
      samples: 1,
      sampleAt: (x) => x,
      palette: (index) => [index, 255 - index, 7],
    });
    const { at } = await pixelsOf(bytes);
    expect(at(9, 0)).toEqual([9, 246, 7]); // entry 9 as written: 9, 255 − 9, 7
  });

  test('with white-is-zero turned round', async () => {
    const { at } = await pixelsOf(smallGeoTiff({ photometric: 0, samples: 1, sampleAt: () => 30 }));
    expect(at(0, 0)).toEqual([225, 225, 225]); // 255 − 30
  });
});

describe('where a GeoTIFF lies', () => {
  test('is read from tie point and pixel scale', async () => {
    const read = await readGeoTiff(smallGeoTiff({ tiePoint: [10, 20, 0, 568000, 4417000, 0] }));
    // x = 568000 + (px − 10) / 2, y = 4417000 − (py − 20) / 2
    expect(read).toMatchObject({ place: { affine: [0.5, 0, 567995, 0, -0.5, 4417010], epsg: 'EPSG:32616' } });
  });

  test('moves by half a pixel where the file says that pixels are points', async () => {
    const geoKeys = UTM16_KEYS.map(([id, value]) => [id, id === 1025 ? 2 : value] as const);
    const read = await readGeoTiff(smallGeoTiff({ geoKeys }));
    expect(read).toMatchObject({ place: { affine: [0.5, 0, 567999.75, 0, -0.5, 4417000.25] } }); // half of 0.5 m
  });

  test('is read from a matrix that turns the picture', async () => {
    const matrix = [0.3, 0.4, 0, 568000, 0.4, -0.3, 0, 4417000, 0, 0, 0, 0, 0, 0, 0, 1];
    const bytes = smallGeoTiff({ matrix, pixelScale: undefined, tiePoint: undefined } as never);
    expect(await readGeoTiff(bytes)).toMatchObject({
      place: { affine: [0.3, 0.4, 568000, 0.4, -0.3, 4417000] },
    });
  });

  test('is nowhere without tags for it', async () => {
    const bytes = smallGeoTiff({ pixelScale: undefined, tiePoint: undefined } as never);
    expect(await readGeoTiff(bytes)).toEqual({ kind: 'no-place' });
  });
});

describe('a GeoTIFF that would hurt', () => {
  test('by its size is refused before it is decoded', async () => {
    const read = await readGeoTiff(smallGeoTiff({ claimedWidthPx: 2_000_000_000 }));
    expect(read).toEqual({ kind: 'too-many-pixels', widthPx: 2_000_000_000, heightPx: 30 });
  });

  test('by not coming to an end is stopped at the time limit', async () => {
    const looping = new URL('../../../../support/loopingThread.ts', import.meta.url);
    const started = performance.now();
    const read = await readGeoTiff(smallGeoTiff(), 300, looping);
    expect(read).toEqual({ kind: 'unreadable', detail: 'decoding it does not come to an end' });
    expect(performance.now() - started).toBeLessThan(5000); // the limit is 300 ms; the rest is a busy machine
  });

  test('by unpacking to more than any picture holds is unreadable', async () => {
    const strip = deflateSync(new Uint8Array(330_000_000), { level: 1 }); // over the 320 MB a block may have
    expect(strip.length).toBeLessThan(3_000_000); // small on disk: that is the trick
    const read = await readGeoTiff(smallGeoTiff({ compression: 8, strip }));
    expect(read).toMatchObject({ kind: 'unreadable' });
  }, 120_000);

  test('by a truncated strip is unreadable', async () => {
    const whole = smallGeoTiff();
    // The directory stands after the pixels: moved to the front of a file cut off behind it, the strip is missing.
    const bytes = whole.slice();
    new DataView(bytes.buffer).setUint32(4, 8, true);
    expect(await readGeoTiff(bytes)).toMatchObject({ kind: 'unreadable' });
  });
});
