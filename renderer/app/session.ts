import { applyEdit, type Edit, editFits } from '../../core/edits/index.ts';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import type { EditHistory, NewImage } from '../../core/yardFile/index.ts';
import type { CreateYardAsk, Greeting, HostApi, OpenedYard } from '../../electron/contract/HostApi.ts';

/** What the session knows of the yard that is open, apart from the document itself. */
export interface OpenFile {
  readonly handle: string;
  readonly path: string;
  readonly fileName: string;
  readonly readOnly: boolean;
}

/** Something to tell the person: a problem to mend, or a plain sentence. Stays until dismissed or replaced. */
export type Notice =
  | { readonly kind: 'problem'; readonly problem: Problem }
  | { readonly kind: 'note'; readonly text: string };

export interface SessionState {
  readonly greeting: Greeting | null;
  readonly file: OpenFile | null;
  readonly yard: Yard | null;
  readonly history: EditHistory;
  /** saving = edits are on their way to disk; failed = the last one was refused and taken back. */
  readonly saving: 'saved' | 'saving' | 'failed';
  readonly notices: readonly Notice[];
  /** What the person waits for, in words; null = nothing. */
  readonly busy: string | null;
}

const NO_HISTORY: EditHistory = { sequence: 0, undoLabel: null, redoLabel: null };

/**
 * The open yard as the window sees it. Edits show at once and go to the host in order; when the host refuses
 * one, the window goes back to the last yard that is on disk and says why. A class because it has a lifetime.
 */
export class Session {
  #state: SessionState = {
    greeting: null,
    file: null,
    yard: null,
    history: NO_HISTORY,
    saving: 'saved',
    notices: [],
    busy: null,
  };
  readonly #host: HostApi;
  readonly #listeners = new Set<() => void>();
  /** The last document the host has confirmed; what the window falls back to. */
  #onDisk: Yard | null = null;
  /** Host calls run one after another, so that sequences and documents stay in step. */
  #queue: Promise<unknown> = Promise.resolve();
  /** Edits shown but not yet confirmed, oldest first. */
  #pending: readonly Edit[] = [];

  constructor(host: HostApi) {
    this.#host = host;
  }

  get host(): HostApi {
    return this.#host;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly snapshot = (): SessionState => this.#state;

  async start(): Promise<void> {
    const greeting = await this.ask('Opening the book', () => this.#host.greet({}));
    if (greeting === null) return;
    this.#set({ greeting });
    if (greeting.startPath !== null) await this.open(greeting.startPath);
  }

  async open(path: string): Promise<boolean> {
    await this.#queue;
    const opened = await this.ask('Opening the yard', () => this.#host.openYard({ path }));
    return this.#take(opened);
  }

  async create(ask: CreateYardAsk): Promise<boolean> {
    await this.#queue;
    const opened = await this.ask('Writing the yard file', () => this.#host.createYard(ask));
    return this.#take(opened);
  }

  /** Applies an edit now and puts it on disk. */
  edit(edit: Edit, images: readonly NewImage[] = []): void {
    const { yard, file } = this.#state;
    if (yard === null || file === null || edit.changes.length === 0) return;
    this.#pending = [...this.#pending, edit];
    this.#set({ yard: applyEdit(yard, edit), saving: 'saving' });
    this.#inTurn(async () => {
      if (!this.#pending.includes(edit)) return;
      const sequence = this.#state.history.sequence;
      const answer = await this.#host.applyEdit({ yard: file.handle, edit, sequence, images });
      if (!answer.ok) return this.#fallBack(answer.problems);
      if (this.#onDisk !== null) this.#onDisk = applyEdit(this.#onDisk, edit);
      this.#pending = this.#pending.filter((other) => other !== edit);
      this.#set({ history: answer.value });
    });
  }

  undo(): void {
    this.#step('undo');
  }

  redo(): void {
    this.#step('redo');
  }

  tell(...notices: readonly Notice[]): void {
    this.#set({ notices: [...notices] });
  }

  /** Puts away what was only to be known at the time; problems stay until they are put away by hand. */
  putNotesAway(): void {
    if (this.#state.notices.some((notice) => notice.kind === 'note')) {
      this.#set({ notices: this.#state.notices.filter((notice) => notice.kind !== 'note') });
    }
  }

  dismiss(notice: Notice): void {
    this.#set({ notices: this.#state.notices.filter((other) => other !== notice) });
  }

  /** Resolves when everything done so far is on disk (or refused). */
  async settled(): Promise<void> {
    await this.#queue;
  }

  #step(way: 'undo' | 'redo'): void {
    const { file } = this.#state;
    if (file === null) return;
    this.#inTurn(async () => {
      const answer = await this.#host[way]({ yard: file.handle });
      if (!answer.ok) return this.#fallBack(answer.problems);
      const { step, history } = answer.value;
      if (step !== null && this.#onDisk !== null) this.#onDisk = applyEdit(this.#onDisk, step);
      this.#set({ yard: this.#replay(), history });
    });
  }

  /** What is on disk with the edits still on their way put back on top; one that no longer fits is dropped. */
  #replay(): Yard | null {
    const onDisk = this.#onDisk;
    if (onDisk === null) return null;
    let yard = onDisk;
    this.#pending = this.#pending.filter((edit) => {
      const fits = editFits(yard, edit);
      if (fits) yard = applyEdit(yard, edit);
      return fits;
    });
    return yard;
  }

  #fallBack(problems: readonly Problem[]): void {
    this.#pending = [];
    this.#set({
      yard: this.#onDisk,
      saving: 'failed',
      notices: problems.map((problem) => ({ kind: 'problem', problem })),
    });
  }

  #inTurn(work: () => Promise<void>): void {
    this.#queue = this.#queue.then(work).then(() => {
      if (this.#pending.length === 0 && this.#state.saving === 'saving') this.#set({ saving: 'saved' });
    });
  }

  /** Asks the host for something that takes time; failures become notices and null. */
  async ask<T>(words: string, call: () => Promise<Result<T>>): Promise<T | null> {
    this.#set({ busy: words });
    const answer = await call();
    this.#set({ busy: null });
    if (answer.ok) return answer.value;
    this.tell(...answer.problems.map((problem) => ({ kind: 'problem', problem }) as const));
    return null;
  }

  #take(opened: OpenedYard | null): boolean {
    if (opened === null) return false;
    const before = this.#state.file;
    if (before !== null) void this.#host.closeYard({ yard: before.handle });
    this.#pending = [];
    this.#onDisk = opened.document;
    this.#set({
      file: {
        handle: opened.yard,
        path: opened.path,
        fileName: opened.fileName,
        readOnly: opened.readOnly,
      },
      yard: opened.document,
      history: opened.history,
      saving: 'saved',
      notices: [],
    });
    return true;
  }

  #set(part: Partial<SessionState>): void {
    this.#state = { ...this.#state, ...part };
    for (const listener of this.#listeners) listener();
  }
}
