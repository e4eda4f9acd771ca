import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import type { Problem } from '../../core/problems.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import type { StoredImage } from '../../core/yardFile/index.ts';
import { draftYard, fileKindOf, MOST_GEOJSON_BYTES } from '../host/importers/index.ts';

/** A yard read from a file, and what was said on the way in. */
export interface OpenedInput {
  readonly yard: Yard;
  readonly from: 'yard-file' | 'geojson';
  readonly notes: readonly string[];
  /** Looks up a picture of a yard file; GeoJSON has none. */
  readonly readImage: (imageHash: string) => StoredImage | undefined;
  readonly close: () => void;
}

const SQLITE_SIGNATURE = 'SQLite format 3\0';

/**
 * Opens a yard file for reading only, or reads GeoJSON; told apart by content.
 * Problems: file/ of every kind, shape/ of a broken outline
 */
export async function openInput(path: string): Promise<Result<OpenedInput>> {
  const read = readWhole(path);
  if (!read.ok) return read;
  if (read.value === 'database') return openYardFileFor(path);
  const bytes = read.value;
  const fileName = basename(path);
  const { kind, ...rest } = fileKindOf(fileName, bytes);
  if (kind !== 'geojson') {
    const found = kind === null && 'found' in rest ? String(rest.found) : 'a picture';
    return trouble({ kind: 'file/not-a-yard', where: { fileName }, facts: { found } });
  }
  const drafted = await draftYard({ fileName, bytes });
  if (!drafted.ok) return drafted;
  const { document, notes } = drafted.value;
  return ok({ yard: document, from: 'geojson', notes, readImage: () => undefined, close: () => {} });
}

async function openYardFileFor(path: string): Promise<Result<OpenedInput>> {
  // Loaded only here, so that GeoJSON is planned without the database's native code.
  const { openYardFile } = await import('../host/yardFile/index.ts');
  const opened = openYardFile(path, { readOnly: true });
  if (!opened.ok) return opened;
  const store = opened.value;
  const yard = store.readYard();
  if (!yard.ok) {
    store.close();
    return yard;
  }
  return ok({
    yard: yard.value,
    from: 'yard-file',
    notes: [],
    readImage: (imageHash) => {
      const image = store.readImage(imageHash);
      return image.ok ? image.value : undefined;
    },
    close: () => store.close(),
  });
}

function readWhole(path: string): Result<Uint8Array | 'database'> {
  const fileName = basename(path);
  try {
    const stats = statSync(path);
    if (stats.isDirectory()) {
      return trouble({ kind: 'file/not-a-yard', where: { fileName }, facts: { found: 'a folder' } });
    }
    if (stats.size > MOST_GEOJSON_BYTES && !/\.(geo)?json$/i.test(path)) return ok('database');
    if (stats.size > MOST_GEOJSON_BYTES) {
      const facts = { bytes: stats.size, mostBytes: MOST_GEOJSON_BYTES };
      return trouble({ kind: 'file/too-large', where: { fileName }, facts });
    }
    const bytes = readFileSync(path);
    return ok(bytes.subarray(0, 16).toString('latin1') === SQLITE_SIGNATURE ? 'database' : bytes);
  } catch (error) {
    return trouble(diskProblem(error, fileName));
  }
}

/** What the disk said, as a problem. */
export function diskProblem(error: unknown, fileName: string): Problem {
  const code = (error as { readonly code?: unknown }).code;
  const where = { fileName };
  if (code === 'ENOENT' || code === 'ENOTDIR') return { kind: 'file/not-found', where, facts: {} };
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') {
    return { kind: 'file/read-only', where, facts: {} };
  }
  if (code === 'ENOSPC' || code === 'EDQUOT') return { kind: 'file/disk-full', where, facts: {} };
  const detail = error instanceof Error ? error.message : 'the disk gives no reason';
  return { kind: 'file/unreadable', where, facts: { detail } };
}
