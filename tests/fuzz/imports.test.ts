import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { problemText } from '../../core/problemText.ts';
import { geoJsonText, yardToGeoJson } from '../../electron/host/exporters/geoJson.ts';
import { readGeoJson } from '../../electron/host/importers/geoJson/readGeoJson.ts';
import { draftYard } from '../../electron/host/importers/index.ts';
import { readPictureSize } from '../../electron/host/importers/pictureSize.ts';
import { sampleYard } from '../../electron/host/sample.ts';
import { jpegOf, pngOf, webpOf } from '../support/pictureBytes.ts';
import { smallGeoTiff } from '../support/tiffFile.ts';

/** Fixed, so that a failure is the same for everyone; fast-check prints it with the shrunk case. */
const SEED = 20261125;

/** Damage done to bytes: some of them changed, then the end cut off. */
interface Damage {
  readonly changes: readonly (readonly [at: number, byte: number])[];
  readonly keep: number;
}
const damage: fc.Arbitrary<Damage> = fc.record({
  changes: fc.array(fc.tuple(fc.nat(1_000_000), fc.nat(255)), { maxLength: 12 }),
  keep: fc.oneof({ weight: 3, arbitrary: fc.constant(1) }, fc.double({ min: 0, max: 1, noNaN: true })),
});

function damaged(bytes: Uint8Array, { changes, keep }: Damage): Uint8Array {
  const out = bytes.slice(0, Math.ceil(bytes.length * keep));
  for (const [at, byte] of changes) if (out.length > 0) out[at % out.length] = byte;
  return out;
}

/** A result is a value or problems that can be put into words; anything else, a throw too, fails the property. */
function expectWhole(result: { readonly ok: boolean }): void {
  if (result.ok) return;
  const { problems } = result as unknown as { readonly problems: Parameters<typeof problemText>[0][] };
  expect(problems.length).toBeGreaterThan(0);
  for (const problem of problems) expect(problemText(problem, 'us').what).not.toMatch(/undefined|NaN/);
}

const sampleText = (() => {
  const made = yardToGeoJson(sampleYard(), 'x');
  if (!made.ok) throw new Error('the sample has a place');
  return geoJsonText(made.value);
})();

describe('whatever is brought in', () => {
  test.each([
    ['png', pngOf(40, 30)],
    ['jpeg', jpegOf(40, 30, 6)],
    ['webp', webpOf(40, 30)],
  ] as const)('a damaged %s has a size or a reason', (kind, bytes) => {
    fc.assert(
      fc.property(damage, (each) => {
        const read = readPictureSize(kind, damaged(bytes, each));
        if (read.size === null) expect(read.detail.length).toBeGreaterThan(0);
        else expect(read.size.widthPx > 0 && read.size.heightPx > 0).toBe(true);
      }),
      { seed: SEED, numRuns: 3000 },
    );
  });

  test('damaged GeoJSON text is read or refused', () => {
    const bytes = new TextEncoder().encode(sampleText);
    fc.assert(
      fc.property(damage, (each) => expectWhole(readGeoJson('yard.geojson', damaged(bytes, each)))),
      { seed: SEED, numRuns: 600 },
    );
  });

  test('GeoJSON with any JSON in any place is read or refused', async () => {
    const root = JSON.parse(sampleText) as object;
    const paths = pathsIn(root).filter((path) => path.length > 0);
    const swap = fc.tuple(fc.nat(paths.length - 1), fc.oneof(fc.jsonValue(), awkward));
    await fc.assert(
      fc.asyncProperty(fc.array(swap, { minLength: 1, maxLength: 4 }), async (swaps) => {
        const copy = structuredClone(root);
        for (const [at, value] of swaps) put(copy, paths[at] ?? [], value);
        const bytes = new TextEncoder().encode(JSON.stringify(copy));
        expectWhole(await draftYard({ fileName: 'yard.geojson', bytes }, '2026-05-12'));
      }),
      { seed: SEED, numRuns: 400 },
    );
  });

  test('a damaged GeoTIFF is read or refused, and its thread ends', async () => {
    const bytes = smallGeoTiff();
    const directoryAt = new DataView(bytes.buffer).getUint32(4, true);
    // The pixels can hold anything; the damage goes to the head and the tags.
    const tagDamage = fc.array(fc.tuple(fc.nat(bytes.length - directoryAt + 7), fc.nat(255)), {
      minLength: 1,
      maxLength: 6,
    });
    await fc.assert(
      fc.asyncProperty(tagDamage, async (changes) => {
        const out = bytes.slice();
        for (const [at, byte] of changes) out[at < 8 ? at : directoryAt + at - 8] = byte;
        expectWhole(await draftYard({ fileName: 'lot.tif', bytes: out }, '2026-05-12'));
      }),
      { seed: SEED, numRuns: 25 },
    );
  }, 240_000);
});

/** Values that break careless readers. */
const awkward = fc.constantFrom<unknown>(
  ...[null, '', 1e308, -1e308, 1e-320, 91, -181, [], {}, [[]], [[[[]]]], 'Polygon', 'MultiPolygon', 'Point'],
  ...['GeometryCollection', 'zone', '__proto__', 'constructor', [0, 0], [[0, 0]], ['0', '0'], true],
);

/** Every place in a JSON value, as the keys that lead there; long lists are sampled at their ends. */
function pathsIn(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  const keys = Object.keys(value);
  const few = keys.length > 6 ? [...keys.slice(0, 3), ...keys.slice(-3)] : keys;
  return [path, ...few.flatMap((key) => pathsIn((value as Record<string, unknown>)[key], [...path, key]))];
}

function put(root: object, path: readonly string[], value: unknown): void {
  let at: unknown = root;
  for (const key of path.slice(0, -1)) {
    if (typeof at !== 'object' || at === null) return; // an earlier swap took this branch away
    at = (at as Record<string, unknown>)[key];
  }
  if (typeof at === 'object' && at !== null) (at as Record<string, unknown>)[path.at(-1) ?? ''] = value;
}
