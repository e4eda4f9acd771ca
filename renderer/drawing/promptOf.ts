import type { Problem } from '../../core/problems.ts';
import { formatLength } from '../../core/units/index.ts';
import type { UnitSystem, Yard } from '../../core/yard.ts';
import type {
  CutState,
  DrawingInput,
  DrawingState,
  Handle,
  OvalState,
  PlaceYardState,
  ReshapeState,
  SetAside,
  TapeBetweenState,
  TraceState,
} from './drawing.ts';
import { edgeLengthM } from './edges.ts';
import { MARK_WORDS, OUTLINE_WORDS } from './names.ts';
import { tracedProblem } from './outlineEdits.ts';
import { ringsOf } from './states/rings.ts';
import { AT_REST } from './step.ts';

/** The one line at the foot: what to do now, what a typed value would be, what the pointer snapped to. */
export interface Prompt {
  readonly text: string;
  /** The name of the typed field; null when there is nothing to type. */
  readonly typedLabel: string | null;
  readonly unit: string;
  /** "snapped to corner of House"; '' when nothing. */
  readonly snapped: string;
  readonly problem: Problem | null;
  /** What the person may have done at one key: a crossing mended, a mend kept or put back. */
  readonly offers: readonly Offer[];
}

export interface Offer {
  readonly words: string;
  readonly key: string;
  readonly input: DrawingInput;
}

/** @param mayEdit whether what is in hand has its place here (see `mayStep`) */
export function promptOf(given: DrawingState, units: UnitSystem, yard: Yard, mayEdit: boolean): Prompt {
  const unit = units === 'us' ? 'ft' : 'm';
  const state = mayEdit ? given : AT_REST;
  const common = { unit, problem: state.problem, snapped: '', offers: offersOf(state, yard) };
  switch (state.kind) {
    case 'select': {
      const mark = yard.marks.find(({ id }) => id === state.mark?.id);
      const nothing = mayEdit && yard.outlines.length === 0;
      const idle = nothing ? 'Pick what to draw, then click its corners' : 'Click an outline or a mark';
      const text = mark ? `Drag ${mark.name} or use the arrow keys` : idle;
      return { ...common, text, typedLabel: null };
    }
    case 'trace':
      return { ...common, ...tracePrompt(state), snapped: snapWords(state.aim?.words) };
    case 'oval':
      return { ...common, ...ovalPrompt(state), snapped: snapWords(state.aim?.words) };
    case 'place-mark':
      return {
        ...common,
        text: `Click the ${MARK_WORDS[state.markKind]}, or type east, north:`,
        typedLabel: 'East, north',
        snapped: snapWords(state.aim?.words),
      };
    case 'reshape':
      return { ...common, ...reshapePrompt(state, units, yard), snapped: snapWords(state.snap?.words) };
    case 'place-yard':
      return { ...common, ...placePrompt(state), unit: '', snapped: snapWords(state.aim?.words) };
    case 'move-yard': {
      const text = 'Drag the yard or its handle, or type east, north, or a turn:';
      return { ...common, text, typedLabel: 'East, north, or degrees clockwise', unit: '' };
    }
    case 'scale-picture': {
      if (state.from === null)
        return { ...common, text: 'Click one end of a length you know', typedLabel: null };
      if (state.to === null) return { ...common, text: 'Click its other end', typedLabel: null };
      return { ...common, text: 'Type how long it is on the ground:', typedLabel: 'True length' };
    }
    case 'tape-between':
      return { ...common, ...tapePrompt(state), snapped: snapWords(state.aim?.words) };
    case 'cut':
      return { ...common, ...cutPrompt(state) };
    case 'add-cut': {
      const text = `Click the edge where the cut ${state.from === null ? 'begins' : 'ends'}, or type:`;
      const typedLabel = 'East, north, or how far along the edge';
      return { ...common, text, typedLabel, snapped: snapWords(state.aim?.snap.words) };
    }
    case 'place-end': {
      const text = `Click where the walk ${state.end === 'start' ? 'starts' : 'finishes'}, or type east, north:`;
      return { ...common, text, typedLabel: 'East, north', snapped: snapWords(state.aim?.words) };
    }
  }
}

function cutPrompt({ chosen }: CutState): Pick<Prompt, 'text' | 'typedLabel'> {
  if (chosen === 'from' || chosen === 'to') {
    return { text: 'Drag the end, or type how far along its edge:', typedLabel: 'Along the edge' };
  }
  return { text: 'Drag an end or the middle, or type length, bearing:', typedLabel: 'Length and bearing' };
}

/** The field stays from the first click on: it has the keys, the arrows included, while the ends are pointed out. */
function tapePrompt({ from, to }: TapeBetweenState): Pick<Prompt, 'text' | 'typedLabel'> {
  const typedLabel = 'Taped distance';
  if (from === null) return { text: 'Click where the tape begins:', typedLabel };
  if (to === null) return { text: 'Click where the tape ends:', typedLabel };
  return { text: 'Type what the tape reads:', typedLabel };
}

function placePrompt({ at, known }: PlaceYardState): Pick<Prompt, 'text' | 'typedLabel'> {
  const typedLabel = 'Place of the point';
  if (at !== null) return { text: 'Type its latitude, longitude:', typedLabel };
  if (known.length === 0) return { text: 'Click a point whose place on earth you know', typedLabel };
  if (known.length === 1) return { text: 'Click another, far from the first', typedLabel };
  return { text: 'Click another, or Enter to place the yard by these', typedLabel };
}

