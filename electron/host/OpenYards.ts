import { randomBytes } from 'node:crypto';
import { resolve } from 'node:path';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import type { NewImage, YardStore } from '../../core/yardFile/index.ts';
import type { YardHandle } from '../contract/HostApi.ts';

/** Where yards are kept: files on disk, or a shelf in memory for a test. */
export interface YardShop {
  open(path: string, options: { readonly readOnly: boolean }): Result<YardStore>;
  create(path: string, yard: Yard, images: readonly NewImage[]): Result<YardStore>;
}

/** A yard that a window has open. Windows on the same file share its store. */
export interface OpenedStore {
  readonly path: string;
  readonly store: YardStore;
}

/**
 * The yards that are open, by handle. A handle says nothing of the path and cannot be guessed. A class
 * because it owns the stores until they are closed.
 */
export class OpenYards {
  readonly #shop: YardShop;
  readonly #byHandle = new Map<YardHandle, OpenedStore>();

  constructor(shop: YardShop) {
    this.#shop = shop;
  }

  /**
   * A file someone else is writing to, or that may not be written, is opened for reading: the person can look,
   * and the window says that it cannot save.
   */
  open(givenPath: string): Result<YardHandle> {
    const path = resolve(givenPath);
    // A window that was reloaded has lost its handle, not its lock; a second store would find the file locked.
    const shared = [...this.#byHandle.values()].find((opened) => opened.path === path);
    if (shared !== undefined) return ok(this.#keep(shared));
    const writable = this.#shop.open(path, { readOnly: false });
    if (writable.ok) return ok(this.#keep({ path, store: writable.value }));
    const [problem] = writable.problems;
    if (problem.kind !== 'file/locked' && problem.kind !== 'file/read-only') return writable;
    const readable = this.#shop.open(path, { readOnly: true });
    return readable.ok ? ok(this.#keep({ path, store: readable.value })) : readable;
  }

  /** The document of a file, without keeping it; of one that is open here, as it is this moment. */
  read(givenPath: string): Result<Yard> {
    const path = resolve(givenPath);
    const shared = [...this.#byHandle.values()].find((opened) => opened.path === path);
    if (shared !== undefined) return shared.store.readYard();
    const opened = this.#shop.open(path, { readOnly: true });
    if (!opened.ok) return opened;
    const document = opened.value.readYard();
    opened.value.close();
    return document;
  }

  create(givenPath: string, yard: Yard, images: readonly NewImage[]): Result<YardHandle> {
    const path = resolve(givenPath);
    const made = this.#shop.create(path, yard, images);
    return made.ok ? ok(this.#keep({ path, store: made.value })) : made;
  }

  find(handle: YardHandle): Result<OpenedStore> {
    const opened = this.#byHandle.get(handle);
    return opened === undefined ? trouble({ kind: 'host/unknown-yard', where: {}, facts: {} }) : ok(opened);
  }

  /** The store is closed with the last handle on it. */
  close(handle: YardHandle): Result<null> {
    const found = this.find(handle);
    if (!found.ok) return found;
    this.#byHandle.delete(handle);
    const isShared = [...this.#byHandle.values()].some((opened) => opened.store === found.value.store);
    if (!isShared) found.value.store.close();
    return ok(null);
  }

  closeAll(): void {
    for (const handle of [...this.#byHandle.keys()]) this.close(handle);
  }

  #keep(opened: OpenedStore): YardHandle {
    const handle = randomBytes(18).toString('base64url');
    this.#byHandle.set(handle, opened);
    return handle;
  }
}
