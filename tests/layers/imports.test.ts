import { describe, expect, test } from 'vitest';
import { readSources, type SourceFile } from '../support/sourceFiles.ts';
import { faultOf } from './layers.ts';

const SOURCES = readSources('core', 'electron', 'renderer');
const BY_PATH = new Map(SOURCES.map((file) => [file.path, file]));

test('the sources are read, and imports are found in them', () => {
  expect(SOURCES.length).toBeGreaterThan(100);
  expect(BY_PATH.get('electron/host/makeHost.ts')?.imports).toContainEqual({
    target: 'electron/host/listFolder.ts', // its import './listFolder.ts'
    isOurs: true,
    isTypeOnly: false,
    isApart: false,
  });
});

test('every import is one the table allows', () => {
  const faults = SOURCES.flatMap((file) => file.imports.flatMap((each) => faultOf(file, each) ?? []));
  expect(faults).toEqual([]); // house rule: who may import whom
});

test('every import of ours names a file that is there', () => {
  const missing = SOURCES.flatMap((file) =>
    file.imports
      .filter(({ isOurs, target }) => isOurs && /\.tsx?$/.test(target) && !BY_PATH.has(target))
      .map(({ target }) => `${file.path} -> ${target}`),
  );
  expect(missing).toEqual([]); // an import that leads nowhere is a typing error
});

test('no file needs itself in order to run', () => {
  expect(findCycles(SOURCES)).toEqual([]); // a cycle has no first file
});

/** Every package a script brings along from its first file on. */
function packagesOf(first: string): ReadonlySet<string> {
  const seen = new Set([first]);
  const packages = new Set<string>();
  for (const path of seen) {
    for (const { target, isOurs, isTypeOnly, isApart } of BY_PATH.get(path)?.imports ?? []) {
      if (isTypeOnly || isApart) continue;
      (isOurs ? seen : packages).add(target);
    }
  }
  return packages;
}

describe('the list of coordinate systems, a megabyte, is fetched only by what reads places', () => {
  test('the window opens without it, and the Ground page brings it', () => {
    expect(packagesOf('renderer/main.tsx')).not.toContain('proj4-list'); // core/crs imports it, core/earth not
    expect(packagesOf('renderer/ground/GroundPage.tsx')).toContain('proj4-list'); // it reads places as typed
  });

  test('the planner brings along the kernel and no projection at all', () => {
    const packages = packagesOf('renderer/planning/planWorker.ts');
    expect(packages).toContain('clipper2-ts'); // the kernel's, so that the walk over the imports is seen to work
    expect([...packages].filter((name) => name.startsWith('proj4'))).toEqual([]); // plans are in yard metres
  });
});

describe('the rules catch what they are for', () => {
  const wrong = (path: string, target: string, isTypeOnly = false) =>
    faultOf(fileAt(path), {
      target,
      isOurs: target.includes('/') && target.endsWith('.ts'),
      isTypeOnly,
      isApart: false,
    });

  test.each([
    ['core/kernel/union.ts', 'core/zones/index.ts'],
    ['core/kernel/union.ts', 'node:fs'],
    ['core/zones/resolve.ts', 'core/kernel/union.ts'],
    ['core/products/rate.ts', 'core/applicators/index.ts'],
    ['core/sheet/page.ts', 'core/yardFile/index.ts'],
    ['core/area/net.ts', 'clipper2-ts'],
    ['core/area/net.ts', 'electron/contract/HostApi.ts'],
    ['core/area/net.ts', 'tests/support/builders.ts'],
    ['electron/host/makeHost.ts', 'electron/shell/main.ts'],
    ['electron/host/makeHost.ts', 'better-sqlite3'],
    ['electron/host/makeHost.ts', 'electron'],
    ['electron/contract/guards.ts', 'electron/host/makeHost.ts'],
    ['electron/shell/menu.ts', 'electron'],
    ['electron/start/start.mjs', 'vite'],
    ['renderer/mix/MixPage.tsx', 'renderer/walk/WalkPage.ts'],
    ['renderer/mix/MixPage.tsx', 'electron/contract/guards.ts'],
    ['renderer/mix/MixPage.tsx', 'leaflet'],
    ['renderer/app/BookShell.tsx', 'electron/host/makeHost.ts'],
  ])('%s may not import %s', (path, target) => {
    expect(wrong(path, target)).toBeDefined();
  });

  test('a cycle is found', () => {
    const cycle = [fileAt('a.ts', 'b.ts'), fileAt('b.ts', 'c.ts'), fileAt('c.ts', 'b.ts')];
    expect(findCycles(cycle)).toEqual(['b.ts -> c.ts -> b.ts']); // b needs c and c needs b, as written above
  });
});

function fileAt(path: string, ...targets: readonly string[]): SourceFile {
  const imports = targets.map((target) => ({ target, isOurs: true, isTypeOnly: false, isApart: false }));
  return { path, text: '', code: '', imports };
}

/** Cycles of imports that are there when the types are stripped, each told once from where it is met. */
function findCycles(files: readonly SourceFile[]): readonly string[] {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const done = new Set<string>();
  const cycles: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) cycles.push([...trail.slice(at), path].join(' -> '));
    if (at >= 0 || done.has(path)) return;
    for (const { target, isOurs, isTypeOnly } of byPath.get(path)?.imports ?? []) {
      if (isOurs && !isTypeOnly && byPath.has(target)) visit(target, [...trail, path]);
    }
    done.add(path);
  };
  for (const { path } of files) visit(path, []);
  return cycles;
}
