import { useBook, useSessionState, useViewState } from './context.ts';
import { PAGES } from './view.ts';

/** The page edge: one tab for each step, in the order of the job, and the lamp. */
export function BookEdge() {
  const { view } = useBook();
  const { yard } = useSessionState();
  const { page: open, lamp } = useViewState();
  return (
    <nav className="edge" aria-label="Steps">
      {PAGES.map(({ page, tab }, i) => (
        <button
          key={page}
          type="button"
          aria-current={open === page ? 'page' : undefined}
          disabled={yard === null && page !== 'yards'}
          title={`Alt+${i + 1}`}
          onClick={() => view.go(page)}
        >
          {tab}
        </button>
      ))}
      <button type="button" className="edge-night" onClick={view.turnLamp}>
        {lamp === 'night' ? 'day' : 'night'}
      </button>
    </nav>
  );
}
