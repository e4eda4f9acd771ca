import { placeByPointsEdit } from '../../../core/edits/index.ts';
import { scaleMisfit } from '../../../core/earth/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import { aimOf } from '../aim.ts';
import type { DrawingContext, DrawingInput, PlaceYardState, ReadPlace, SetAside, Step } from '../drawing.ts';
import { moved } from '../plane.ts';
import { type Snap, unsnapped } from '../snap.ts';
import { beginSelect } from './select.ts';

export function beginPlaceYard(readPlace: ReadPlace, setAside: SetAside | null): PlaceYardState {
  return { kind: 'place-yard', readPlace, known: [], at: null, aim: null, setAside, problem: null };
}

/**
 * A point of the yard, then its place on earth, typed; then the next. Enter with nothing typed lays the yard down by
 * them all. Clicking a point again takes its place back, to be typed anew.
 */
export function stepPlaceYard(state: PlaceYardState, input: DrawingInput, context: DrawingContext): Step {
  switch (input.kind) {
    case 'move':
      return stay({ ...state, aim: aimOf(input, context) });
    case 'leave':
    case 'interrupted':
      return stay({ ...state, aim: null });
    case 'click':
      return point(state, aimOf(input, context));
    case 'arrow':
      return stay({
        ...state,
        aim: unsnapped(moved(state.aim?.at ?? state.at ?? input.from, input.eastM, input.northM)),
      });
    case 'place':
      return state.aim === null ? stay(state) : point(state, state.aim);
    case 'typed':
      return input.text.trim() === '' ? finish(state, context) : typed(state, input.text);
    case 'back':
      return state.at === null
        ? stay({ ...state, known: state.known.slice(0, -1), problem: null })
        : stay({ ...state, at: null, problem: null });
    case 'escape':
      return state.at === null && state.known.length === 0
        ? { state: beginSelect(state.setAside), edits: [] }
        : stay({ ...beginPlaceYard(state.readPlace, state.setAside), aim: state.aim });
    default:
      return stay(state);
  }
}

function point(state: PlaceYardState, { at }: Snap): Step {
  const known = state.known.filter((other) => distanceM(other.at, at) > 0);
  return stay({ ...state, known, at, problem: null });
}

function typed(state: PlaceYardState, text: string): Step {
  if (state.at === null) {
    const where = { field: 'the point of the yard that lies there' };
    return stay({ ...state, problem: { kind: 'value/missing', where, facts: {} } });
  }
  const place = state.readPlace(text, 'place of the point');
  if (!place.ok) return stay({ ...state, problem: place.problems[0] });
  const known = [...state.known, { at: state.at, place: place.value }];
  return stay({ ...state, known, at: null, problem: null });
}

function finish(state: PlaceYardState, context: DrawingContext): Step {
  if (state.at !== null) {
    const where = { field: 'place of the point' };
    return stay({ ...state, problem: { kind: 'value/missing', where, facts: {} } });
  }
  const placed = placeByPointsEdit(context.yard, state.known);
  if (!placed.ok) return stay({ ...state, problem: placed.problems[0] });
  const { edit, ratio } = placed.value;
  const problem = scaleMisfit(ratio, 'the yard was placed') ?? null;
  return { state: { ...beginSelect(state.setAside), problem }, edits: [edit] };
}

function stay(state: PlaceYardState): Step {
  return { state, edits: [] };
}
