import { distanceM } from '../../core/kernel/index.ts';
import type { Problem } from '../../core/problems.ts';
import { formatLength } from '../../core/units/index.ts';
import type { UnitSystem, Yard } from '../../core/yard.ts';
import type {
  DrawingState,
  PlaceYardState,
  ReshapeState,
  SetAside,
  TapeBetweenState,
  TraceState,
} from './drawing.ts';
import { MARK_WORDS, OUTLINE_WORDS } from './names.ts';
import { cornerBefore } from './plane.ts';
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
}

export function promptOf(given: DrawingState, units: UnitSystem, yard: Yard, mayEdit: boolean): Prompt {
  const unit = units === 'us' ? 'ft' : 'm';
  const state = mayEdit ? given : AT_REST;
  const common = { unit, problem: state.problem, snapped: '' };
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
  }
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
      return { text: `Click a corner, or${asideWords(state.setAside)}`, typedLabel: null };
    return { text: `Click a corner of the ${word}, or type east, north:`, typedLabel: 'East, north' };
  }
  const text =
    state.corners.length >= 3
      ? 'Next corner, Enter to close, or length, angle:'
      : 'Next corner, or length, angle:';
  return { text, typedLabel: 'Length and angle' };
}

function reshapePrompt(
  state: ReshapeState,
  units: UnitSystem,
  yard: Yard,
): Pick<Prompt, 'text' | 'typedLabel'> {
  const outline = yard.outlines.find(({ id }) => id === state.outlineId);
  if (outline === undefined) return { text: 'Click an outline or a mark', typedLabel: null };
  if (state.draft !== null && !state.held && state.problem !== null) {
    return { text: 'Drag a corner to mend it; Escape puts it back', typedLabel: null };
  }
  if (state.chosen === null) {
    return { text: `Drag a corner, or move all by length, bearing:`, typedLabel: 'Length and bearing' };
  }
  const ring = (state.draft?.rings ?? ringsOf(outline))[state.chosen.ring] ?? [];
  const corner = ring[state.chosen.at];
  const before = cornerBefore(ring, state.chosen.at);
  const lengthM = corner && before ? distanceM(before, corner) : 0;
  const which = `Corner ${state.chosen.at + 1} of ${ring.length}, ${formatLength(lengthM, units)} from the last;`;
  return { text: `${which} or type:`, typedLabel: 'Length and angle' };
}

function asideWords(setAside: SetAside | null): string {
  if (setAside === null) return '';
  return ` Backspace takes up the open ${OUTLINE_WORDS[setAside.outlineKind]}`;
}

function snapWords(words: string | undefined): string {
  return words ? `snapped: ${words}` : '';
}
