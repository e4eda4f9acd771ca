import { useEffect, useRef, useState } from 'react';
import { formatDay } from '../../core/units/index.ts';
import type { FolderEntry } from '../../electron/contract/HostApi.ts';
import { useBook, useSessionState, useViewState } from '../app/context.ts';
import type { Compared } from '../app/view.ts';
import { isoDate } from '../shared/isoDate.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { CompareLedgers } from './CompareLedgers.tsx';
import { folderOf } from './folderOf.ts';

/** The yard beside an earlier state of it: what ground was gained and lost since. */
export function ComparePart() {
  const { compared } = useViewState();
  const part = useRef<HTMLDivElement>(null);
  const wasBeside = useRef(compared !== null);
  const isBeside = compared !== null;
  useEffect(() => {
    if (wasBeside.current === isBeside) return;
    wasBeside.current = isBeside;
    // The button that was pressed is gone with the list it stood in; the keyboard goes on from here.
    if (document.activeElement === document.body) part.current?.querySelector('button')?.focus();
  }, [isBeside]);
  return <div ref={part}>{compared === null ? <ChooseEarlier /> : <Beside compared={compared} />}</div>;
}

function Beside({ compared }: { readonly compared: Compared }) {
  const { fileName, earlier } = compared;
  return (
    <PagePart
      title="Compared"
      aside={`with ${fileName.replace(/\.gpkg$/i, '')}, ground of ${formatDay(earlier.details.groundDate)}`}
    >
      <PutAway />
      <CompareLedgers compared={compared} />
    </PagePart>
  );
}

function PutAway() {
  const { view } = useBook();
  const { drawing } = useViewState();
  const atRest = drawing.kind === 'select';
  useEffect(() => {
    // What is in hand goes first; a field or an open choice takes its own Escape.
    const onKey = (event: KeyboardEvent): void => {
      const isField = event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement;
      if (event.key !== 'Escape' || !atRest || isField) return;
      view.compare(null);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [view, atRest]);
  return (
    <div className="do-row">
      <button type="button" className="do" onClick={() => view.compare(null)}>
        put the earlier state away
      </button>
      <span className="note">or Escape</span>
    </div>
  );
}

function ChooseEarlier() {
  const { session, view } = useBook();
  const { file } = useSessionState();
  const [entries, setEntries] = useState<readonly FolderEntry[] | null>(null);
  if (file === null) return null;

  async function look(): Promise<void> {
    if (file === null) return;
    const folder = folderOf(file.path);
    const found = await session.ask('Looking in the folder', () => session.host.listFolder({ folder }));
    if (found === null) return;
    const others = found.entries.filter(({ kind, path }) => kind === 'yard' && path !== file.path);
    // Copies of this yard begin with its name; they are what is looked for.
    const ownName = file.fileName.replace(/\.gpkg$/i, '');
    const isCopy = ({ name }: FolderEntry): boolean => name.startsWith(ownName);
    setEntries([...others.filter(isCopy), ...others.filter((entry) => !isCopy(entry))]);
  }

  async function lay({ name, path }: FolderEntry): Promise<void> {
    const earlier = await session.ask('Reading the earlier state', () => session.host.readYard({ path }));
    if (earlier === null) return;
    const of: Compared['of'] = 'treated';
    view.compare({ fileName: name, earlier, of });
  }

  async function keep(): Promise<void> {
    if (file === null) return;
    await session.settled();
    const ask = { yard: file.handle, day: isoDate(new Date()) };
    const kept = await session.ask('Keeping a copy', () => session.host.keepCopy(ask));
    if (kept === null) return;
    session.tell({ kind: 'note', text: `The yard as it is now is kept beside it as ${kept.fileName}.` });
    if (entries !== null) await look();
  }

  return (
    <PagePart title="Compare with an earlier state" aside="ground gained and lost">
      <div className="do-row">
        <button
          type="button"
          className="do"
          aria-expanded={entries !== null}
          onClick={() => (entries === null ? void look() : setEntries(null))}
        >
          {entries === null ? 'choose a yard file' : 'hide the files'}
        </button>
        <button type="button" className="do" onClick={() => void keep()}>
          keep a dated copy of this one
        </button>
      </div>
      {entries !== null && (
        <ul className="shelf" aria-label="Yard files beside this one">
          {entries.map((entry) => (
            <li key={entry.path}>
              <button type="button" className="row-name" onClick={() => void lay(entry)}>
                {entry.name.replace(/\.gpkg$/i, '')}
              </button>
              <span className="note">changed {isoDate(new Date(entry.changedAtMs))}</span>
            </li>
          ))}
          {entries.length === 0 && (
            <li className="said">
              No other yard file lies beside this one. Keep a copy before you change it.
            </li>
          )}
        </ul>
      )}
    </PagePart>
  );
}
