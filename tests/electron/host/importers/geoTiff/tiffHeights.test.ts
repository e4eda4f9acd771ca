import { describe, expect, test } from 'vitest';
import { readGeoTiff } from '../../../../../electron/host/importers/geoTiff/readGeoTiff.ts';
import { smallDem, smallGeoTiff, type TiffSpec, UTM16_KEYS } from '../../../../support/tiffFile.ts';

async function heightsOf(more: Partial<TiffSpec> = {}) {
  const read = await readGeoTiff(smallDem({ widthPx: 4, heightPx: 2, ...more }));
  if (read.kind !== 'heights') throw new Error(`no heights: ${JSON.stringify(read)}`);
  return {
    heights: [...read.heightsM].map((height) => Number(height.toFixed(3))),
    note: read.notes.join(' '),
  };
}

const withKey = (id: number, value: number): NonNullable<TiffSpec['geoKeys']> => [...UTM16_KEYS, [id, value]];

describe('what is read as heights', () => {
  test('is one grey band of floating values', async () => {
    const { heights, note } = await heightsOf({ sampleAt: (x, y) => 10 + x / 2 + 100 * y });
    expect(heights).toEqual([10, 10.5, 11, 11.5, 110, 110.5, 111, 111.5]); // as written, row by row
    expect(note).toContain('32-bit floating values is read as heights');
  });

  test('is one grey band of sixteen bits, with a sign or without', async () => {
    const whole = await heightsOf({ bits: 16, isFloat: false, sampleAt: (x) => 40 + x });
    expect(whole.heights.slice(0, 4)).toEqual([40, 41, 42, 43]); // as written
    const below = await heightsOf({ bits: 16, isFloat: false, isSigned: true, sampleAt: (x) => x - 2 });
    expect(below.heights.slice(0, 4)).toEqual([-2, -1, 0, 1]); // as written
  });

  test.each([
    ['eight bits of grey', smallGeoTiff({ photometric: 1, samples: 1 })],
    ['colours of sixteen bits', smallGeoTiff({ bits: 16 })],
    ['grey and transparency', smallGeoTiff({ photometric: 1, samples: 2, bits: 16, extraSamples: [2] })],
  ])('is not %s', async (_, bytes) => {
    expect((await readGeoTiff(bytes)).kind).toBe('picture');
  });

  test('leaves out no-data, what is no number, and what no ground is as high or as low as', async () => {
    const { heights } = await heightsOf({
      noData: '7',
      sampleAt: (x, y) =>
        [
          [7, Number.NaN, 12, 13],
          [-9999, 3.4e38, 14, 9001],
        ][y]?.[x] ?? 0,
    });
    expect(heights).toEqual([Number.NaN, Number.NaN, 12, 13, Number.NaN, Number.NaN, 14, Number.NaN]); // as told above
  });
});

describe('the unit of heights', () => {
  test('is metres where the file says so, and where neither it nor its map says anything else', async () => {
    expect((await heightsOf({ geoKeys: withKey(4099, 9001) })).note).toContain('in metres as it says');
    const silent = await heightsOf({ sampleAt: () => 12 });
    expect(silent.note).toContain('taken as metres: it states no unit of height');
    expect(silent.heights[0]).toBe(12); // as written
  });

  test.each([
    ['a key, feet', { geoKeys: withKey(4099, 9002) }, 30.48], // 100 × 0.3048
    ['a key, US survey feet', { geoKeys: withKey(4099, 9003) }, 30.48006], // 100 × 1200/3937
    ['NAVD88 in US survey feet', { geoKeys: withKey(4096, 6360) }, 30.48006], // 100 × 1200/3937
    [
      'the band’s own words',
      { metadata: '<GDALMetadata><Item name="UNITTYPE" sample="0" role="unittype">ft</Item></GDALMetadata>' },
      30.48, // 100 × 0.3048
    ],
    [
      'its map, in US survey feet',
      {
        geoKeys: [
          [1024, 1],
          [1025, 1],
          [3072, 2263],
        ] as const, // New York Long Island, ftUS
        tiePoint: [0, 0, 0, 985000, 195000, 0],
      },
      30.48006, // 100 × 1200/3937
    ],
  ])('is taken from %s', async (_, more, heightM) => {
    const { heights, note } = await heightsOf({ ...more, sampleAt: () => 100 });
    expect(heights[0]).toBeCloseTo(heightM, 3);
    expect(note).toContain('feet');
  });

  test('a scale and an offset beside the band are used', async () => {
    const metadata =
      '<GDALMetadata><Item name="OFFSET" sample="0" role="offset">100</Item><Item name="SCALE" sample="0" role="scale">0.01</Item></GDALMetadata>';
    const { heights } = await heightsOf({ bits: 16, isFloat: false, metadata, sampleAt: (x) => 250 + x });
    expect(heights[1]).toBe(102.51); // 251 × 0.01 + 100
  });
});
