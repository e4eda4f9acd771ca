import { useCallback, useEffect, useState } from 'react';
import type { UnitSystem } from '../../core/yard.ts';
import type { FolderListing } from '../../electron/contract/HostApi.ts';
import { useBook, useSessionState } from '../app/context.ts';
import { PageHead, PagePart } from '../shared/PageHead.tsx';
import { isoDate } from '../shared/isoDate.ts';
import { readPickedFile } from '../shared/readPickedFile.ts';
import { fileNameFor } from './fileNameFor.ts';
import { newYard } from './newYard.ts';

/** What a yard can be begun from; the host looks inside, the ending only helps the file dialog. */
const BEGIN_FROM = '.tif,.tiff,.png,.jpg,.jpeg,.webp,.geojson,.json';

/** The shelf: yard files there are, and beginning a new one. */
export function YardsPage() {
  const { session, view } = useBook();
  const { file, greeting } = useSessionState();
  const [listing, setListing] = useState<FolderListing | null>(null);
  const [name, setName] = useState('');
  const [units, setUnits] = useState<UnitSystem>('us');

  const list = useCallback(
    async (folder: string | null) => {
      const found = await session.ask('Looking in the folder', () => session.host.listFolder({ folder }));
      if (found !== null) setListing(found);
    },
    [session],
  );
  useEffect(() => void list(null), [list]);

  async function open(path: string): Promise<void> {
    if (await session.open(path)) view.go('outlines');
  }

  async function beginOnGrid(): Promise<void> {
    const title = name.trim() || 'New yard';
    const document = newYard(title, isoDate(new Date()), units);
    const ask = { folder: listing?.folder ?? null, fileName: fileNameFor(title), document, images: [] };
    if (await session.create(ask)) view.go('outlines');
  }

  async function beginFromFile(input: HTMLInputElement): Promise<void> {
    const picked = await readPickedFile(input);
    if (picked === null) return;
    const draft = await session.ask(`Reading ${picked.fileName}`, () => session.host.draftYard(picked));
    if (draft === null) return;
    const title = name.trim() || draft.document.details.name;
    const details = {
      ...draft.document.details,
      name: title,
      unitSystem: units,
      groundDate: isoDate(new Date()),
    };
    const document = { ...draft.document, details };
    const ask = {
      folder: listing?.folder ?? null,
      fileName: fileNameFor(title),
      document,
      images: draft.images,
    };
    if (!(await session.create(ask))) return;
    view.go(
      document.pictures.some((picture) => picture.placement.kind === 'unscaled') ? 'ground' : 'outlines',
    );
    session.tell(...draft.notes.map((text) => ({ kind: 'note', text }) as const));
  }

  return (
    <>
      <PageHead title="Yards" aside={file ? `${file.fileName} is open` : undefined} />
      <PagePart title="Begin a yard" aside="one file for each property">
        <div className="line">
          <label htmlFor="new-yard-name">name or address</label>
          <input
            id="new-yard-name"
            className="figure figure-wide"
            value={name}
            placeholder="12 Example Street"
            onChange={(event) => setName(event.target.value)}
          />
        </div>
        <div className="line">
          <label htmlFor="new-yard-units">measured in</label>
          <select
            id="new-yard-units"
            className="choice"
            value={units}
            onChange={(event) => setUnits(event.target.value as UnitSystem)}
          >
            <option value="us">feet, gallons, fluid ounces</option>
            <option value="metric">metres, litres</option>
          </select>
        </div>
        <div className="do-row">
          <label className="do do-file">
            from a file
            <input
              type="file"
              accept={BEGIN_FROM}
              className="unseen"
              onChange={(event) => void beginFromFile(event.target)}
            />
          </label>
          <button type="button" className="do" onClick={() => void beginOnGrid()}>
            on a bare grid
          </button>
        </div>
        <p className="said">
          A file can be an aerial image that knows where it is (GeoTIFF), a picture of a sketch or plan (PNG,
          JPEG, WebP) that you scale by a known length, or outlines (GeoJSON). On a bare grid you type the
          lengths.
        </p>
      </PagePart>
      {listing && (
        <PagePart
          title="On the shelf"
          aside={<span title={listing.folder}>{shortFolder(listing.folder)}</span>}
        >
          <ul className="shelf">
            {listing.parent !== null && (
              <li>
                <button type="button" className="row-name" onClick={() => void list(listing.parent)}>
                  ↑ the folder above
                </button>
              </li>
            )}
            {listing.entries.map((entry) => (
              <li key={entry.path} className={entry.path === file?.path ? 'selected' : undefined}>
                <button
                  type="button"
                  className="row-name"
                  onClick={() => void (entry.kind === 'folder' ? list(entry.path) : open(entry.path))}
                >
                  {entry.kind === 'folder' ? `${entry.name} /` : entry.name.replace(/\.gpkg$/i, '')}
                </button>
                <span className="note">
                  {entry.kind === 'yard' && `changed ${isoDate(new Date(entry.changedAtMs))}`}
                </span>
              </li>
            ))}
            {listing.entries.length === 0 && <li className="said">No yard files here yet.</li>}
          </ul>
        </PagePart>
      )}
      {greeting && <p className="said">Platpace {greeting.version}</p>}
    </>
  );
}

/** The last two parts of a folder's path: enough to know it by, short enough for the page. */
function shortFolder(folder: string): string {
  const parts = folder.split(/[\\/]/).filter((part) => part !== '');
  return parts.length <= 2 ? folder : `… ${parts.slice(-2).join(' / ')}`;
}
