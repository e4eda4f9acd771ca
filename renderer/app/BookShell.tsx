import { lazy, Suspense, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { resolveZones } from '../../core/zones/index.ts';
import { previewOf } from '../drawing/index.ts';
import { FootLine } from '../map/FootLine.tsx';
import { Sketch } from '../map/Sketch.tsx';
import { MixPage } from '../mix/MixPage.tsx';
import { OutlinesPage } from '../outlines/OutlinesPage.tsx';
import { comparisonOf, groundToDraw } from '../shared/comparisonOf.ts';
import { jobInHand } from '../shared/jobInHand.ts';
import { PaperView } from '../sheet/PaperView.tsx';
import { SheetPage } from '../sheet/SheetPage.tsx';
import { type SheetWish, useSheet } from '../sheet/useSheet.ts';
import { WalkPage } from '../walk/WalkPage.tsx';
import { YardsPage } from '../yards/YardsPage.tsx';
import { BookEdge } from './BookEdge.tsx';
import {
  type Book,
  BookContext,
  type OpenYard,
  OpenYardContext,
  useBook,
  usePlanState,
  useSessionState,
  useViewState,
} from './context.ts';
import { bookKey } from './keys.ts';
import { Notices } from './Notices.tsx';
import { useImageUrls } from './useImageUrls.ts';

/** Fetched when it is first turned to: it brings the list of coordinate systems, larger than all else of the window. */
const GroundPage = lazy(async () => ({ default: (await import('../ground/GroundPage.tsx')).GroundPage }));

/** The whole open book: edge, left page, sketch or paper, foot. */
export function BookShell({ book }: { readonly book: Book }) {
  const { session, view } = book;
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (bookKey(event, session, view)) event.preventDefault();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [session, view]);
  const file = useSyncExternalStore(session.subscribe, () => session.snapshot().file);
  // Another yard: what was in hand belongs to the one before.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the handle names the yard
  useEffect(() => view.reset(), [file?.handle, view]);
  return (
    <BookContext.Provider value={book}>
      <OpenBook />
    </BookContext.Provider>
  );
}

function OpenBook() {
  const { yard, busy } = useSessionState();
  return (
    <div className="book">
      <BookEdge />
      {yard === null ? <ClosedPages /> : <YardPages />}
      {busy !== null && (
        <p className="busy" role="status">
          {busy} …
        </p>
      )}
    </div>
  );
}

/** No yard is open: the shelf, and an empty sheet beside it. */
function ClosedPages() {
  return (
    <>
      <main className="left-page">
        <div className="left-scroll">
          <YardsPage />
        </div>
        <Notices units="us" />
      </main>
      <div className="right-page">
        <div className="paper-table">
          <p className="said">Open a yard from the shelf, or begin one.</p>
        </div>
      </div>
    </>
  );
}

function YardPages() {
  const { session, view, planner } = useBook();
  const { yard: onDisk, file, saving } = useSessionState();
  const { page, selection, drawing, compared, coverShown } = useViewState();
  const { plan, stale } = usePlanState();
  const imageUrls = useImageUrls(session, file, onDisk);
  const [wish, setWish] = useState<SheetWish>({ paper: 'letter', scale: 'auto' });
  const [shown, setShown] = useState(0);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the context follows the page and the file
  const preview = useMemo(() => {
    const context = onDisk && view.context();
    return context ? previewOf(drawing, context) : null;
  }, [drawing, onDisk, view, page, file, plan]);
  const yard = preview?.yard ?? onDisk;
  const { outlines, pictures, elevations } = yard ?? {};
  const { cornerSigmaM, overlapRule, amountsBy } = yard?.details ?? {};
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new name or a new job changes no area
  const answer = useMemo(
    () => (yard === null ? null : resolveZones(yard)),
    [outlines, pictures, elevations, cornerSigmaM, overlapRule, amountsBy],
  );
  const resolved = answer?.ok ? answer.value : null;
  const open = useMemo<OpenYard | null>(() => {
    if (yard === null || answer === null) return null;
    return answer.ok
      ? { yard, resolved: answer.value, problems: answer.value.warnings }
      : { yard, resolved: null, problems: answer.problems };
  }, [yard, answer]);
  const jobId = yard === null ? null : (jobInHand(yard)?.id ?? null);
  useEffect(() => planner.want(yard, jobId, yard !== onDisk), [planner, yard, jobId, onDisk]);
  const sheet = useSheet(page === 'sheet' ? onDisk : null, plan, wish);

  const change = useMemo(() => {
    if (yard === null || compared === null || page !== 'ground') return null;
    const comparison = comparisonOf(compared.earlier, yard);
    return comparison.ok ? groundToDraw(comparison.value, compared.of) : null;
  }, [yard, compared, page]);

  if (yard === null || preview === null || open === null || file === null) return null;
  const planShown = page === 'mix' || page === 'walk' ? (plan?.ground ?? null) : null;
  const pages = sheet?.ok ? sheet.value : [];
  const at = Math.min(shown, Math.max(0, pages.length - 1));
  return (
    <OpenYardContext.Provider value={open}>
      <main className="left-page">
        <div className="left-scroll" key={page}>
          {page === 'yards' && <YardsPage />}
          {page === 'ground' && (
            <Suspense>
              <GroundPage />
            </Suspense>
          )}
          {page === 'outlines' && <OutlinesPage />}
          {page === 'mix' && <MixPage />}
          {page === 'walk' && <WalkPage />}
          {page === 'sheet' && (
            <SheetPage wish={wish} onWish={setWish} sheet={sheet} shown={at} onShow={setShown} />
          )}
        </div>
        <Notices units={yard.details.unitSystem} />
      </main>
      <div className="right-page">
        {page === 'sheet' ? (
          <PaperView page={pages[at]} imageUrls={imageUrls} />
        ) : (
          <Sketch
            key={file.handle}
            yard={yard}
            resolved={resolved}
            plan={planShown}
            planStale={stale}
            coverShown={coverShown && page === 'walk'}
            change={change}
            imageUrls={imageUrls}
            selection={selection}
            drawing={drawing}
            preview={preview}
            onSelect={view.select}
            onInput={view.input}
          />
        )}
        <FootLine
          drawing={drawing}
          preview={page === 'sheet' ? null : preview}
          yard={yard}
          resolved={resolved}
          plan={planShown}
          selection={selection}
          saving={saving}
          readOnly={file.readOnly}
          onInput={view.input}
        />
      </div>
    </OpenYardContext.Provider>
  );
}
