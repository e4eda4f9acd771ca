import { makeEdit, putRow } from '../../../core/edits/index.ts';
import type { DrawingContext, DrawingInput, PlaceEndState, SetAside, Step, WalkEnd } from '../drawing.ts';
import type { Snap } from '../snap.ts';
import { stepOnePlace } from './onePlace.ts';
import { beginSelect } from './select.ts';

export function beginPlaceEnd(end: WalkEnd, setAside: SetAside | null): PlaceEndState {
  return { kind: 'place-end', end, aim: null, setAside, problem: null };
}

/** One click, or typed coordinates, says where the walk starts or finishes. */
export function stepPlaceEnd(state: PlaceEndState, input: DrawingInput, context: DrawingContext): Step {
  return stepOnePlace(state, input, context, place);
}

function place(state: PlaceEndState, { at }: Snap, { walk, yard }: DrawingContext): Step {
  if (walk === null) return { state, edits: [] };
  const job = state.end === 'start' ? { ...walk.job, startAt: at } : { ...walk.job, finishAt: at };
  const edit = makeEdit(`place the ${state.end}`, putRow(yard, 'jobs', job));
  return { state: beginSelect(state.setAside), edits: [edit], select: null };
}
