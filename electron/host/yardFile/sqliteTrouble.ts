import { basename } from 'node:path';
import Database from 'better-sqlite3';
import type { Problem } from '../../../core/problems.ts';
import { Defect, type Result, type Trouble, trouble } from '../../../core/result.ts';
import type { Unreadable } from '../../../core/yardFile/index.ts';

/** Something expected went wrong inside a transaction: carries its problems past the rollback. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly trouble: Trouble;

  constructor(problem: Problem) {
    super(problem.kind);
    this.trouble = trouble(problem);
  }
}

/** The file's content is not what this program writes. */
export function damaged(path: string, detail: string): Problem {
  return { kind: 'file/damaged', where: { fileName: basename(path) }, facts: { detail } };
}

/** The value, or a Refusal when the file's content could not be read. */
export function readable<T>(path: string, reading: { readonly ok: true; readonly value: T } | Unreadable): T {
  if (reading.ok) return reading.value;
  throw new Refusal(damaged(path, reading.detail));
}

/** Runs `work` and turns what SQLite or the disk throws into problems. Anything else is a defect and flies on. */
export function withTrouble<T>(path: string, work: () => Result<T>): Result<T> {
  try {
    return work();
  } catch (error) {
    if (error instanceof Refusal) return error.trouble;
    const problem = diskProblem(path, error);
    if (problem === null) throw error;
    return trouble(problem);
  }
}

/** What a thrown error of SQLite or of the file system means to a person; null when it is neither. */
export function diskProblem(path: string, error: unknown): Problem | null {
  const where = { fileName: basename(path) };
  if (!(error instanceof Error) || error instanceof Defect) return null;
  const code = (error as { code?: unknown }).code;
  if (typeof code !== 'string') return null;
  const kind = KINDS.find(([pattern]) => pattern.test(code))?.[1];
  if (kind !== undefined) return { kind, where, facts: {} };
  if (code === 'SQLITE_NOTADB')
    return { kind: 'file/not-a-yard', where, facts: { found: 'not a GeoPackage' } };
  if (/^SQLITE_(CORRUPT|CONSTRAINT|MISMATCH|TOOBIG|ERROR)/.test(code)) {
    return damaged(path, error.message);
  }
  if (error instanceof Database.SqliteError || /^E[A-Z]+$/.test(code)) {
    return { kind: 'file/unreadable', where, facts: { detail: error.message } };
  }
  return null;
}

const KINDS = [
  [/^(SQLITE_FULL|ENOSPC|EDQUOT)$/, 'file/disk-full'],
  [/^SQLITE_(BUSY|LOCKED)/, 'file/locked'],
  [/^SQLITE_READONLY_DBMOVED$/, 'file/not-found'],
  [/^(SQLITE_READONLY.*|EROFS|EACCES|EPERM)$/, 'file/read-only'],
  [/^ENOENT$/, 'file/not-found'],
  [/^EEXIST$/, 'file/exists'],
] as const;
