import { readdirSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { Problem } from '../../core/problems.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { FolderEntry, FolderListing } from '../contract/HostApi.ts';

/**
 * What a person may choose in a folder: sub-folders, then yard files, each by name. Hidden ones and whatever
 * cannot be looked at are left out.
 * Problems: file/not-found, file/unreadable
 */
export function listFolder(givenPath: string): Result<FolderListing> {
  const folder = resolve(givenPath);
  try {
    const entries = readdirSync(folder).flatMap((name) => entryOf(folder, name));
    const parent = dirname(folder);
    return ok({ folder, parent: parent === folder ? null : parent, entries: entries.sort(byKindAndName) });
  } catch (error) {
    return trouble(folderProblem(folder, error));
  }
}

function isYardName(name: string): boolean {
  return /\.gpkg$/i.test(name) && !name.startsWith('.');
}

function entryOf(folder: string, name: string): readonly FolderEntry[] {
  if (name.startsWith('.')) return [];
  const path = join(folder, name);
  try {
    const stat = statSync(path);
    const kind = stat.isDirectory() ? 'folder' : stat.isFile() && isYardName(name) ? 'yard' : null;
    return kind === null ? [] : [{ kind, name, path, changedAtMs: stat.mtimeMs }];
  } catch {
    return []; // a link to nowhere, or gone since the folder was read
  }
}

/** By name as a person counts: "Yard 2" before "Yard 10". */
const NAMES = new Intl.Collator('en', { numeric: true });

function byKindAndName(a: FolderEntry, b: FolderEntry): number {
  return a.kind === b.kind ? NAMES.compare(a.name, b.name) : a.kind === 'folder' ? -1 : 1;
}

function folderProblem(folder: string, error: unknown): Problem {
  const code = (error as { readonly code?: unknown }).code;
  const where = { fileName: basename(folder) || folder };
  return code === 'ENOENT' || code === 'ENOTDIR'
    ? { kind: 'file/not-found', where, facts: {} }
    : { kind: 'file/unreadable', where, facts: { detail: `the system says ${String(code)}` } };
}
