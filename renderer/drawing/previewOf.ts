import { applyEdit, makeEdit, moveYardEdit, putRow } from '../../core/edits/index.ts';
import { movePoint } from '../../core/frame/index.ts';
import { checksFollowing } from '../../core/fieldCheck/index.ts';
import { tracedRing } from '../../core/curves/index.ts';
import { regionAreaM2 } from '../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { Outline, OutlineKind, Traced, Yard } from '../../core/yard.ts';
import type {
  DrawingContext,
  DrawingState,
  Handle,
  MoveYardState,
  ReshapeState,
  ScalePictureState,
  SelectState,
  TapeBetweenState,
} from './drawing.ts';
import { type Dimension, dimension, dimensionsAt } from './dimensions.ts';
import { mayStep } from './mayStep.ts';
import { moveMarkEdit, tracedProblem, withRings } from './outlineEdits.ts';
import type { Snap } from './snap.ts';
import { isMoved, motionInHand, turnHandle } from './states/moveYard.ts';
import { ringsOf } from './states/rings.ts';
import { ovalPreview, tracePreview } from './tracePreview.ts';
import { addCutPreview, cutPreview, type WalkPreview, walkPreview } from './walkPreview.ts';

/** What the hand is doing, ready to be drawn; `yard` is the yard as it would stand if the hand let go now. */
export interface Preview {
  readonly yard: Yard;
  /** Whether the hand may change anything here; no handles are shown where it may not. */
  readonly mayEdit: boolean;
  /** The outline being traced, open until it closes. */
  readonly traced: TracedSoFar | null;
  /** From the last corner to where the next would go, and the way back that would close it. */
  readonly rubber: readonly YardPoint[];
  readonly closing: readonly YardPoint[];
  /** Rings that cannot stand as they are, drawn as such and not part of `yard`. */
  readonly broken: readonly Ring[];
  readonly crossing: YardPoint | null;
  readonly dimensions: readonly Dimension[];
  /** Area of what is in hand; null while it has none. */
  readonly areaM2: number | null;
  readonly aim: Snap | null;
  readonly reshaping: Reshaping | null;
  readonly pointedLength: readonly YardPoint[];
  /** Places pointed out, each on its own. */
  readonly pointed: readonly YardPoint[];
  /** What of the walk a hand can take hold of; null on every page but its own. */
  readonly walk: WalkPreview | null;
}

/** An outline being drawn. */
export interface TracedSoFar {
  readonly kind: OutlineKind;
  /** Where points were placed: corners, a centre. */
  readonly corners: readonly YardPoint[];
  /** Points placed on arcs. */
  readonly vias: readonly YardPoint[];
  /** The edge as far as it is settled. */
  readonly line: Ring;
  /** The ground it would hold with its next point where the hand points. */
  readonly ground: Ring;
}

export interface Reshaping {
  readonly outlineId: string;
  readonly rings: readonly Traced[];
  readonly hover: Handle | null;
  readonly chosen: Handle | null;
}

/** What to draw for a state. The yard comes back as the very same object when the hand changes nothing in it. */
export function previewOf(state: DrawingState, context: DrawingContext): Preview {
  if (!mayStep(state, context)) return plain(context);
  switch (state.kind) {
    case 'cut':
      return { ...plain(context), ...cutPreview(state, context) };
    case 'add-cut':
      return { ...plain(context), ...addCutPreview(state, context) };
    case 'place-end':
      return { ...plain(context), mayEdit: true, aim: state.aim };
    case 'select':
      return { ...plain(context), yard: withMark(state, context) };
    case 'trace':
      return { ...plain(context), ...tracePreview(state) };
    case 'oval':
      return { ...plain(context), ...ovalPreview(state) };
    case 'place-mark':
      return { ...plain(context), aim: state.aim };
    case 'reshape':
      return reshapePreview(state, context);
    case 'place-yard':
      return {
        ...plain(context),
        aim: state.at === null ? state.aim : null,
        pointed: [...state.known.map(({ at }) => at), ...(state.at === null ? [] : [state.at])],
      };
    case 'move-yard':
      return movePreview(state, context);
    case 'scale-picture':
      return { ...plain(context), ...scalePreview(state) };
    case 'tape-between':
      return { ...plain(context), ...tapePreview(state) };
  }
}

