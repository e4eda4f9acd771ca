import { applyEdit, type Edit, inverseOf, rowsOf } from '../edits/index.ts';
import { ok, type Result, type Trouble, trouble } from '../result.ts';
import type { Yard } from '../yard.ts';
import { checkEdit, checkYard } from './checkRow.ts';
import { sameData } from './sameData.ts';
import type { EditHistory, HistoryStep, NewImage, StoredImage, YardStore } from './YardStore.ts';

/** Where memory yards are kept between openings, by path; stands in for a folder. */
export type YardShelf = Map<string, MemoryYard>;

/** A yard on a shelf. Its parts are replaced, never changed in place. */
export interface MemoryYard {
  yard: Yard;
  done: readonly Edit[];
  undone: readonly Edit[];
  images: ReadonlyMap<string, StoredImage>;
  sequence: number;
}

/** Puts a new yard on the shelf; file/exists when the path is taken. */
export function createMemoryYard(
  shelf: YardShelf,
  path: string,
  yard: Yard,
  images: readonly NewImage[],
): Result<YardStore> {
  if (shelf.has(path)) return trouble({ kind: 'file/exists', where: { fileName: path }, facts: {} });
  const wrong = checkYard(yard);
  if (wrong !== null) return badRequest(wrong);
  shelf.set(path, { yard, done: [], undone: [], images: withImages(new Map(), images), sequence: 0 });
  return openMemoryYard(shelf, path);
}

/** Opens a yard on the shelf; file/not-found when there is none. */
export function openMemoryYard(shelf: YardShelf, path: string, readOnly = false): Result<YardStore> {
  const kept = shelf.get(path);
  if (kept === undefined) return trouble({ kind: 'file/not-found', where: { fileName: path }, facts: {} });
  return ok(new MemoryYardStore(shelf, path, kept, readOnly));
}

/** The in-memory twin of the yard file: the same promises, no disk. For tests and for trying things out. */
class MemoryYardStore implements YardStore {
  readonly readOnly: boolean;
  readonly #shelf: YardShelf;
  readonly #path: string;
  readonly #kept: MemoryYard;

  constructor(shelf: YardShelf, path: string, kept: MemoryYard, readOnly: boolean) {
    this.#shelf = shelf;
    this.#path = path;
    this.#kept = kept;
    this.readOnly = readOnly;
  }

  readYard(): Result<Yard> {
    return ok(this.#kept.yard);
  }

  applyEdit(edit: Edit, images: readonly NewImage[]): Result<EditHistory> {
    const kept = this.#kept;
    const wrong = checkEdit(edit);
    if (wrong !== null) return badRequest(wrong);
    const next = this.#yardAfter(edit);
    if (!next.ok) return next;
    kept.yard = next.value;
    kept.images = withImages(kept.images, images);
    kept.done = [...kept.done, edit];
    kept.undone = [];
    kept.sequence += 1;
    return this.history();
  }

  undo(): Result<HistoryStep> {
    const kept = this.#kept;
    const edit = kept.done.at(-1);
    const step = edit === undefined ? null : inverseOf(edit);
    return this.#takeStep(step, () => {
      kept.done = kept.done.slice(0, -1);
      kept.undone = [...kept.undone, edit as Edit];
    });
  }

  redo(): Result<HistoryStep> {
    const kept = this.#kept;
    const step = kept.undone.at(-1) ?? null;
    return this.#takeStep(step, () => {
      kept.undone = kept.undone.slice(0, -1);
      kept.done = [...kept.done, step as Edit];
    });
  }

  history(): Result<EditHistory> {
    const { sequence, done, undone } = this.#kept;
    return ok({ sequence, undoLabel: done.at(-1)?.label ?? null, redoLabel: undone.at(-1)?.label ?? null });
  }

  readImage(imageHash: string): Result<StoredImage> {
    const image = this.#kept.images.get(imageHash);
    if (image !== undefined) return ok(image);
    const detail = `the image ${imageHash} is missing`;
    return trouble({ kind: 'file/damaged', where: { fileName: this.#path }, facts: { detail } });
  }

  saveCopy(path: string): Result<null> {
    if (this.#shelf.has(path)) return trouble({ kind: 'file/exists', where: { fileName: path }, facts: {} });
    this.#shelf.set(path, { ...this.#kept });
    return ok(null);
  }

  close(): void {}

  #takeStep(step: Edit | null, move: () => void): Result<HistoryStep> {
    if (this.readOnly) return this.#refuseWrite();
    if (step !== null) {
      const next = this.#yardAfter(step);
      if (!next.ok) return next;
      this.#kept.yard = next.value;
      this.#kept.sequence += 1;
      move();
    }
    const history = this.history();
    return history.ok ? ok({ step, history: history.value }) : history;
  }

  #yardAfter(edit: Edit): Result<Yard> {
    if (this.readOnly) return this.#refuseWrite();
    let yard = this.#kept.yard;
    for (const change of edit.changes) {
      const stored = rowsOf(yard, change.part).find((row) => row.id === change.id) ?? null;
      if (!sameData(stored, change.before)) return trouble({ kind: 'host/stale-edit', where: {}, facts: {} });
      yard = applyEdit(yard, { label: edit.label, changes: [change] });
    }
    return ok(yard);
  }

  #refuseWrite(): Trouble {
    return trouble({ kind: 'file/read-only', where: { fileName: this.#path }, facts: {} });
  }
}

function badRequest(detail: string): Trouble {
  return trouble({ kind: 'host/bad-request', where: {}, facts: { detail } });
}

function withImages(
  images: ReadonlyMap<string, StoredImage>,
  added: readonly NewImage[],
): ReadonlyMap<string, StoredImage> {
  const all = new Map(images);
  for (const { imageHash, mediaType, bytes } of added) {
    if (!all.has(imageHash)) all.set(imageHash, { mediaType, bytes });
  }
  return all;
}
