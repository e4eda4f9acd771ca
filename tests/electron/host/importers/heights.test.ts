import { describe, expect, test } from 'vitest';
import { straight } from '../../../../core/curves/index.ts';
import { applyEdit, emptyYard, inverseOf, newOutline } from '../../../../core/edits/index.ts';
import { problemText } from '../../../../core/problemText.ts';
import { surfaceByFacets } from '../../../../core/slope/index.ts';
import type { Elevation, Yard } from '../../../../core/yard.ts';
import { draftImport, draftYard } from '../../../../electron/host/importers/index.ts';
import { rect, region } from '../../../support/builders.ts';
import { expectNear } from '../../../support/expectNear.ts';
import { smallDem, smallGeoTiff, type TiffSpec } from '../../../support/tiffFile.ts';

/** UTM 16 north 568060 4416960, the middle of `smallDem`: gdaltransform 3.6.2 -s_srs EPSG:32616 -t_srs EPSG:4326. */
const MIDDLE = { lonDeg: -86.2038331843884, latDeg: 39.8999853414282 };
/** Ground metres in one metre of that grid: k = 0.9996 (1 + x²/2R²), 68 km from the central meridian. */
const GRID_SCALE = 1 / 0.99965685;

function yardWith(...rings: readonly ReturnType<typeof rect>[]): Yard {
  const empty = emptyYard('Hillside', { kind: 'placed', origin: MIDDLE }, 'metric', '2026-05-12');
  const outlines = rings.map((ring, i) =>
    newOutline({ id: `zone-${i}`, kind: 'zone', name: `zone ${i}`, outer: straight(ring), holes: [] }),
  );
  return { ...empty, outlines };
}

const YARD = yardWith(rect(-10, -8, 20, 16));

async function broughtIn(more: Partial<TiffSpec> = {}, into: Yard = YARD) {
  const draft = await draftImport(into, { fileName: 'slopes of the hill.tif', bytes: smallDem(more) });
  if (!draft.ok) throw new Error(JSON.stringify(draft.problems));
  const yard = applyEdit(into, draft.value.edit);
  return { ...draft.value, yard, elevation: yard.elevations.at(-1) as Elevation };
}

async function problemOf(more: Partial<TiffSpec> = {}, into: Yard = YARD) {
  const draft = await draftImport(into, { fileName: 'hill.tif', bytes: smallDem(more) });
  if (draft.ok) throw new Error('taken');
  return draft.problems[0];
}

describe('an elevation grid brought into a yard', () => {
  test('is kept over the outlines and ten metres round them, and nothing else of it', async () => {
    const { elevation, notes, yard, edit } = await broughtIn();
    const [northWest, , southEast] = elevation.corners;
    // The zone reaches 10 m west, with the margin 20; one node more, 2 m, may be needed to hold that.
    expect(northWest.xM).toBeLessThanOrEqual(-20);
    expect(northWest.xM).toBeGreaterThan(-20 - 2 * GRID_SCALE - 1);
    expect(southEast.yM).toBeLessThanOrEqual(-18);
    expect(southEast.yM).toBeGreaterThan(-18 - 2 * GRID_SCALE - 1);
    expect(elevation.heightsMm).toHaveLength(elevation.columns * elevation.rows);
    expect(elevation.name).toBe('slopes of the hill'); // the file's name
    expect(notes.join(' ')).toMatch(/Kept of it: \d+ × \d+ heights, 2.00 m apart, from 20\d/);
    expect(applyEdit(yard, inverseOf(edit))).toEqual(YARD); // undone
  });

  test('lies where it lies on earth, a height at the middle of each pixel', async () => {
    const { elevation } = await broughtIn({}, yardWith(rect(-58, -38, 116, 76)));
    const [northWest, northEast] = elevation.corners;
    expect([elevation.columns, elevation.rows]).toEqual([60, 40]); // all of the file
    expect(elevation.heightsMm.slice(0, 2)).toEqual([200_000, 200_300]); // 200 m, and 0.3 m more
    expectNear(
      Math.hypot(northEast.xM - northWest.xM, northEast.yM - northWest.yM),
      118 * GRID_SCALE,
      1e-3,
      'm',
    ); // 59 steps of 2 m
    // The file's outer corner is 60 m west and 40 m north of the middle, the first node a pixel's half further in:
    // 59 m and 39 m, whatever way the grid is turned here.
    expectNear(Math.hypot(northWest.xM, northWest.yM), Math.hypot(59, 39) * GRID_SCALE, 1e-4, 'm');
  });

  test('gives a zone on a tilted plane the plane’s factor', async () => {
    const { elevation } = await broughtIn();
    const found = surfaceByFacets([region(rect(-10, -8, 20, 16))], elevation);
    const grade = Math.hypot(0.15, 0.08) / GRID_SCALE; // 0.3 m and 0.16 m in 2 m of the grid
    expectNear(found.coveredM2, 320, 1e-6, 'm²'); // 20 × 16
    expectNear(found.surfaceM2 / 320, Math.sqrt(1 + grade ** 2), 1e-6, ''); // √(1 + g²)
  });

  test('with pixels that are points lies half a pixel elsewhere', async () => {
    const asArea = (await broughtIn()).elevation.corners[0];
    const geoKeys = [
      [1024, 1],
      [1025, 2],
      [3072, 32616],
    ] as const;
    const asPoint = (await broughtIn({ geoKeys })).elevation.corners[0];
    // Half a pixel, 1 m, west and north: √2 m of the grid, or a whole number of nodes of 2 m from there.
    const apart = [asPoint.xM - asArea.xM, asPoint.yM - asArea.yM].map((shiftM) =>
      Math.abs(shiftM / GRID_SCALE),
    );
    for (const shiftM of apart) expectNear(Math.abs((shiftM % 2) - 1), 0, 0.06, 'm'); // an odd number of metres, turned by 0.5°
  });

  test('from the south to the north is turned round', async () => {
    const northUp = await broughtIn();
    const matrix = [2, 0, 0, 568000, 0, 2, 0, 4416920, 0, 0, 0, 0, 0, 0, 0, 1];
    const southUp = await broughtIn({
      pixelScale: undefined as never,
      tiePoint: undefined as never,
      matrix,
      sampleAt: (x, y) => 200 + 0.3 * x + 0.16 * (39 - y),
    });
    expect(southUp.elevation.heightsMm).toEqual(northUp.elevation.heightsMm); // the same ground
    expectNear(southUp.elevation.corners[0].yM, northUp.elevation.corners[0].yM, 1e-6, 'm'); // the same place
  });

  test('keeps places without a height as such, and counts them', async () => {
    const { elevation, notes } = await broughtIn({
      noData: '-9999',
      sampleAt: (x, y) => (x === 30 && y === 20 ? -9999 : 200),
    });
    expect(elevation.heightsMm.filter((height) => height === null)).toHaveLength(1); // the one written
    expect(notes.join(' ')).toContain('; 1 of the places have no height');
  });

  test('gets an id of its own beside the first', async () => {
    const first = await broughtIn();
    const second = await broughtIn({}, first.yard);
    expect(second.yard.elevations.map(({ id }) => id)).toEqual(['elevation-1', 'elevation-2']); // counted on
  });
});

