import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ProblemKind } from '../../../core/problems.ts';
import type { Result } from '../../../core/result.ts';
import type { HostApi, OpenedYard } from '../../../electron/contract/HostApi.ts';
import { draftImport, draftYard } from '../../../electron/host/importers/index.ts';
import { type Host, makeHost } from '../../../electron/host/makeHost.ts';
import { openDoor } from '../../../electron/host/openDoor.ts';
import { sampleYard } from '../../../electron/host/sample.ts';
import { createYardFile, openYardFile } from '../../../electron/host/yardFile/index.ts';
import { fullYard, moveCorner, SKETCH } from '../../support/storedYards.ts';

let home: string;
let yardsFolder: string;
const hosts: Host[] = [];

function startHost(startPath: string | null = null): HostApi {
  const host = makeHost({
    version: '1.2.3',
    yardsFolder,
    startPath,
    shop: { open: openYardFile, create: createYardFile },
    importers: { draftYard, draftImport },
    sample: sampleYard,
  });
  hosts.push(host);
  return host.api;
}

beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'platpace-home-'));
  yardsFolder = join(home, 'Documents', 'Platpace');
});

afterEach(() => {
  for (const host of hosts.splice(0)) host.close();
  rmSync(home, { recursive: true });
});

function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.problems)}`);
  return result.value;
}

function kindOf(result: Result<unknown>): ProblemKind | undefined {
  return result.ok ? undefined : result.problems[0].kind;
}

async function create(host: HostApi, fileName = 'Maple Court'): Promise<OpenedYard> {
  const ask = { folder: null, fileName, document: fullYard(), images: [SKETCH] };
  return unwrap(await host.createYard(ask));
}

describe('the first start', () => {
  test('makes the yards folder and shows the sample in it', async () => {
    const greeting = unwrap(await startHost().greet({}));
    const startPath = join(yardsFolder, 'Sample yard.gpkg');
    expect(greeting).toEqual({ version: '1.2.3', yardsFolder, startPath }); // as given above
    const opened = unwrap(await startHost().openYard({ path: startPath }));
    expect(opened.document).toEqual(sampleYard()); // the sample itself
  });

  test('of a later day shows what was changed last, and makes no second sample', async () => {
    const first = startHost();
    await first.greet({});
    const yard = await create(first);
    const edit = moveCorner(yard.document, 'z1', { xM: -1, yM: -1 });
    unwrap(await first.applyEdit({ yard: yard.yard, edit, sequence: 0, images: [] }));
    const greeting = unwrap(await startHost().greet({}));
    expect(greeting.startPath).toBe(yard.path);
    const names = unwrap(await first.listFolder({ folder: null })).entries.map(({ name }) => name);
    expect(names).toEqual(['Maple Court.gpkg', 'Sample yard.gpkg']); // the two that were made, by name
  });

  test('on a named yard shows that one', async () => {
    const greeting = unwrap(await startHost('/yards/a.gpkg').greet({}));
    expect(greeting.startPath).toBe('/yards/a.gpkg'); // as named
  });

  test('still greets where the folder cannot be made', async () => {
    writeFileSync(join(home, 'Documents'), 'a file where the folder should be');
    expect(unwrap(await startHost().greet({})).startPath).toBeNull();
  });
});

describe('the folder', () => {
  test('shows folders, then yards, each by name as people count; nothing hidden, nothing else', async () => {
    mkdirSync(join(home, 'b folder'));
    mkdirSync(join(home, '.hidden'));
    for (const name of ['Yard 10.gpkg', 'Yard 2.gpkg', 'notes.txt', '.secret.gpkg', 'Yard 2.gpkg-open']) {
      writeFileSync(join(home, name), '');
    }
    symlinkSync(join(home, 'nowhere'), join(home, 'broken.gpkg'));
    const listing = unwrap(await startHost().listFolder({ folder: home }));
    const shown = listing.entries.map(({ kind, name }) => `${kind} ${name}`);
    expect(shown).toEqual(['folder b folder', 'yard Yard 2.gpkg', 'yard Yard 10.gpkg']); // of those made above
    expect(listing.parent).not.toBeNull();
  });

  test('that is not there is a problem', async () => {
    expect(kindOf(await startHost().listFolder({ folder: join(home, 'gone') }))).toBe('file/not-found');
  });
});

describe('an open yard', () => {
  test('is what was made, and a name that is taken is not overwritten', async () => {
    const host = startHost();
    const yard = await create(host);
    expect(yard.document).toEqual(fullYard()); // what was handed over
    expect([yard.fileName, yard.readOnly]).toEqual(['Maple Court.gpkg', false]); // the name with our ending
    const again = { folder: null, fileName: 'Maple Court', document: fullYard(), images: [] };
    expect(kindOf(await host.createYard(again))).toBe('file/exists');
  });

  test('takes an edit once: the same sequence again is stale', async () => {
    const host = startHost();
    const { yard, document } = await create(host);
    const edit = moveCorner(document, 'z1', { xM: -1, yM: -1 });
    const history = unwrap(await host.applyEdit({ yard, edit, sequence: 0, images: [] }));
    expect(history.sequence).toBe(1); // the first edit of a new yard
    expect(kindOf(await host.applyEdit({ yard, edit, sequence: 0, images: [] }))).toBe('host/stale-edit');
    expect(unwrap(await host.undo({ yard })).history.sequence).toBe(2); // one more for the undo
    expect(unwrap(await host.redo({ yard })).history.sequence).toBe(3); // and for the redo
  });

  test('that a reloaded window opens again is the same yard, not a locked one', async () => {
    const host = startHost();
    const first = await create(host);
    const second = unwrap(await host.openYard({ path: first.path }));
    expect(second.readOnly).toBe(false);
    expect(second.yard).not.toBe(first.yard);
    const edit = moveCorner(first.document, 'z1', { xM: -1, yM: -1 });
    unwrap(await host.applyEdit({ yard: second.yard, edit, sequence: 0, images: [] }));
    const late = await host.applyEdit({ yard: first.yard, edit, sequence: 0, images: [] });
    expect(kindOf(late)).toBe('host/stale-edit');
    unwrap(await host.closeYard({ yard: first.yard }));
    expect(unwrap(await host.undo({ yard: second.yard })).step).not.toBeNull();
  });

  test('in another host can be looked at but not changed', async () => {
    const { path, document } = await create(startHost());
    const other = startHost();
    const looked = unwrap(await other.openYard({ path }));
    expect(looked.readOnly).toBe(true);
    const edit = moveCorner(document, 'z1', { xM: -1, yM: -1 });
    const refused = await other.applyEdit({ yard: looked.yard, edit, sequence: 0, images: [] });
    expect(kindOf(refused)).toBe('file/read-only');
  });

  test('is not open any more once it is closed, and a handle cannot be made up', async () => {
    const host = startHost();
    const { yard } = await create(host);
    unwrap(await host.closeYard({ yard }));
    for (const handle of [yard, 'made-up']) {
      expect(kindOf(await host.undo({ yard: handle }))).toBe('host/unknown-yard');
      expect(kindOf(await host.makeGeoJson({ yard: handle }))).toBe('host/unknown-yard');
      expect(kindOf(await host.readImage({ yard: handle, imageHash: SKETCH.imageHash }))).toBe(
        'host/unknown-yard',
      );
    }
  });

  test('gives its pictures, a sheet and its outlines as files named after it', async () => {
    const host = startHost();
    const { yard } = await create(host);
    const image = unwrap(await host.readImage({ yard, imageHash: SKETCH.imageHash }));
    expect(image.bytes).toEqual(SKETCH.bytes); // as handed over
    const pages = [{ widthMm: 210, heightMm: 297, marks: [] }];
    const pdf = unwrap(await host.makePdf({ yard, title: 'May', madeAt: '2026-05-01T08:00:00Z', pages }));
    expect([pdf.fileName, pdf.mediaType]).toEqual(['Maple Court.pdf', 'application/pdf']); // RFC 8118
    expect(new TextDecoder().decode(pdf.bytes.subarray(0, 5))).toBe('%PDF-'); // ISO 32000-1, 7.5.2
    const outlines = unwrap(await host.makeGeoJson({ yard }));
    expect(outlines.fileName).toBe('Maple Court.geojson');
    expect(JSON.parse(new TextDecoder().decode(outlines.bytes)).type).toBe('FeatureCollection'); // RFC 7946, 3.3
    // Of the yard made above, its picture and the rest of its book stay behind, and that is said.
    expect(outlines.notes.join(' ')).toContain('Not in GeoJSON: 1 picture');
  });
});

describe('the door', () => {
  test('turns a Defect into a problem, tells it, and goes on answering', async () => {
    const told: unknown[] = [];
    const broken: HostApi = { ...startHost(), undo: () => Promise.reject(new Error('a broken contract')) };
    const door = openDoor(broken, (error) => told.push(error));
    const answer = await door('undo', { yard: 'h1' });
    expect(kindOf(answer)).toBe('host/defect');
    expect(told).toHaveLength(1); // the one fault
    expect(kindOf(await door('redo', { yard: 'h1' }))).toBe('host/unknown-yard');
  });

  test('lets nothing by that has not passed the guards', async () => {
    const door = openDoor(startHost(), () => {});
    expect(kindOf(await door('openYard', { path: 7 }))).toBe('host/bad-request');
    expect(kindOf(await door('constructor', {}))).toBe('host/bad-request');
  });
});
