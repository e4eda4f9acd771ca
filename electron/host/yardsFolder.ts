import { mkdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Yard } from '../../core/yard.ts';
import { listFolder } from './listFolder.ts';
import type { YardShop } from './OpenYards.ts';

/** Where yards live: what PLATPACE_YARDS says, else Documents/Platpace under the person's home. */
export function defaultYardsFolder(environment: NodeJS.ProcessEnv): string {
  const chosen = environment.PLATPACE_YARDS;
  return chosen ? resolve(chosen) : join(homedir(), 'Documents', 'Platpace');
}

/**
 * The yard to show when none was named: the one changed last. On the first start, when there is no folder or
 * nothing in it yet, the sample yard is put there.
 */
export function firstYardPath(folder: string, shop: YardShop, sample: () => Yard): string | null {
  makeFolder(folder);
  const listing = listFolder(folder);
  if (!listing.ok) return null;
  const { entries } = listing.value;
  if (entries.length === 0) return makeSample(join(folder, 'Sample yard.gpkg'), shop, sample());
  const yards = entries.filter((entry) => entry.kind === 'yard');
  const newest = Math.max(...yards.map((entry) => entry.changedAtMs));
  return yards.find((entry) => entry.changedAtMs === newest)?.path ?? null;
}

function makeSample(path: string, shop: YardShop, sample: Yard): string | null {
  const made = shop.create(path, sample, []);
  if (made.ok) made.value.close();
  return made.ok ? path : null;
}

/** Makes a folder unless it is there. One that cannot be made is found missing by whatever is put in it. */
export function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch {
    return;
  }
}
