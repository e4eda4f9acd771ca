import { outlineRings, tracedRing } from '../../../../core/curves/index.ts';
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { applyEdit, inverseOf } from '../../../../core/edits/index.ts';
import { yardToGeoJson, geoJsonText } from '../../../../electron/host/exporters/geoJson.ts';
import { draftImport, draftYard } from '../../../../electron/host/importers/index.ts';
import type { ImportDraft } from '../../../../electron/contract/HostApi.ts';
import { sampleYard } from '../../../../electron/host/sample.ts';
import { expectNear } from '../../../support/expectNear.ts';
import { jpegOf, pngOf } from '../../../support/pictureBytes.ts';
import { smallGeoTiff } from '../../../support/tiffFile.ts';

const TODAY = '2026-05-12';

function valueIn<T>(result: { readonly ok: boolean }): T {
  if (!result.ok) throw new Error(JSON.stringify(result));
  return (result as unknown as { readonly value: T }).value;
}

async function draft(fileName: string, bytes: Uint8Array) {
  const result = await draftYard({ fileName, bytes }, TODAY);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

async function problemOf(fileName: string, bytes: Uint8Array): Promise<unknown> {
  const result = await draftYard({ fileName, bytes }, TODAY);
  return result.ok ? 'no problem' : result.problems[0];
}

function geoJson(coordinates: unknown, properties: object = {}): Uint8Array {
  const feature = { type: 'Feature', properties, geometry: { type: 'Polygon', coordinates } };
  return new TextEncoder().encode(JSON.stringify({ type: 'FeatureCollection', features: [feature] }));
}

/** About 8.5 by 11 m near 40 N. */
const RING = [
  [-86.2, 39.9],
  [-86.1999, 39.9],
  [-86.1999, 39.9001],
  [-86.2, 39.9001],
  [-86.2, 39.9],
];

describe('a yard from a GeoTIFF', () => {
  test('is placed at the middle of the picture, with one pixel as corner sigma', async () => {
    const { document, images } = await draft('lot.tif', smallGeoTiff());
    const { frame, cornerSigmaM, groundDate } = document.details;
    if (frame.kind !== 'placed') throw new Error('not placed');
    // gdaltransform 3.6.2 -s_srs EPSG:32616 -t_srs EPSG:4326 of the middle, 568010 4416992.5
    expectNear(frame.origin.lonDeg, -86.2044146457142, 1e-8, '°');
    expectNear(frame.origin.latDeg, 39.9002821506586, 1e-8, '°');
    // 0.5 m on the grid of UTM 16 is 0.5 / 0.99965685 m of ground at 68 km from the central meridian (k = 0.9996 (1 + x²/2R²))
    expectNear(cornerSigmaM ?? Number.NaN, 0.5 / 0.99965685, 1e-6, 'm');
    expect(groundDate).toBe(TODAY);
    const [picture] = document.pictures;
    expect(picture).toMatchObject({
      widthPx: 40,
      heightPx: 30,
      placement: { kind: 'georeferenced', crs: 'EPSG:32616' },
    });
    expect(images).toHaveLength(1);
    expect(picture?.imageHash).toBe(
      createHash('sha256')
        .update(images[0]?.bytes ?? '')
        .digest('hex'),
    );
  });

  test('is refused where the file does not say where it lies, and how to go on is said', async () => {
    const bytes = smallGeoTiff({ pixelScale: undefined, tiePoint: undefined } as never);
    expect(await problemOf('scan.tif', bytes)).toMatchObject({
      kind: 'file/no-georeference',
      where: { fileName: 'scan.tif' },
    });
  });

  test('is refused in a system nobody knows', async () => {
    const geoKeys = [
      [1024, 1],
      [1025, 1],
      [3072, 64000],
    ] as const;
    expect(await problemOf('lot.tif', smallGeoTiff({ geoKeys }))).toMatchObject({ kind: 'file/unknown-crs' });
  });

  test('is refused where it has a size on the ground but no system at all', async () => {
    // The library that reads the keys takes none for longitude and latitude; found 2026-11-25.
    const tiePoint = [0, 0, 0, -86.2, 39.9, 0];
    const bytes = smallGeoTiff({ geoKeys: [], tiePoint, pixelScale: [1e-6, 1e-6, 0] });
    expect(await problemOf('lot.tif', bytes)).toMatchObject({ kind: 'file/unknown-crs' });
  });

  test('in longitude and latitude is placed as well', async () => {
    const geoKeys = [
      [1024, 2],
      [1025, 1],
      [2048, 4326],
    ] as const;
    const tiePoint = [0, 0, 0, -86.2, 39.9, 0];
    const { document } = await draft(
      'lot.tif',
      smallGeoTiff({ geoKeys, tiePoint, pixelScale: [1e-6, 1e-6, 0] }),
    );
    // the middle of 40 by 30 pixels of a millionth of a degree, from 86.2 W 39.9 N
    const { frame } = document.details;
    if (frame.kind !== 'placed') throw new Error('not placed');
    expectNear(frame.origin.lonDeg, -86.2 + 20e-6, 1e-12, '°');
    expectNear(frame.origin.latDeg, 39.9 - 15e-6, 1e-12, '°');
  });

  test('is refused when it shows more ground than a yard can be', async () => {
    const bytes = smallGeoTiff({ pixelScale: [5000, 5000, 0] });
    expect(await problemOf('state.tif', bytes)).toMatchObject({
      kind: 'shape/too-large',
      where: { name: 'state.tif' },
    });
  });
});

describe('a yard from a plain picture', () => {
  test('is loose, and the picture has no scale', async () => {
    const bytes = pngOf(30, 20);
    const { document, images } = await draft('Sketch of the yard.png', bytes);
    expect(document.details).toMatchObject({ name: 'Sketch of the yard', frame: { kind: 'loose' } });
    expect(document.pictures).toMatchObject([
      {
        name: 'Sketch of the yard',
        mediaType: 'image/png',
        widthPx: 30,
        heightPx: 20,
        placement: { kind: 'unscaled' },
      },
    ]);
    expect(images[0]?.bytes).toEqual(bytes);
  });

  test('is refused when the picture is cut off', async () => {
    expect(await problemOf('a.jpg', jpegOf(30, 20).slice(0, -2))).toMatchObject({ kind: 'file/unreadable' });
  });

  test('is refused when the picture is larger than a window can draw', async () => {
    expect(await problemOf('a.jpg', jpegOf(65_000, 65_000))).toMatchObject({ kind: 'file/too-many-pixels' });
  });
});

describe('a yard from outlines', () => {
  test('is placed in their middle, with names given where the file has none', async () => {
    const { document } = await draft('corner lot.geojson', geoJson([RING]));
    expect(document.details).toMatchObject({
      name: 'corner lot',
      groundDate: TODAY,
      unitSystem: 'us',
      cornerSigmaM: null,
    });
    expect(document.details.frame).toMatchObject({ kind: 'placed', origin: { latDeg: 39.90005 } }); // half of 39.9 and 39.9001
    expect(document.outlines).toMatchObject([{ kind: 'zone', name: 'zone 1' }]);
  });

  test('with thousands of nameless outlines takes no longer than reading them', async () => {
    const feature = { type: 'Feature', properties: {}, geometry: { type: 'Polygon', coordinates: [RING] } };
    const features = Array.from({ length: 15_000 }, () => feature);
    const bytes = new TextEncoder().encode(JSON.stringify({ type: 'FeatureCollection', features }));
    const started = process.cpuUsage();
    const { document } = await draft('a.geojson', bytes);
    const usedMs = process.cpuUsage(started).user / 1000;
    expect(document.outlines.at(-1)?.name).toBe('zone 15000');
    expect(usedMs).toBeLessThan(8000); // names looked up from 1 each time took 20 s (2026-11-25)
  });

  test('turns rings the right way round: outer to the left, holes to the right', async () => {
    const hole = RING.map(([lon = 0, lat = 0]) => [lon * 0.5 - 43.099975, lat * 0.5 + 19.950025]);
    const { document } = await draft('a.geojson', geoJson([[...RING].reverse(), hole]));
    const [outline] = document.outlines;
    const area = (ring: readonly { xM: number; yM: number }[] = []): number =>
      ring.reduce((sum, { xM, yM }, at) => {
        const next = ring[(at + 1) % ring.length] ?? { xM, yM };
        return sum + (xM * next.yM - next.xM * yM) / 2;
      }, 0);
    expect(area(outline && tracedRing(outline.outer))).toBeGreaterThan(0); // written clockwise, kept counter-clockwise
    expect(area(outline && outlineRings(outline)[1])).toBeLessThan(0); // written counter-clockwise, kept clockwise
  });

  test('is refused when an edge crosses itself, and the outline is named with the crossing', async () => {
    const bowTie = [RING[0], RING[2], RING[1], RING[3], RING[0]];
    const problem = await problemOf('a.geojson', geoJson([bowTie], { name: 'Front lawn' }));
    expect(problem).toMatchObject({ kind: 'shape/self-crossing', where: { name: 'Front lawn' } });
    const { crossing } = (problem as { facts: { crossing: { xM: number; yM: number } } }).facts;
    expectNear(Math.hypot(crossing.xM, crossing.yM), 0, 1e-3, 'm'); // the diagonals of a box cross in its middle
  });

  test('leaves out a hole that encloses no ground, and says so', async () => {
    const flat = [RING[0], RING[1], RING[1], RING[0]];
    const { document, notes } = await draft('a.geojson', geoJson([RING, flat], { name: 'lawn' }));
    expect(document.outlines[0]?.holes).toEqual([]);
    expect(notes.join(' ')).toContain('hole 1 of lawn');
  });

  test('is refused when it is spread over a country', async () => {
    const wide = [RING[0], [-80, 39.9], [-80, 41], RING[0]];
    expect(await problemOf('land.geojson', geoJson([wide]))).toMatchObject({ kind: 'shape/too-large' });
  });

  test('across the 180th meridian stays in one piece', async () => {
    const ring = [
      [179.9999, -17],
      [-179.9999, -17],
      [-179.9999, -16.9999],
      [179.9999, -17],
    ];
    const { document } = await draft('island.geojson', geoJson([ring]));
    const widths = document.outlines.flatMap(({ outer }) => tracedRing(outer)).map(({ xM }) => xM);
    // 0.0002° of longitude at 17 S: 0.0002 × π/180 × N cos 17°, N = a/√(1 − e² sin² 17°) = 6,379,962.6 m (WGS84)
    expectNear(
      Math.max(...widths) - Math.min(...widths),
      ((0.0002 * Math.PI) / 180) * 6_379_962.6 * Math.cos((17 * Math.PI) / 180),
      1e-4,
      'm',
    );
  });

  test('comes back from our own GeoJSON with its name, frame, units, sigma and places', async () => {
    const yard = sampleYard();
    const made = valueIn<Parameters<typeof geoJsonText>[0]>(yardToGeoJson(yard, 'x'));
    const { document } = await draft('other name.geojson', new TextEncoder().encode(geoJsonText(made)));
    expect(document.details).toEqual(yard.details);
    expect(document.outlines.map(({ kind, name }) => [kind, name])).toEqual(
      yard.outlines.map(({ kind, name }) => [kind, name]),
    );
    for (const [at, outline] of yard.outlines.entries()) {
      // Rings may start elsewhere or run the other way; each corner is there again.
      for (const corner of tracedRing(outline.outer)) {
        const there = document.outlines.slice(at, at + 1).flatMap(({ outer }) => tracedRing(outer));
        const near = there.map(({ xM, yM }) => Math.hypot(xM - corner.xM, yM - corner.yM));
        expectNear(Math.min(...near), 0, 1e-6, 'm'); // a micrometre; degrees are written at full precision
      }
    }
  });
});

describe('a slope in GeoJSON', () => {
  test('comes back from our own, and so does which area amounts are by', async () => {
    const yard = sampleYard();
    const [first, ...others] = yard.outlines;
    if (first?.kind !== 'zone') throw new Error('the sample begins with a zone');
    const sloping = { ...first, slope: { kind: 'grade', grade: 0.2 } as const };
    const details = { ...yard.details, amountsBy: 'surface' as const };
    const made = yardToGeoJson({ ...yard, details, outlines: [sloping, ...others] }, 'x');
    const text = geoJsonText(valueIn(made));
    const { document } = await draft('yard.geojson', new TextEncoder().encode(text));
    expect(document.outlines.map(({ slope }) => slope)).toEqual([
      { kind: 'grade', grade: 0.2 }, // as it was
      ...others.map(() => null),
    ]);
    expect(document.details.amountsBy).toBe('surface'); // as it was
  });

  test('that no lawn can have is left out and told', async () => {
    for (const slopeGrade of [2.5, -0.1, '20 %', Number.MAX_VALUE]) {
      const { document, notes } = await draft('bank.geojson', geoJson([RING], { slopeGrade }));
      expect(document.outlines[0]?.slope).toBeNull();
      expect(notes.join(' ')).toContain('a slope that is no grade');
    }
  });

  test('of anything but a zone is not taken', async () => {
    const { document } = await draft('bed.geojson', geoJson([RING], { kind: 'bed', slopeGrade: 0.2 }));
    expect(document.outlines[0]?.slope).toBeNull();
  });
});

test('strips all round, claims, what bars a hose and the rule for shared ground come back from our own GeoJSON', async () => {
  const yard = sampleYard();
  const kept = yard.outlines.map((outline, i) => ({
    ...outline,
    keepOffM: i % 2 === 0 ? 0.9 : null,
    claimsOverlaps: outline.kind === 'zone',
    blocksHose: outline.kind === 'zone' ? null : ([true, false, null][i % 3] ?? null),
  }));
  const details = { ...yard.details, overlapRule: 'smaller' as const };
  const made = yardToGeoJson({ ...yard, details, outlines: kept }, 'x');
  const text = geoJsonText(valueIn(made));
  const { document } = await draft('yard.geojson', new TextEncoder().encode(text));
  const said = ({ keepOffM, claimsOverlaps, blocksHose }: (typeof kept)[number]) => {
    return { keepOffM, claimsOverlaps, blocksHose };
  };
  expect(new Set(kept.map(({ blocksHose }) => blocksHose)).size).toBe(3); // yes, no and not said
  expect(document.outlines.map(said)).toEqual(kept.map(said)); // as they were
  expect(document.details.overlapRule).toBe('smaller'); // as it was
});

test('a width kept off that is none is not taken', async () => {
  for (const keepOffM of [-1, 101, '3 ft', Number.MAX_VALUE]) {
    const { document } = await draft('bed.geojson', geoJson([RING], { kind: 'bed', keepOffM }));
    expect(document.outlines[0]?.keepOffM).toBeNull();
  }
});

describe('a file brought into an open yard', () => {
  const yard = sampleYard();

  test('is one edit that adds rows with ids of their own and undoes to the same yard', async () => {
    const bytes = geoJson([RING], { kind: 'bed', name: 'new bed' });
    const { edit } = valueIn<{ edit: Parameters<typeof applyEdit>[1] }>(
      await draftImport(yard, { fileName: 'bed.geojson', bytes }),
    );
    const after = applyEdit(yard, edit);
    expect(after.outlines.at(-1)).toMatchObject({ kind: 'bed', name: 'new bed' });
    expect(new Set(after.outlines.map(({ id }) => id)).size).toBe(yard.outlines.length + 1);
    expect(applyEdit(after, inverseOf(edit))).toEqual(yard);
  });

  test('lands where it lies on earth', async () => {
    const { edit } = valueIn<{ edit: Parameters<typeof applyEdit>[1] }>(
      await draftImport(yard, { fileName: 'bed.geojson', bytes: geoJson([RING]) }),
    );
    const corners = applyEdit(yard, edit)
      .outlines.slice(-1)
      .flatMap(({ outer }) => tracedRing(outer));
    // RING begins at 86.2 W 39.9 N, the origin of the sample yard's frame
    expectNear(Math.min(...corners.map(({ xM, yM }) => Math.hypot(xM, yM))), 0, 1e-6, 'm');
  });

  test('as a picture lies in the frame of the yard', async () => {
    const { edit, images } = valueIn<ImportDraft>(
      await draftImport(yard, { fileName: 'lot.tif', bytes: smallGeoTiff() }),
    );
    const [picture] = applyEdit(yard, edit).pictures;
    if (picture?.placement.kind !== 'georeferenced') throw new Error('not placed');
    const [northWest] = picture.placement.corners;
    // gdaltransform 3.6.2 of 568000 4417000 from EPSG:32616 to tmerc on WGS84 at 39.9 N 86.2 W, scale 1
    expectNear(northWest.xM, -387.467251999465, 1e-6, 'm');
    expectNear(northWest.yM, 38.9291527645906, 1e-6, 'm'); // the same run
    expect(images.map(({ imageHash }) => imageHash)).toEqual([picture.imageHash]);
  });

  test('keeps the order of several rows through undo and redo', async () => {
    const feature = (name: string) => ({
      type: 'Feature',
      properties: { name },
      geometry: { type: 'Polygon', coordinates: [RING] },
    });
    const bytes = new TextEncoder().encode(
      JSON.stringify({ type: 'FeatureCollection', features: ['one', 'two', 'three'].map(feature) }),
    );
    const { edit } = valueIn<{ edit: Parameters<typeof applyEdit>[1] }>(
      await draftImport(yard, { fileName: 'a.geojson', bytes }),
    );
    const once = applyEdit(yard, edit);
    const again = applyEdit(applyEdit(once, inverseOf(edit)), edit);
    expect(once.outlines.slice(-3).map(({ name }) => name)).toEqual(['one', 'two', 'three']);
    expect(again).toEqual(once);
  });

  test('is refused by a loose yard when it has a place on earth', async () => {
    const loose = { ...yard, details: { ...yard.details, frame: { kind: 'loose' } as const } };
    for (const [fileName, bytes] of [
      ['a.geojson', geoJson([RING])],
      ['a.tif', smallGeoTiff()],
    ] as const) {
      expect(await draftImport(loose, { fileName, bytes })).toMatchObject({
        ok: false,
        problems: [{ kind: 'file/yard-has-no-place' }],
      });
    }
    expect(await draftImport(loose, { fileName: 'a.png', bytes: pngOf(3, 3) })).toMatchObject({ ok: true });
  });

  test('is refused when it lies in another town', async () => {
    const far = RING.map(([lon = 0, lat = 0]) => [lon + 1, lat]);
    expect(await draftImport(yard, { fileName: 'a.geojson', bytes: geoJson([far]) })).toMatchObject({
      ok: false,
      problems: [{ kind: 'shape/too-large' }],
    });
  });
});
