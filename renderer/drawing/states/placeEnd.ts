import { makeEdit, putRow } from '../../../core/edits/index.ts';
import { aimOf } from '../aim.ts';
import type { DrawingContext, DrawingInput, PlaceEndState, SetAside, Step, WalkEnd } from '../drawing.ts';
import { moved } from '../plane.ts';
import { type Snap, unsnapped } from '../snap.ts';
import { readTypedCorner } from '../typedCorner.ts';
import { beginSelect } from './select.ts';

export function beginPlaceEnd(end: WalkEnd, setAside: SetAside | null): PlaceEndState {
  return { kind: 'place-end', end, aim: null, setAside, problem: null };
}

/** One click, or typed coordinates, says where the walk starts or finishes. */
export function stepPlaceEnd(state: PlaceEndState, input: DrawingInput, context: DrawingContext): Step {
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

function place(state: PlaceEndState, { at }: Snap, { walk, yard }: DrawingContext): Step {
  if (walk === null) return { state, edits: [] };
  const job = state.end === 'start' ? { ...walk.job, startAt: at } : { ...walk.job, finishAt: at };
  const edit = makeEdit(`place the ${state.end}`, putRow(yard, 'jobs', job));
  return { state: beginSelect(state.setAside), edits: [edit], select: null };
}
