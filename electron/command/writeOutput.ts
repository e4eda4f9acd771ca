import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { ok, type Result, trouble } from '../../core/result.ts';
import { diskProblem } from './openInput.ts';

/**
 * Writes a file whole: under a temporary name beside its own, then renamed, so that a full disk or a kill never
 * leaves half of it. A yard file is never written over this way.
 * Problems: file/exists for a .gpkg, file/not-found (no such folder), file/read-only, file/disk-full
 */
export function writeOutput(path: string, content: string | Uint8Array): Result<null> {
  const fileName = basename(path);
  if (/\.gpkg$/i.test(path)) return trouble({ kind: 'file/exists', where: { fileName }, facts: {} });
  const temporary = `${resolve(path)}.${process.pid}.part`;
  try {
    writeFileSync(temporary, content);
    renameSync(temporary, path);
    return ok(null);
  } catch (error) {
    rmSync(temporary, { force: true });
    return trouble(diskProblem(error, fileName));
  }
}
