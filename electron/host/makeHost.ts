import { basename, join, resolve } from 'node:path';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import type {
  HostApi,
  ImportAsk,
  ImportDraft,
  OpenedYard,
  YardDraft,
  YardHandle,
} from '../contract/HostApi.ts';
import { yardToGeoJson } from './exporters/geoJson.ts';
import { leftBehindIn } from './exporters/leftBehind.ts';
import { keepCopy } from './keepCopy.ts';
import { listFolder } from './listFolder.ts';
import { type OpenedStore, OpenYards, type YardShop } from './OpenYards.ts';
import { writePdf } from './pdf/writePdf.ts';
import { firstYardPath, makeFolder } from './yardsFolder.ts';

/** Reads what is brought in: pictures, GeoTIFF, GeoJSON. */
export interface Importers {
  draftYard(ask: ImportAsk): Promise<Result<YardDraft>>;
  draftImport(yard: Yard, ask: ImportAsk): Promise<Result<ImportDraft>>;
}

export interface HostParts {
  readonly version: string;
  readonly yardsFolder: string;
  /** The yard file named at the start; null = the sample, or the one changed last. */
  readonly startPath: string | null;
  readonly shop: YardShop;
  readonly importers: Importers;
  readonly sample: () => Yard;
}

export interface Host {
  readonly api: HostApi;
  /** Closes every yard; to be called once, at the end. */
  close(): void;
}

/**
 * The handlers behind the contract. Arguments have passed the guards; the paths, the yards and their locks are
 * owned here. Knows neither windows nor HTTP.
 */
export function makeHost(parts: HostParts): Host {
  const yards = new OpenYards(parts.shop);

  /** Runs on an open yard, or says that it is not open. */
  function withYard<T>(handle: YardHandle, work: (opened: OpenedStore) => Result<T>): Result<T> {
    const found = yards.find(handle);
    return found.ok ? work(found.value) : found;
  }

  function present(opening: Result<YardHandle>): Result<OpenedYard> {
    if (!opening.ok) return opening;
    const presented = withYard(opening.value, ({ path, store }) => {
      const document = store.readYard();
      if (!document.ok) return document;
      const history = store.history();
      if (!history.ok) return history;
      return ok({
        yard: opening.value,
        path,
        fileName: basename(path),
        readOnly: store.readOnly,
        document: document.value,
        history: history.value,
      });
    });
    if (!presented.ok) yards.close(opening.value);
    return presented;
  }

  const api: HostApi = {
    async greet() {
      const { version, yardsFolder, startPath, shop, sample } = parts;
      const first = firstYardPath(yardsFolder, shop, sample);
      return ok({ version, yardsFolder, startPath: startPath === null ? first : resolve(startPath) });
    },

    async listFolder({ folder }) {
      return listFolder(folder ?? parts.yardsFolder);
    },

    async openYard({ path }) {
      return present(yards.open(path));
    },

    async readYard({ path }) {
      return yards.read(path);
    },

    async keepCopy({ yard, day }) {
      return withYard(yard, ({ path, store }) => keepCopy(path, store, day));
    },

    async createYard({ folder, fileName, document, images }) {
      if (folder === null) makeFolder(parts.yardsFolder);
      return present(yards.create(join(folder ?? parts.yardsFolder, `${fileName}.gpkg`), document, images));
    },

    async closeYard({ yard }) {
      return yards.close(yard);
    },

    async applyEdit({ yard, edit, sequence, images }) {
      return withYard(yard, ({ store }) => {
        const history = store.history();
        if (!history.ok) return history;
        if (history.value.sequence !== sequence) {
          return trouble({ kind: 'host/stale-edit', where: {}, facts: {} });
        }
        return store.applyEdit(edit, images);
      });
    },

    async undo({ yard }) {
      return withYard(yard, ({ store }) => store.undo());
    },

    async redo({ yard }) {
      return withYard(yard, ({ store }) => store.redo());
    },

    async readImage({ yard, imageHash }) {
      return withYard(yard, ({ store }) => store.readImage(imageHash));
    },

    async draftYard(ask) {
      return parts.importers.draftYard(ask);
    },

    async draftImport({ yard, fileName, bytes }) {
      const document = withYard(yard, ({ store }) => store.readYard());
      return document.ok ? parts.importers.draftImport(document.value, { fileName, bytes }) : document;
    },

    async makePdf({ yard, title, madeAt, pages }) {
      const found = yards.find(yard);
      if (!found.ok) return found;
      const { path, store } = found.value;
      const readImage = (imageHash: string) => {
        const image = store.readImage(imageHash);
        return image.ok ? image.value : undefined;
      };
      const pdf = await writePdf(pages, { title, madeAt, readImage });
      if (!pdf.ok) return pdf;
      return ok({
        fileName: `${stemOf(path)}.pdf`,
        mediaType: 'application/pdf',
        bytes: pdf.value,
        notes: [],
      });
    },

    async makeGeoJson({ yard }) {
      return withYard(yard, ({ path, store }) => {
        const document = store.readYard();
        if (!document.ok) return document;
        const made = yardToGeoJson(document.value, basename(path));
        if (!made.ok) return made;
        const bytes = new TextEncoder().encode(`${JSON.stringify(made.value, null, 2)}\n`);
        const left = leftBehindIn(document.value);
        const notes = left.length === 0 ? [] : [`Not in GeoJSON: ${left.join(', ')}.`];
        return ok({ fileName: `${stemOf(path)}.geojson`, mediaType: 'application/geo+json', bytes, notes });
      });
    },
  };
  return { api, close: () => yards.closeAll() };
}

function stemOf(path: string): string {
  return basename(path).replace(/\.gpkg$/i, '');
}
