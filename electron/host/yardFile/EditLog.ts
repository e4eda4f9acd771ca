import type Database from 'better-sqlite3';
import { type Edit, inverseOf } from '../../../core/edits/index.ts';
import { Defect } from '../../../core/result.ts';
import {
  checkEdit,
  type EditHistory,
  exactJson,
  fromJson,
  unreadable,
} from '../../../core/yardFile/index.ts';
import { readable } from './sqliteTrouble.ts';

interface LogRow {
  readonly fid: number;
  readonly label: unknown;
  readonly changes?: unknown;
}

/** The undo log: every edit ever made, newest last. To be called inside a transaction; throws Refusals. */
export class EditLog {
  readonly #db: Database.Database;
  readonly #path: string;

  constructor(db: Database.Database, path: string) {
    this.#db = db;
    this.#path = path;
  }

  history(): EditHistory {
    const sequence = this.#db.prepare('SELECT edit_sequence FROM yard_version').pluck().get();
    if (typeof sequence !== 'number') {
      return readable(this.#path, unreadable('yard_version holds no edit count'));
    }
    return { sequence, undoLabel: this.#label('done'), redoLabel: this.#label('undone') };
  }

  /** Records a new edit as done and forgets what was undone before it. */
  record(edit: Edit): void {
    const changes = exactJson(edit.changes);
    if (changes === null) throw new Defect('an edit that passed its check cannot be written as JSON');
    this.#db.prepare("DELETE FROM edits WHERE state = 'undone'").run();
    this.#db
      .prepare(
        `INSERT INTO edits (sequence, label, changes, state)
         VALUES ((SELECT coalesce(max(sequence), 0) + 1 FROM edits), ?, ?, 'done')`,
      )
      .run(edit.label, changes);
    this.#count();
  }

  /** The edit that undoes the newest one done, and what marks it undone; null when there is none. */
  nextUndo(): { readonly step: Edit; take(): void } | null {
    const row = this.#newest('done');
    return row === undefined
      ? null
      : { step: inverseOf(this.#edit(row)), take: () => this.#mark(row, 'undone') };
  }

  nextRedo(): { readonly step: Edit; take(): void } | null {
    const row = this.#newest('undone');
    return row === undefined ? null : { step: this.#edit(row), take: () => this.#mark(row, 'done') };
  }

  #newest(state: State, columns = 'fid, label, changes'): LogRow | undefined {
    const sql = `SELECT ${columns} FROM edits WHERE state = ? ORDER BY sequence ${NEWEST_FIRST[state]} LIMIT 1`;
    return this.#db.prepare<[string], LogRow>(sql).get(state);
  }

  #label(state: State): string | null {
    const row = this.#newest(state, 'fid, label');
    if (row === undefined) return null;
    if (typeof row.label === 'string') return row.label;
    return readable(this.#path, unreadable('edits: a label is not text'));
  }

  #edit(row: LogRow): Edit {
    const changes = readable(this.#path, fromJson(row.changes));
    const edit = { label: row.label, changes };
    const wrong = checkEdit(edit);
    return readable(this.#path, wrong === null ? { ok: true, value: edit as Edit } : unreadable(wrong));
  }

  #mark(row: LogRow, state: State): void {
    this.#db.prepare('UPDATE edits SET state = ? WHERE fid = ?').run(state, row.fid);
    this.#count();
  }

  #count(): void {
    this.#db.prepare('UPDATE yard_version SET edit_sequence = edit_sequence + 1').run();
  }
}

type State = 'done' | 'undone';

/** Of what is done the last is undone first; of what is undone the first is redone first. */
const NEWEST_FIRST: Readonly<Record<State, string>> = { done: 'DESC', undone: 'ASC' };
