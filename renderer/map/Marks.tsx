import { memo } from 'react';
import type { Mark } from '../../core/yard.ts';
import { MARK_WORDS, type Selection } from '../drawing/index.ts';
import type { Lens } from './lens.ts';

interface MarksProps {
  readonly marks: readonly Mark[];
  readonly lens: Lens;
  readonly selection: Selection;
  readonly onChoose: (selection: Selection) => void;
}

/** Spigots as a circle with a plus, landmarks as a survey mark. */
export const Marks = memo(function Marks({ marks, lens, selection, onChoose }: MarksProps) {
  return (
    <g>
      {marks.map((mark) => {
        const { x, y } = lens.toLayer(mark.at);
        const selected = selection?.kind === 'mark' && selection.id === mark.id;
        return (
          // biome-ignore lint/a11y/useSemanticElements: a button cannot stand inside a drawing
          <g
            key={mark.id}
            transform={`translate(${x.toFixed(2)} ${y.toFixed(2)})`}
            className={`mark mark-${mark.kind}${selected ? ' selected' : ''}`}
            role="button"
            tabIndex={0}
            aria-label={`${MARK_WORDS[mark.kind]} ${mark.name}`}
            aria-pressed={selected}
            onKeyDown={(event) => {
              if (selected || (event.key !== 'Enter' && event.key !== ' ')) return;
              event.preventDefault();
              event.stopPropagation();
              onChoose({ kind: 'mark', id: mark.id });
            }}
          >
            {mark.kind === 'spigot' ? (
              <>
                <circle r="12.5" className="mark-ring" />
                <path d="M-6.5 0H6.5M0 -6.5V6.5" className="mark-cross" />
              </>
            ) : (
              <>
                <path d="M0 -10L9 6H-9Z" className="mark-ring" />
                <circle r="1.8" className="mark-dot" />
              </>
            )}
          </g>
        );
      })}
    </g>
  );
});
