import { useBook, useOpenYard, useViewState } from '../app/context.ts';

/** Outlines that cross themselves, each with a way to have it uncrossed; what comes of it is shown before it is kept. */
export function MendPart() {
  const { view } = useBook();
  const { drawing } = useViewState();
  const { problems } = useOpenYard();
  const crossing = new Map(
    problems.flatMap((problem) =>
      problem.kind === 'shape/self-crossing' ? [[problem.where.outlineId, problem.where.name] as const] : [],
    ),
  );
  const shown = drawing.kind === 'reshape' && drawing.draft?.asks === true ? drawing.outlineId : null;
  if (crossing.size === 0) return null;
  return [...crossing].map(([id, name]) => (
    <div className="do-row" key={id}>
      {shown === id ? (
        <>
          <button type="button" className="do" onClick={() => view.input({ kind: 'typed', text: '' })}>
            keep {name} uncrossed
          </button>
          <button type="button" className="do" onClick={() => view.input({ kind: 'escape' })}>
            put it back
          </button>
        </>
      ) : (
        <button
          type="button"
          className="do"
          onClick={() => {
            view.select({ kind: 'outline', id });
            view.input({ kind: 'mend' });
          }}
        >
          uncross {name}
        </button>
      )}
    </div>
  ));
}
