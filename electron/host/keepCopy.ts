import { basename, dirname, join } from 'node:path';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { YardStore } from '../../core/yardFile/index.ts';
import type { KeptCopy } from '../contract/HostApi.ts';

/** Nobody keeps more states of one day than this; it keeps a search that finds every name taken from running on. */
const MOST_A_DAY = 100;

/**
 * Puts a whole copy beside a yard file: 'Yard 2026-05-01.gpkg', and where that is taken 'Yard 2026-05-01 2.gpkg'.
 *
 * Problems: those of `saveCopy`; file/exists when a day's names are used up
 */
export function keepCopy(path: string, store: YardStore, day: string): Result<KeptCopy> {
  const stem = basename(path).replace(/\.gpkg$/i, '');
  for (let count = 1; count <= MOST_A_DAY; count++) {
    const fileName = `${stem} ${day}${count === 1 ? '' : ` ${count}`}.gpkg`;
    const kept = join(dirname(path), fileName);
    const copied = store.saveCopy(kept);
    if (copied.ok) return ok({ path: kept, fileName });
    if (copied.problems[0].kind !== 'file/exists') return copied;
  }
  return trouble({ kind: 'file/exists', where: { fileName: `${stem} ${day}.gpkg` }, facts: {} });
}
