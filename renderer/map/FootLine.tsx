import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { GroundPlan } from '../../core/plan/index.ts';
import { problemText } from '../../core/problemText.ts';
import type { YardPoint } from '../../core/spaces.ts';
import { counted, formatArea, otherUnits } from '../../core/units/index.ts';
import type { UnitSystem, Yard } from '../../core/yard.ts';
import type { ResolvedYard } from '../../core/zones/index.ts';
import {
  type DrawingInput,
  type DrawingState,
  type Preview,
  promptOf,
  type Selection,
} from '../drawing/index.ts';
import { shownTreatedM2 } from '../shared/shownArea.ts';
import { placesOf } from './placesOf.ts';
import { endsArrows } from './readKey.ts';
import { ScaleBar } from './ScaleBar.tsx';
import { isMend, sketchKey } from './sketchKey.ts';
import { useSketchSight } from './sketchSight.ts';

interface FootLineProps {
  readonly drawing: DrawingState;
  /** null where nothing is drawn by hand, on the sheet's page. */
  readonly preview: Preview | null;
  readonly yard: Yard;
  readonly resolved: ResolvedYard | null;
  readonly plan?: GroundPlan | null;
  readonly selection?: Selection;
  readonly saving: 'saved' | 'saving' | 'failed';
  readonly readOnly?: boolean;
  readonly onInput: (input: DrawingInput) => void;
}

/** The one line at the foot of the sketch: what to do now, a figure to type, scale, area in hand, saved or not. */
export function FootLine(props: FootLineProps) {
  const { drawing, preview, yard, saving, readOnly, onInput } = props;
  const { map, metresPerPx } = useSketchSight();
  const [text, setText] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const units = yard.details.unitSystem;
  const prompt = promptOf(drawing, units, yard, preview?.mayEdit ?? false);
  const typable = prompt.typedLabel !== null;
  useTypingFindsField(field, typable);
  // A tool taken on the page: the keys it wants are the field's from now on.
  const inHand =
    drawing.kind === 'trace' || drawing.kind === 'oval'
      ? `${drawing.kind} ${drawing.outlineKind}`
      : drawing.kind;
  // biome-ignore lint/correctness/useExhaustiveDependencies: taking another kind to trace takes the keys anew
  useEffect(() => {
    if (typable && TOOLS.has(drawing.kind)) field.current?.focus();
  }, [typable, inHand, drawing.kind]);
  const other = otherUnits(units);
  const areaM2 = areaInHandM2(props, units);
  const otherAreaM2 = areaInHandM2(props, other);

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>): void {
    if (event.key === 'Enter') {
      event.preventDefault();
      event.stopPropagation();
      onInput({ kind: 'typed', text });
      setText('');
    } else if (map !== null && isMend(event)) {
      event.preventDefault();
      onInput({ kind: 'mend' });
    } else if (text === '' && map !== null && !'+-=_'.includes(event.key)) {
      const places = (): readonly YardPoint[] => placesOf(yard);
      if (sketchKey(event, { map, drawing, units, onInput, places })) event.preventDefault();
    } else if (event.key === 'Escape') {
      setText('');
    }
  }

  const words =
    preview === null
      ? 'The sheet, page by page, as it will be printed'
      : props.plan && !WALK_STATES.has(drawing.kind)
        ? preview.walk === null
          ? 'Click a section to find it in the columns'
          : 'Click a section or a cut'
        : prompt.text;
  const moreLoads = preview?.walk?.inHand?.sides?.moreLoads ?? 0;
  const wrong = prompt.problem && problemText(prompt.problem, units);
  // What mends it is offered beside it at one key, where there is such a mend.
  const wrongWords = wrong && (prompt.offers.length > 0 ? wrong.what : `${wrong.what} ${wrong.mend}`);
  return (
    <footer className="foot-line">
      <div className="foot-prompt">
        <span aria-live="polite">
          {wrongWords ? <strong>{wrongWords}</strong> : words}
          <span className="unseen">
            {prompt.offers.map((offer) => ` ${offer.key}: ${offer.words}.`).join('')}
          </span>
        </span>
        {prompt.offers.map(({ words: offered, key, input }) => (
          <button
            key={key}
            type="button"
            className="do"
            aria-keyshortcuts={key}
            onClick={() => {
              onInput(input);
              field.current?.focus();
            }}
          >
            {offered} <span className="note">{key}</span>
          </button>
        ))}
        {typable && (
          <>
            <input
              ref={field}
              className={
                drawing.kind === 'place-yard' ? 'figure foot-figure foot-place' : 'figure foot-figure'
              }
              aria-label={prompt.typedLabel ?? undefined}
              aria-invalid={wrong !== null}
              value={text}
              autoComplete="off"
              spellCheck={false}
              onChange={(event) => setText(event.target.value)}
              onKeyDown={onKeyDown}
              onKeyUp={(event) => endsArrows(event.key) && onInput({ kind: 'arrows-let-go' })}
              onBlur={() => onInput({ kind: 'arrows-let-go' })}
            />
            <span>{prompt.unit}</span>
          </>
        )}
        {prompt.snapped && <span className="foot-soft">{prompt.snapped}</span>}
        {moreLoads > 0 && <span className="foot-more">{counted(moreLoads, 'load')} more</span>}
      </div>
      {metresPerPx !== null && (
        <div className="foot-cell">
          {hasNoScale(yard) ? (
            <span className="foot-soft">scale not known</span>
          ) : (
            <ScaleBar metresPerPx={metresPerPx} units={units} />
          )}
        </div>
      )}
      {areaM2 !== null && otherAreaM2 !== null && (
        <div className="foot-cell foot-area">
          <span>{formatArea(areaM2, units)}</span>
          <span className="foot-soft">{formatArea(otherAreaM2, other)}</span>
        </div>
      )}
      <div className="foot-cell foot-soft" role="status">
        {readOnly ? 'read only' : SAVING_WORDS[saving]}
      </div>
    </footer>
  );
}

