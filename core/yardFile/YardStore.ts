import type { Edit } from '../edits/index.ts';
import type { Result } from '../result.ts';
import type { Yard } from '../yard.ts';

/**
 * One open yard on disk, in domain words; no SQL, path or row escapes it. Every call is synchronous and is
 * one transaction: it is on disk whole when it returns ok, and the file is untouched when it does not.
 * An in-memory twin and the GeoPackage adapter run one shared contract suite.
 */
export interface YardStore {
  readonly readOnly: boolean;
  readYard(): Result<Yard>;
  /**
   * Applies and records an edit, and drops what was undone before it.
   * Problems: host/stale-edit when a row's `before` is not what is stored; file/read-only, file/disk-full.
   */
  applyEdit(edit: Edit, images: readonly NewImage[]): Result<EditHistory>;
  /** Undoes the newest edit not yet undone; `step` is null when there is none. Survives a restart. */
  undo(): Result<HistoryStep>;
  redo(): Result<HistoryStep>;
  history(): Result<EditHistory>;
  readImage(imageHash: string): Result<StoredImage>;
  /** A whole, separate copy under a new path; never overwrites. */
  saveCopy(path: string): Result<null>;
  close(): void;
}

/** `sequence` grows by one with every apply, undo and redo. Labels are null when there is nothing to do. */
export interface EditHistory {
  readonly sequence: number;
  readonly undoLabel: string | null;
  readonly redoLabel: string | null;
}

/** `step` is the edit that was just carried out (already the inverse, for an undo). */
export interface HistoryStep {
  readonly step: Edit | null;
  readonly history: EditHistory;
}

export interface StoredImage {
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

export interface NewImage extends StoredImage {
  readonly imageHash: string;
}
