import { aimOf } from '../aim.ts';
import type { DrawingContext, DrawingInput, PlaceEndState, PlaceMarkState, Step } from '../drawing.ts';
import { moved } from '../plane.ts';
import { type Snap, unsnapped } from '../snap.ts';
import { readTypedCorner } from '../typedCorner.ts';
import { beginSelect } from './select.ts';

/** States that ask for one place and are done with it. */
export type OnePlaceState = PlaceMarkState | PlaceEndState;

/**
 * One click, or typed coordinates, gives the place.
 *
 * @param place what is done with it
 */
export function stepOnePlace<S extends OnePlaceState>(
  state: S,
  input: DrawingInput,
  context: DrawingContext,
  place: (state: S, aim: Snap, context: DrawingContext) => Step,
): Step {
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
