import type { MarkKind } from '../../../core/yard.ts';
import { aimOf } from '../aim.ts';
import type { DrawingContext, DrawingInput, PlaceMarkState, SetAside, Step } from '../drawing.ts';
import { placeMarkEdit } from '../outlineEdits.ts';
import { moved } from '../plane.ts';
import { type Snap, unsnapped } from '../snap.ts';
import { readTypedCorner } from '../typedCorner.ts';
import { beginSelect } from './select.ts';

export function beginPlaceMark(markKind: MarkKind, setAside: SetAside | null): PlaceMarkState {
  return { kind: 'place-mark', markKind, aim: null, setAside, problem: null };
}

/** One click, or typed coordinates, sets a spigot or a landmark and hands it over selected. */
export function stepPlaceMark(state: PlaceMarkState, input: DrawingInput, context: DrawingContext): Step {
  switch (input.kind) {
    case 'move':
      return { state: { ...state, aim: aimOf(input, context) }, edits: [] };
    case 'leave':
    case 'interrupted':
      return { state: { ...state, aim: null }, edits: [] };
    case 'click':
      return place(state, aimOf(input, context), context);
    case 'arrow': {
      const from = state.aim?.at ?? input.from;
      return { state: { ...state, aim: unsnapped(moved(from, input.eastM, input.northM)) }, edits: [] };
    }
    case 'place':
      return state.aim === null ? { state, edits: [] } : place(state, state.aim, context);
    case 'typed': {
      if (input.text.trim() === '') {
        return state.aim === null ? { state, edits: [] } : place(state, state.aim, context);
      }
      const at = readTypedCorner(input.text, [], null, context.units);
      if (!at.ok) return { state: { ...state, problem: at.problems[0] }, edits: [] };
      return place(state, unsnapped(at.value), context);
    }
    case 'escape':
      return { state: beginSelect(state.setAside), edits: [], select: null };
    default:
      return { state, edits: [] };
  }
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
