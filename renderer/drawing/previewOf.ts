import { applyEdit, makeEdit, moveYardEdit, putRow } from '../../core/edits/index.ts';
import { movePoint } from '../../core/frame/index.ts';
import { checksFollowing } from '../../core/fieldCheck/index.ts';
import { checkRing, distanceM, findCrossing, regionAreaM2, signedAreaM2 } from '../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { Outline, OutlineKind, Yard } from '../../core/yard.ts';
import type {
  DrawingContext,
  DrawingState,
  Handle,
  MoveYardState,
  ReshapeState,
  ScalePictureState,
  SelectState,
  TapeBetweenState,
  TraceState,
} from './drawing.ts';
import { moveMarkEdit, withRings } from './outlineEdits.ts';
import { cornerAfter, cornerBefore } from './plane.ts';
import type { Snap } from './snap.ts';
import { isMoved, motionInHand, turnHandle } from './states/moveYard.ts';
import { ringsOf } from './states/rings.ts';

/** A measured line to be written beside its edge. */
export interface Dimension {
  readonly from: YardPoint;
  readonly to: YardPoint;
  readonly lengthM: number;
}

/** What the hand is doing, ready to be drawn; `yard` is the yard as it would stand if the hand let go now. */
export interface Preview {
  readonly yard: Yard;
  /** Whether the hand may change anything here; no handles are shown where it may not. */
  readonly mayEdit: boolean;
  /** The outline being traced, open until it closes. */
  readonly traced: { readonly kind: OutlineKind; readonly corners: Ring } | null;
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
}

export interface Reshaping {
  readonly outlineId: string;
  readonly rings: readonly Ring[];
  readonly hover: Handle | null;
  readonly chosen: Handle | null;
}

/** What to draw for a state. The yard comes back as the very same object when the hand changes nothing in it. */
export function previewOf(state: DrawingState, context: DrawingContext): Preview {
  if (!context.mayEdit) return plain(context);
  switch (state.kind) {
    case 'select':
      return { ...plain(context), yard: withMark(state, context) };
    case 'trace':
      return tracePreview(state, context);
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

function plain({ yard, mayEdit }: DrawingContext): Preview {
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

function tracePreview(state: TraceState, context: DrawingContext): Preview {
  const { corners, aim, outlineKind } = state;
  const first = corners[0];
  const last = corners[corners.length - 1];
  const next = aim !== null && aim.to !== 'first-corner' ? [aim.at] : [];
  const shape = last === undefined ? [] : [...corners, ...next];
  const end = shape[shape.length - 1];
  // A crossing counts once the person tried to close; while the pointer roams it would only flicker.
  const crossing = state.problem?.kind === 'shape/self-crossing' ? (findCrossing(corners) ?? null) : null;
  return {
    ...plain(context),
    traced: { kind: outlineKind, corners },
    rubber: last && aim ? [last, aim.at] : [],
    closing: first && end && shape.length >= 3 ? [end, first] : [],
    broken: crossing ? [corners] : [],
    crossing,
    dimensions: outsideDimensions(shape),
    areaM2: shape.length >= 3 && findCrossing(shape) === undefined ? areaM2Of([shape]) : null,
    aim,
  };
}

/** Lengths are written on the right of their edge: outside a shape that runs counter-clockwise, so others are turned. */
function outsideDimensions(shape: Ring): readonly Dimension[] {
  const clockwise = shape.length >= 3 && signedAreaM2(shape) < 0;
  return shape.slice(1).map((to, i) => {
    const from = shape[i] ?? to;
    return clockwise ? dimension(to, from) : dimension(from, to);
  });
}

function reshapePreview(state: ReshapeState, context: DrawingContext): Preview {
  const outline = context.yard.outlines.find(({ id }) => id === state.outlineId);
  if (outline === undefined) return plain(context);
  const draft = state.draft?.of === outline ? state.draft : null;
  const rings = draft?.rings ?? ringsOf(outline);
  const bad =
    draft === null ? undefined : rings.find((ring) => !checkRing(ring, outline.id, outline.name).ok);
  const yard =
    draft === null || bad !== undefined
      ? context.yard
      : withOutline(context.yard, outline, withRings(outline, rings));
  return {
    ...plain(context),
    yard,
    broken: bad === undefined ? [] : rings,
    crossing: (bad && findCrossing(bad)) ?? null,
    dimensions: dimensionsAt(rings, state.hover ?? state.chosen),
    areaM2: bad === undefined ? areaM2Of(rings) : null,
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

/** The edge itself for an edge, both edges that meet for a corner. */
function dimensionsAt(rings: readonly Ring[], handle: Handle | null): readonly Dimension[] {
  const ring = handle === null ? undefined : rings[handle.ring];
  const corner = ring?.[handle?.at ?? 0];
  if (handle === null || ring === undefined || corner === undefined) return [];
  const after = cornerAfter(ring, handle.at);
  const before = cornerBefore(ring, handle.at);
  const onward = after ? [dimension(corner, after)] : [];
  return handle.of === 'edge' || before === undefined ? onward : [dimension(before, corner), ...onward];
}

function dimension(from: YardPoint, to: YardPoint): Dimension {
  return { from, to, lengthM: distanceM(from, to) };
}

function areaM2Of(rings: readonly Ring[]): number {
  const [outer = [], ...holes] = rings;
  return Math.abs(regionAreaM2({ outer, holes }));
}
