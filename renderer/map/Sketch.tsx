import './map.css';
import { type KeyboardEvent, type PointerEvent, useCallback, useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import { tracedRing } from '../../core/curves/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import type { Yard } from '../../core/yard.ts';
import type { ResolvedYard } from '../../core/zones/index.ts';
import {
  canGrab,
  cutPartNear,
  type DrawingInput,
  type DrawingState,
  type Preview,
  type Selection,
  type Xy,
} from '../drawing/index.ts';
import type { DrawnChange } from './ChangeLayer.tsx';
import { cutNear } from './cutNear.ts';
import { Ink } from './Ink.tsx';
import { NorthArrow } from './NorthArrow.tsx';
import { PictureLayer } from './PictureLayer.tsx';
import { placesOf } from './placesOf.ts';
import { endsArrows } from './readKey.ts';
import { sectionAt } from './sectionAt.ts';
import { sketchKey } from './sketchKey.ts';
import { sketchSight } from './sketchSight.ts';
import { useLeafletMap } from './useLeafletMap.ts';
import { usePointer } from './usePointer.ts';

export interface SketchProps {
  /** As shown this moment: `preview.yard` while something is in hand. */
  readonly yard: Yard;
  readonly resolved: ResolvedYard | null;
  /** Laid over the ground; null where the outlines are what counts. */
  readonly plan: GroundPlan | null;
  /** The plan was made from an earlier state of the ground: it is shown faint, never as fresh. */
  readonly planStale: boolean;
  /** How often the passes cover the ground is drawn as ink of that depth. */
  readonly coverShown: boolean;
  /** Drawn over the outlines while two states of the yard are compared; null otherwise. */
  readonly change: DrawnChange | null;
  readonly imageUrls: ReadonlyMap<string, string>;
  readonly selection: Selection;
  readonly onSelect: (selection: Selection) => void;
  readonly drawing: DrawingState;
  readonly preview: Preview;
  readonly onInput: (input: DrawingInput) => void;
}

/** The right page: the yard drawn in ink. It draws and passes on what the hand does; it changes nothing itself. */
export function Sketch(props: SketchProps) {
  const { yard, plan, imageUrls, drawing, preview } = props;
  const units = yard.details.unitSystem;
  const element = useRef<HTMLDivElement>(null);
  const latest = useRef(props);
  latest.current = props;

  // One function for good: hundreds of outlines are not drawn again because a parent made a new one.
  const choose = useCallback((selection: Selection) => latest.current.onSelect(selection), []);

  const pointer = usePointer((at, reachM) => {
    const now = latest.current;
    const inHand = now.preview.walk?.inHand;
    if (inHand?.hasHandles) return cutPartNear(inHand.line, at, reachM) !== null;
    const context = { yard: now.yard, units, mayEdit: now.preview.mayEdit, walk: null, makeId: noIds };
    return canGrab(now.drawing, at, reachM, context);
  });
  const { map, look } = useLeafletMap(element, yard.details.frame, click);

  function click(containerPx: Xy): void {
    if (map === null || pointer.wasGrab()) return;
    const now = latest.current;
    const at = map.toYard(containerPx);
    const pointing = pointer.pointing(map, at);
    if (now.plan === null || now.drawing.kind === 'add-cut' || now.drawing.kind === 'place-end') {
      now.onInput({ kind: 'click', ...pointing });
      return;
    }
    const cutId = now.preview.walk === null ? undefined : cutNear(now.preview.walk, at, pointing.reachM);
    if (cutId !== undefined) {
      now.onSelect({ kind: 'cut', id: cutId });
      return;
    }
    const id = sectionAt(now.plan, at);
    now.onSelect(id === undefined ? null : { kind: 'section', id });
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (map === null) return;
    const { onInput } = latest.current;
    if (sketchKey(event, { map, drawing, units, onInput, places: () => placesOf(latest.current.yard) })) {
      event.preventDefault();
      pointer.keysPoint();
    }
  }

  useEffect(() => pointer.attach(element.current, map, () => latest.current.onInput), [map, pointer]);
  // Once for each sketch, and each yard file has its own: not whenever the yard changes.
  useEffect(() => map?.fit(placesOf(latest.current.yard)), [map]);
  const metresPerPx = look?.lens.metresPerPx ?? null;
  useEffect(() => sketchSight.set(map, metresPerPx), [map, metresPerPx]);
  useEffect(() => () => sketchSight.set(null, null), []);
  const aim = preview.aim?.at;
  useEffect(() => {
    if (map !== null && aim !== undefined && pointer.isAway()) map.bringInSight(aim);
  }, [map, aim, pointer]);

  // A corner typed a hundred feet on may well be off the page.
  const tracedSoFar = drawing.kind === 'trace' ? drawing.corners : null;
  useEffect(() => {
    if (map !== null && tracedSoFar !== null) map.keepInSight(tracedSoFar, tracedSoFar.slice(-1));
  }, [map, tracedSoFar]);
  // So may an outline drawn by its figures; what is brought in from a file comes by the dozen.
  const outlinesBefore = useRef(yard.outlines);
  useEffect(() => {
    const isOneMore = yard.outlines.length === outlinesBefore.current.length + 1;
    const added =
      isOneMore && yard.outlines.find((row) => !outlinesBefore.current.some(({ id }) => id === row.id));
    outlinesBefore.current = yard.outlines;
    if (map === null || !added) return;
    const ring = tracedRing(added.outer);
    map.keepInSight(ring, ring);
  }, [map, yard.outlines]);

  const attributions = [...new Set(yard.pictures.map(({ attribution }) => attribution))].filter(Boolean);
  return (
    <div className="sketch">
      <div
        ref={element}
        className={WITH_CROSSHAIR.has(drawing.kind) && preview.mayEdit ? 'sketch-map aiming' : 'sketch-map'}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the sketch is worked from the keyboard
        tabIndex={0}
        role="application"
        aria-label={`Sketch of ${yard.details.name}. Arrow keys slide it, plus and minus zoom, Home shows all of it.`}
        onPointerLeave={(event: PointerEvent) => event.pointerType === 'mouse' && pointer.left()}
        onKeyDown={onKeyDown}
        onKeyUp={(event) => endsArrows(event.key) && props.onInput({ kind: 'arrows-let-go' })}
        onBlur={() => props.onInput({ kind: 'arrows-let-go' })}
      >
        {map !== null &&
          look !== null &&
          createPortal(
            <PictureLayer
              pictures={yard.pictures}
              imageUrls={imageUrls}
              lens={look.lens}
              pale={plan !== null}
            />,
            map.picturePane,
          )}
        {map !== null &&
          look !== null &&
          createPortal(<Ink {...props} onSelect={choose} look={look} />, map.inkPane)}
      </div>
      <NorthArrow />
      {attributions.length > 0 && <p className="attribution">{attributions.join(' · ')}</p>}
    </div>
  );
}

const WITH_CROSSHAIR: ReadonlySet<DrawingState['kind']> = new Set([
  'trace',
  'oval',
  'place-mark',
  'scale-picture',
  'tape-between',
  'place-yard',
  'add-cut',
  'place-end',
]);

/** Asking whether something can be grabbed makes nothing new. */
function noIds(): string {
  return '';
}
