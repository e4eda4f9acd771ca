import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createYardFile, openYardFile } from '../../electron/host/yardFile/index.ts';
import type { YardPlace } from './yardStoreContract.ts';

export interface YardFolder extends YardPlace {
  readonly folder: string;
}

/** A folder of its own for yard files; `leave` removes it. */
export function yardFolder(): YardFolder {
  const folder = mkdtempSync(join(tmpdir(), 'platpace-'));
  const path = (name: string) => join(folder, `${name}.gpkg`);
  return {
    folder,
    create: (name, yard, images) => createYardFile(path(name), yard, images),
    open: (name, readOnly = false) => openYardFile(path(name), { readOnly }),
    path,
    leave: () => rmSync(folder, { recursive: true, force: true }),
  };
}