function tracePrompt(state: TraceState): Pick<Prompt, 'text' | 'typedLabel'> {
  const word = OUTLINE_WORDS[state.outlineKind];
  if (state.corners.length === 0) {
    if (state.setAside !== null)
      return { text: `Click a corner, or${asideWords(state.setAside)}`, typedLabel: 'East, north' };
    return { text: `Click a corner of the ${word}, or type east, north:`, typedLabel: 'East, north' };
  }
  const { edge } = state;
  if (edge.kind === 'arc' && edge.via === null) {
    return { text: 'A point on the arc, or length, angle:', typedLabel: 'Length and angle' };
  }
  const next = edge.kind === 'straight' ? 'Next corner' : EDGE_PROMPTS[edge.kind];
  const text =
    state.corners.length >= 3 ? `${next}, Enter to close, or length, angle:` : `${next}, or length, angle:`;
  return { text, typedLabel: 'Length and angle' };
}

const EDGE_PROMPTS = {
  arc: 'Where the arc ends',
  radius: 'Where the arc ends',
  smooth: 'Next corner, smoothly',
} as const;

function ovalPrompt({ shape, points, outlineKind }: OvalState): Pick<Prompt, 'text' | 'typedLabel'> {
  const word = OUTLINE_WORDS[outlineKind];
  if (points.length === 0) {
    return { text: `Click the centre of the ${word}, or type east, north:`, typedLabel: 'East, north' };
  }
  if (shape === 'circle') return { text: 'Click its rim, or type its radius:', typedLabel: 'Radius' };
  if (points.length === 1) {
    return { text: 'Click the end of its length, or length, bearing:', typedLabel: 'Length and bearing' };
  }
  return { text: 'Click how wide it is, or type its width:', typedLabel: 'Width' };
}

const MEND: Offer = { words: 'mend', key: 'Ctrl+M', input: { kind: 'mend' } };
const KEEP: Offer = { words: 'keep it', key: 'Enter', input: { kind: 'typed', text: '' } };
const PUT_BACK: Offer = { words: 'put it back', key: 'Esc', input: { kind: 'escape' } };

function offersOf(state: DrawingState, yard: Yard): readonly Offer[] {
  if (state.kind === 'trace') return state.problem?.kind === 'shape/self-crossing' ? [MEND] : [];
  if (state.kind !== 'reshape') return [];
  if (state.draft?.asks === true) return [KEEP, PUT_BACK];
  return crosses(state, yard) ? [MEND] : [];
}

function crosses(state: ReshapeState, yard: Yard): boolean {
  if (state.held || state.problem?.kind === 'shape/not-uncrossed') return false;
  const outline = yard.outlines.find(({ id }) => id === state.outlineId);
  if (outline === undefined) return false;
  const rings = state.draft?.rings ?? ringsOf(outline);
  return rings.some((ring) => tracedProblem(ring, outline.id, outline.name)?.kind === 'shape/self-crossing');
}

function reshapePrompt(
  state: ReshapeState,
  units: UnitSystem,
  yard: Yard,
): Pick<Prompt, 'text' | 'typedLabel'> {
  const outline = yard.outlines.find(({ id }) => id === state.outlineId);
  if (outline === undefined) return { text: 'Click an outline or a mark', typedLabel: null };
  if (state.draft?.asks === true) {
    return {
      text: 'Uncrossed as shown',
      typedLabel: 'Length and bearing',
    };
  }
  if (state.draft !== null && !state.held && state.problem !== null) {
    return { text: 'Drag a corner to mend it; Escape puts it back', typedLabel: null };
  }
  const { chosen } = state;
  const ring = chosen === null ? undefined : (state.draft?.rings ?? ringsOf(outline))[chosen.ring];
  if (chosen === null || ring === undefined) {
    const what = outline.outer.kind === 'corners' ? 'a corner' : 'its rim or centre';
    return { text: `Drag ${what}, or move all by length, bearing:`, typedLabel: 'Length and bearing' };
  }
  if (chosen.of === 'via')
    return { text: `Arc of edge ${chosen.at + 1}; type its radius:`, typedLabel: 'Radius' };
  if (ring.kind !== 'corners') return OVAL_PROMPTS[chosen.of] ?? { text: '', typedLabel: null };
  const before = (chosen.at + ring.corners.length - 1) % ring.corners.length;
  const lengthM = edgeLengthM(ring, before);
  const which = `Corner ${chosen.at + 1} of ${ring.corners.length}, ${formatLength(lengthM, units)} from the last;`;
  return { text: `${which} or type:`, typedLabel: 'Length and angle' };
}

const OVAL_PROMPTS: Partial<Record<Handle['of'], Pick<Prompt, 'text' | 'typedLabel'>>> = {
  centre: { text: 'Drag the centre, or move all by length, bearing:', typedLabel: 'Length and bearing' },
  rim: { text: 'Drag the rim, or type the radius:', typedLabel: 'Radius' },
  'length-end': { text: 'Drag the end, or type the whole length:', typedLabel: 'Length' },
  'width-end': { text: 'Drag the side, or type the whole width:', typedLabel: 'Width' },
};

function asideWords(setAside: SetAside | null): string {
  if (setAside === null) return '';
  return ` Backspace takes up the open ${OUTLINE_WORDS[setAside.outlineKind]}`;
}

function snapWords(words: string | undefined): string {
  return words ? `snapped: ${words}` : '';
}
