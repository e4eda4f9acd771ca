import type { MarkKind } from '../../../core/yard.ts';
import type { DrawingContext, DrawingInput, PlaceMarkState, SetAside, Step } from '../drawing.ts';
import { placeMarkEdit } from '../outlineEdits.ts';
import type { Snap } from '../snap.ts';
import { stepOnePlace } from './onePlace.ts';
import { beginSelect } from './select.ts';

export function beginPlaceMark(markKind: MarkKind, setAside: SetAside | null): PlaceMarkState {
  return { kind: 'place-mark', markKind, aim: null, setAside, problem: null };
}

/** One click, or typed coordinates, sets a spigot or a landmark and hands it over selected. */
export function stepPlaceMark(state: PlaceMarkState, input: DrawingInput, context: DrawingContext): Step {
  return stepOnePlace(state, input, context, place);
}

function place(state: PlaceMarkState, aim: Snap, context: DrawingContext): Step {
  const { id, edit } = placeMarkEdit(context, state.markKind, aim.at);
  const mark = { id, to: null, held: false };
  return {
    state: { ...beginSelect(state.setAside), mark },
    edits: [edit],
    select: { kind: 'mark', id },
  };
}