function plain({ yard, mayEdit, walk }: DrawingContext): Preview {
  return {
    yard,
    mayEdit,
    traced: null,
    rubber: [],
    closing: [],
    broken: [],
    crossing: null,
    dimensions: [],
    areaM2: null,
    aim: null,
    reshaping: null,
    pointedLength: [],
    pointed: [],
    walk: walkPreview(walk),
  };
}

function withMark(state: SelectState, context: DrawingContext): Yard {
  const { yard } = context;
  const to = state.mark?.to;
  const mark = yard.marks.find(({ id }) => id === state.mark?.id);
  return mark && to ? applyEdit(yard, moveMarkEdit(context, mark, to)) : yard;
}

/** The yard with an outline reshaped, and what was taped to its corners with it. */
function withOutline(yard: Yard, before: Outline, after: Outline): Yard {
  const checks = checksFollowing(yard.checks, before, after).map((check) => putRow(yard, 'checks', check));
  return applyEdit(yard, makeEdit('', putRow(yard, 'outlines', after), ...checks));
}

function reshapePreview(state: ReshapeState, context: DrawingContext): Preview {
  const outline = context.yard.outlines.find(({ id }) => id === state.outlineId);
  if (outline === undefined) return plain(context);
  const draft = state.draft?.of === outline ? state.draft : null;
  const rings = draft?.rings ?? ringsOf(outline);
  const problems = rings.map((ring) => tracedProblem(ring, outline.id, outline.name));
  const bad = problems.find((problem) => problem !== null);
  const yard =
    draft === null || bad !== undefined
      ? context.yard
      : withOutline(context.yard, outline, withRings(outline, rings));
  const drawn = rings.map(tracedRing);
  return {
    ...plain(context),
    yard,
    broken: draft === null || bad === undefined ? [] : drawn,
    crossing: bad?.kind === 'shape/self-crossing' ? bad.facts.crossing : null,
    dimensions: dimensionsAt(rings, state.hover ?? state.chosen),
    areaM2: bad === undefined ? areaM2Of(drawn) : null,
    aim: state.held ? state.snap : null,
    reshaping: { outlineId: outline.id, rings, hover: state.hover, chosen: state.chosen },
  };
}

function scalePreview(state: ScalePictureState): Partial<Preview> {
  const { from, to, aim } = state;
  const end = to ?? aim;
  return {
    aim: aim && to === null ? { at: aim, to: 'nothing', words: '' } : null,
    pointedLength: from === null ? [] : end === null ? [from] : [from, end],
  };
}

/** The line between both ends, the map's own length along it once it has two. */
function tapePreview({ from, to, aim }: TapeBetweenState): Partial<Preview> {
  const end = to ?? aim?.at ?? null;
  const line = from === null ? [] : end === null ? [from] : [from, end];
  const [a, b] = line;
  return {
    aim: to === null ? aim : null,
    pointedLength: line,
    dimensions: a !== undefined && b !== undefined ? [dimension(a, b)] : [],
  };
}

/** The yard where it would lie, and the handle it is turned by. */
function movePreview(state: MoveYardState, context: DrawingContext): Preview {
  const motion = motionInHand(state, context.yard);
  const yard = isMoved(state) ? applyEdit(context.yard, moveYardEdit(context.yard, motion)) : context.yard;
  return {
    ...plain(context),
    yard,
    pointedLength: [motion.to, movePoint(motion, turnHandle(context.yard))],
  };
}

function areaM2Of(rings: readonly Ring[]): number {
  const [outer = [], ...holes] = rings;
  return Math.abs(regionAreaM2({ outer, holes }));
}