/** Nothing but a picture that nobody has said the size of: a bar beside it would be a guess. */
function hasNoScale({ pictures, outlines }: Yard): boolean {
  return outlines.length === 0 && pictures.some(({ placement }) => placement.kind === 'unscaled');
}

/** What is being drawn, else the selected zone's treated area, else the selected section's. */
function areaInHandM2(props: FootLineProps, shownIn: UnitSystem): number | null {
  const { preview, selection, drawing, resolved, plan } = props;
  if (preview !== null && (drawing.kind === 'trace' || drawing.kind === 'oval')) return preview.areaM2;
  const outlineId = drawing.kind === 'reshape' ? drawing.outlineId : selection?.id;
  const section = selection?.kind === 'section' && plan?.sections.find(({ id }) => id === selection.id);
  if (section) return section.areaM2;
  return shownTreatedM2(resolved, shownIn, outlineId) ?? preview?.areaM2 ?? null;
}

/** Kinds of drawing that wait for typed values. */
const TOOLS: ReadonlySet<DrawingState['kind']> = new Set([
  'trace',
  'oval',
  'place-mark',
  'scale-picture',
  'tape-between',
  'place-yard',
  'move-yard',
  'add-cut',
  'place-end',
]);

/** What is done to a plan by hand; with anything else in hand, the plan is only looked at. */
const WALK_STATES: ReadonlySet<DrawingState['kind']> = new Set(['cut', 'add-cut', 'place-end']);

const SAVING_WORDS = { saved: 'all saved', saving: 'saving', failed: 'not saved' } as const;

/** A figure or a word typed while the sketch has the focus goes to the field: no reaching for the mouse to type a length. */
function useTypingFindsField(field: { readonly current: HTMLInputElement | null }, typable: boolean): void {
  useEffect(() => {
    if (!typable) return;
    function onKeyDown(event: globalThis.KeyboardEvent): void {
      const target = event.target as HTMLElement | null;
      if (target?.closest('input, textarea, select, [contenteditable]')) return;
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (/^[0-9a-z.@]$/i.test(event.key)) field.current?.focus();
    }
    window.addEventListener('keydown', onKeyDown, true);
    return () => window.removeEventListener('keydown', onKeyDown, true);
  }, [field, typable]);
}
