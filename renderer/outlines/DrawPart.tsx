import { MARK_KINDS, OUTLINE_KINDS, type OutlineKind } from '../../core/yard.ts';
import { useBook, useViewState } from '../app/context.ts';
import { MARK_WORDS, OUTLINE_WORDS, type Tool } from '../drawing/index.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { EdgeRow } from './EdgeRow.tsx';

const SHAPES = ['corners', 'circle', 'ellipse'] as const;

/** What can be drawn; of an outline also as what shape, and how its next edge runs. */
export function DrawPart() {
  const { view } = useBook();
  const { drawing } = useViewState();
  const kind = drawing.kind === 'trace' || drawing.kind === 'oval' ? drawing.outlineKind : null;
  const shape = drawing.kind === 'oval' ? drawing.shape : 'corners';
  const edge = drawing.kind === 'trace' ? drawing.edge.kind : null;
  return (
    <PagePart title="Draw" aside="click the corners, or type length and angle">
      <div className="do-row">
        {OUTLINE_KINDS.map((one) => (
          <button
            key={one}
            type="button"
            className="do"
            aria-pressed={kind === one}
            onClick={() => view.take({ kind: 'trace', outlineKind: one })}
          >
            {OUTLINE_WORDS[one]}
          </button>
        ))}
      </div>
      {kind !== null && (
        <fieldset className="do-row" aria-label={`Shape of the ${OUTLINE_WORDS[kind]}`}>
          <span>shape</span>
          {SHAPES.map((one) => (
            <button
              key={one}
              type="button"
              className="do"
              aria-pressed={shape === one}
              onClick={() => view.take(toolOf(kind, one))}
            >
              {one}
            </button>
          ))}
        </fieldset>
      )}
      {edge !== null && (
        <EdgeRow
          name="Next edge"
          run={edge === 'radius' ? 'arc' : edge}
          onRun={(to) => view.input({ kind: 'run', edge: to })}
        />
      )}
      <div className="do-row">
        {MARK_KINDS.map((one) => (
          <button
            key={one}
            type="button"
            className="do"
            aria-pressed={drawing.kind === 'place-mark' && drawing.markKind === one}
            onClick={() => view.take({ kind: 'place-mark', markKind: one })}
          >
            {MARK_WORDS[one]}
          </button>
        ))}
      </div>
    </PagePart>
  );
}

function toolOf(outlineKind: OutlineKind, shape: (typeof SHAPES)[number]): Tool {
  return shape === 'corners' ? { kind: 'trace', outlineKind } : { kind: 'oval', outlineKind, shape };
}
