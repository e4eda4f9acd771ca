import type { Edit } from '../../core/edits/index.ts';
import type { Result } from '../../core/result.ts';
import type { SheetPage } from '../../core/sheet/index.ts';
import type { Yard } from '../../core/yard.ts';
import type { EditHistory, HistoryStep, NewImage, StoredImage } from '../../core/yardFile/index.ts';

/**
 * All the renderer may ask of the host, in task words. Two carriers bring it over (Electron IPC, loopback
 * HTTP) and the renderer cannot tell which. Every method takes one plain argument and returns a Result;
 * nothing is thrown across. Each argument is checked at the host's door by `guards.ts`.
 */
export interface HostApi {
  /** What to show first: the yard the app was started on (or the sample), and the folder yards live in. */
  greet(ask: Record<string, never>): Promise<Result<Greeting>>;
  listFolder(ask: { readonly folder: string | null }): Promise<Result<FolderListing>>;
  openYard(ask: { readonly path: string }): Promise<Result<OpenedYard>>;
  /** The document of a yard file, to compare with; read and closed again, whoever has it open. */
  readYard(ask: { readonly path: string }): Promise<Result<Yard>>;
  /** A whole copy beside the open file, named after it and the day (ISO date). Never overwrites. */
  keepCopy(ask: { readonly yard: YardHandle; readonly day: string }): Promise<Result<KeptCopy>>;
  createYard(ask: CreateYardAsk): Promise<Result<OpenedYard>>;
  closeYard(ask: { readonly yard: YardHandle }): Promise<Result<null>>;
  applyEdit(ask: ApplyEditAsk): Promise<Result<EditHistory>>;
  undo(ask: { readonly yard: YardHandle }): Promise<Result<HistoryStep>>;
  redo(ask: { readonly yard: YardHandle }): Promise<Result<HistoryStep>>;
  readImage(ask: { readonly yard: YardHandle; readonly imageHash: string }): Promise<Result<StoredImage>>;
  /** A new yard made from a picture, GeoTIFF or GeoJSON file; nothing is written yet. */
  draftYard(ask: ImportAsk): Promise<Result<YardDraft>>;
  /** The same file brought into an open yard, as an edit to apply; nothing is written yet. */
  draftImport(ask: ImportAsk & { readonly yard: YardHandle }): Promise<Result<ImportDraft>>;
  /** The printed sheet as PDF bytes. */
  makePdf(ask: MakePdfAsk): Promise<Result<MadeFile>>;
  /** The yard's outlines as GeoJSON (RFC 7946; only a placed yard has a place to write); `notes` say what it does not carry. */
  makeGeoJson(ask: { readonly yard: YardHandle }): Promise<Result<MadeFile>>;
}

export type HostMethod = keyof HostApi;

/** Opaque to the renderer; made by the host when a yard is opened. */
export type YardHandle = string;

export interface Greeting {
  readonly version: string;
  readonly yardsFolder: string;
  /** Path to open at once; null = show the empty page. */
  readonly startPath: string | null;
}

export interface FolderListing {
  readonly folder: string;
  readonly parent: string | null;
  /** Sub-folders first, then yard files, each by name. */
  readonly entries: readonly FolderEntry[];
}

export interface FolderEntry {
  readonly kind: 'folder' | 'yard';
  readonly name: string;
  readonly path: string;
  readonly changedAtMs: number;
}

export interface OpenedYard {
  readonly yard: YardHandle;
  readonly path: string;
  readonly fileName: string;
  readonly readOnly: boolean;
  readonly document: Yard;
  readonly history: EditHistory;
}

export interface KeptCopy {
  readonly path: string;
  readonly fileName: string;
}

/** `folder` null = the yards folder. `fileName` without extension; the host adds `.gpkg`. Never overwrites. */
export interface CreateYardAsk {
  readonly folder: string | null;
  readonly fileName: string;
  readonly document: Yard;
  readonly images: readonly NewImage[];
}

export interface ApplyEditAsk {
  readonly yard: YardHandle;
  readonly edit: Edit;
  /** The sequence the edit was made on; another number means the renderer's yard is stale. */
  readonly sequence: number;
  readonly images: readonly NewImage[];
}

export interface ImportAsk {
  readonly fileName: string;
  readonly bytes: Uint8Array;
}

export interface YardDraft {
  readonly document: Yard;
  readonly images: readonly NewImage[];
  /** Plain sentences about what was read and what was changed on the way in. */
  readonly notes: readonly string[];
}

export interface ImportDraft {
  readonly edit: Edit;
  readonly images: readonly NewImage[];
  readonly notes: readonly string[];
}

export interface MakePdfAsk {
  readonly yard: YardHandle;
  readonly title: string;
  /** ISO date-time put in the file's properties: an argument, so that the same plan gives the same bytes. */
  readonly madeAt: string;
  readonly pages: readonly SheetPage[];
}

export interface MadeFile {
  readonly fileName: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
  /** Plain sentences about what was made. */
  readonly notes: readonly string[];
}