describe('an elevation grid is refused', () => {
  test('by a yard that is nowhere on earth', async () => {
    const loose = { ...YARD, details: { ...YARD.details, frame: { kind: 'loose' } as const } };
    expect((await problemOf({}, loose)).kind).toBe('file/yard-has-no-place');
  });

  test('by a yard with no outlines, which say what of it to keep', async () => {
    expect((await problemOf({}, yardWith())).kind).toBe('file/heights-alone');
  });

  test('as the beginning of a yard, and how to go on is said', async () => {
    const draft = await draftYard({ fileName: 'hill.tif', bytes: smallDem() });
    if (draft.ok) throw new Error('taken');
    expect(draft.problems[0].kind).toBe('file/heights-alone');
    expect(problemText(draft.problems[0], 'us').mend).toContain('Ground page');
  });

  test('when it is of another place, or has nothing but no-data here', async () => {
    expect((await problemOf({}, yardWith(rect(1500, 0, 20, 20)))).kind).toBe('file/heights-elsewhere');
    const other = {
      ...YARD,
      details: { ...YARD.details, frame: { kind: 'placed', origin: { lonDeg: 94, latDeg: -40 } } as const },
    };
    expect((await problemOf({}, other)).kind).toBe('file/heights-elsewhere');
    expect((await problemOf({ noData: '5', sampleAt: () => 5 })).kind).toBe('file/heights-elsewhere');
  });

  test('when too many of its heights lie over the yard, and what to do is said', async () => {
    const fine = { widthPx: 600, heightPx: 500, pixelScale: [0.2, 0.2, 0], sampleAt: () => 200 };
    const problem = await problemOf(fine, yardWith(rect(-70, -70, 140, 120)));
    expect(problem).toMatchObject({
      kind: 'file/too-many-heights',
      facts: { heights: 300_000, most: 250_000 },
    }); // 600 × 500
    expect(problemText(problem, 'us').mend).toContain('coarser');
  });

  test('when its system is unknown', async () => {
    const geoKeys = [
      [1024, 1],
      [1025, 1],
      [3072, 65000],
    ] as const;
    expect((await problemOf({ geoKeys })).kind).toBe('file/unknown-crs');
  });

  test('when its heights are cut off', async () => {
    const bytes = smallDem();
    const whole = smallDem({ widthPx: 60, heightPx: 40 });
    expect(bytes).toEqual(whole); // the helper is the same each time
    const damaged = smallDem({ strip: new Uint8Array(100) });
    const draft = await draftImport(YARD, { fileName: 'hill.tif', bytes: damaged });
    expect(draft.ok).toBe(false);
  });

  test('a picture beside it is still a picture', async () => {
    const draft = await draftImport(YARD, { fileName: 'lot.tif', bytes: smallGeoTiff() });
    if (!draft.ok) throw new Error(JSON.stringify(draft.problems));
    expect(draft.value.edit.changes.map(({ part }) => part)).toEqual(['pictures']); // no heights
  });
});
