import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Result } from '../../../core/result.ts';
import { keepCopy } from '../../../electron/host/keepCopy.ts';
import { makeHost, type Host } from '../../../electron/host/makeHost.ts';
import { draftImport, draftYard } from '../../../electron/host/importers/index.ts';
import { sampleYard } from '../../../electron/host/sample.ts';
import { createYardFile, openYardFile } from '../../../electron/host/yardFile/index.ts';
import { fullYard, moveCorner, SKETCH } from '../../support/storedYards.ts';

let yardsFolder: string;
let hosts: Host[];

beforeEach(() => {
  yardsFolder = mkdtempSync(join(tmpdir(), 'platpace-copies-'));
  hosts = [];
});
afterEach(() => {
  for (const host of hosts) host.close();
  rmSync(yardsFolder, { recursive: true });
});

function startHost() {
  const shop = { open: openYardFile, create: createYardFile };
  const importers = { draftYard, draftImport };
  const host = makeHost({ version: '1', yardsFolder, startPath: null, shop, importers, sample: sampleYard });
  hosts.push(host);
  return host.api;
}

function unwrap<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.problems)}`);
  return result.value;
}

test('a copy kept on a day is the yard as it was then, beside the file, and later ones get a number', async () => {
  const host = startHost();
  const document = fullYard();
  const yard = unwrap(
    await host.createYard({ folder: null, fileName: 'Maple Court', document, images: [SKETCH] }),
  );
  const kept = unwrap(await host.keepCopy({ yard: yard.yard, day: '2026-05-01' }));
  expect(kept).toEqual({
    path: join(yardsFolder, 'Maple Court 2026-05-01.gpkg'),
    fileName: 'Maple Court 2026-05-01.gpkg',
  }); // name, day
  const edit = moveCorner(document, 'z1', { xM: -1, yM: -1 });
  unwrap(await host.applyEdit({ yard: yard.yard, edit, sequence: 0, images: [] }));
  expect(unwrap(await host.readYard({ path: kept.path }))).toEqual(document); // as it was before the edit
  expect(unwrap(await host.readYard({ path: yard.path }))).not.toEqual(document);
  const again = unwrap(await host.keepCopy({ yard: yard.yard, day: '2026-05-01' }));
  expect(again.fileName).toBe('Maple Court 2026-05-01 2.gpkg'); // the second of that day
  expect(unwrap(await host.readYard({ path: again.path }))).toEqual(
    unwrap(await host.readYard({ path: yard.path })),
  );
});

test('reading a yard takes no hold of it: another window still opens it for writing', async () => {
  const [mine, theirs] = [startHost(), startHost()];
  const ask = { folder: null, fileName: 'Maple Court', document: fullYard(), images: [SKETCH] };
  const made = unwrap(await mine.createYard(ask));
  // Open for writing in one window, it can be read from the other.
  expect(unwrap(await theirs.readYard({ path: made.path }))).toEqual(fullYard()); // what was made
  unwrap(await mine.closeYard({ yard: made.yard }));
  expect(unwrap(await mine.readYard({ path: made.path }))).toEqual(fullYard()); // what was made
  expect(unwrap(await theirs.openYard({ path: made.path })).readOnly).toBe(false);
  expect(readdirSync(yardsFolder).filter((name) => name.endsWith('.gpkg'))).toEqual(['Maple Court.gpkg']);
});

test('what is no yard cannot be read, and a handle that is not open keeps nothing', async () => {
  const host = startHost();
  expect(await host.readYard({ path: join(yardsFolder, 'gone.gpkg') })).toMatchObject({
    ok: false,
    problems: [{ kind: 'file/not-found' }],
  });
  expect(await host.keepCopy({ yard: 'h1', day: '2026-05-01' })).toMatchObject({
    ok: false,
    problems: [{ kind: 'host/unknown-yard' }],
  });
});

test('a folder full of names gives up with the name it wanted', () => {
  const taken = {
    ok: false,
    problems: [{ kind: 'file/exists', where: { fileName: 'x' }, facts: {} }],
  } as const;
  let tries = 0;
  const saveCopy = () => {
    tries += 1;
    return taken;
  };
  const store = { saveCopy } as unknown as Parameters<typeof keepCopy>[1];
  expect(keepCopy('/yards/Lot.gpkg', store, '2026-05-01')).toMatchObject({
    problems: [{ kind: 'file/exists', where: { fileName: 'Lot 2026-05-01.gpkg' } }],
  });
  expect(tries).toBe(100); // the most it tries in a day
});
