import type { OutlineKind } from '../../../core/yard.ts';
import type { DrawingContext, DrawingInput, Pointing, SetAside, Step, TraceState } from '../drawing.ts';
import { traceEdit } from '../outlineEdits.ts';
import { moved } from '../plane.ts';
import { type Snap, snapPoint, unsnapped } from '../snap.ts';
import { snapIndexOf } from '../snapIndex.ts';
import { readTypedCorner } from '../typedCorner.ts';
import { beginReshape } from './beginReshape.ts';
import { beginSelect } from './select.ts';

export function beginTrace(outlineKind: OutlineKind, setAside: SetAside | null): TraceState {
  return { kind: 'trace', outlineKind, corners: [], aim: null, setAside, problem: null };
}

/** Corner after corner until the outline closes; a crossing is said and left open for mending. */
export function stepTrace(state: TraceState, input: DrawingInput, context: DrawingContext): Step {
  switch (input.kind) {
    case 'move':
      return { state: { ...state, aim: aimOf(state, input, context) }, edits: [] };
    case 'leave':
      return { state: { ...state, aim: null }, edits: [] };
    case 'click':
      return place(state, aimOf(state, input, context), context);
    case 'arrow': {
      const from = state.aim?.at ?? state.corners[state.corners.length - 1] ?? input.from;
      return { state: { ...state, aim: unsnapped(moved(from, input.eastM, input.northM)) }, edits: [] };
    }
    case 'place':
      return state.aim === null ? { state, edits: [] } : place(state, state.aim, context);
    case 'typed':
      return typed(state, input.text, context);
    case 'back':
      return { state: backOne(state), edits: [] };
    case 'escape':
      return leaveOpen(state);
    case 'interrupted':
      return { state: { ...state, aim: null }, edits: [] };
    default:
      return { state, edits: [] };
  }
}

/** What an unfinished trace leaves to be taken up again. */
export function traceLeftOpen(state: TraceState): SetAside | null {
  return state.corners.length > 0
    ? { outlineKind: state.outlineKind, corners: state.corners }
    : state.setAside;
}

function aimOf(state: TraceState, pointing: Pointing, context: DrawingContext): Snap {
  if (pointing.free) return unsnapped(pointing.at);
  const { at, reachM } = pointing;
  return snapPoint(snapIndexOf(context.yard), { at, reachM, chain: state.corners, except: null });
}

function place(state: TraceState, aim: Snap, context: DrawingContext): Step {
  if (aim.to === 'first-corner') return close(state, context);
  const last = state.corners[state.corners.length - 1];
  // A double click, or Enter on the corner just placed: the same corner twice would be an edge of no length.
  if (last !== undefined && last.xM === aim.at.xM && last.yM === aim.at.yM) return { state, edits: [] };
  return { state: { ...state, corners: [...state.corners, aim.at], aim, problem: null }, edits: [] };
}

function typed(state: TraceState, text: string, context: DrawingContext): Step {
  if (text.trim() === '') {
    if (state.corners.length >= 3) return close(state, context);
    return state.aim === null ? { state, edits: [] } : place(state, state.aim, context);
  }
  const corner = readTypedCorner(text, state.corners, state.aim?.at ?? null, context.units);
  if (!corner.ok) return { state: { ...state, problem: corner.problems[0] }, edits: [] };
  const placed = place(state, unsnapped(corner.value), context);
  // The crosshair goes with the corner just typed, so that a bare length runs straight on from it.
  return { ...placed, state: { ...placed.state, aim: null } as TraceState };
}

function close(state: TraceState, context: DrawingContext): Step {
  const made = traceEdit(context, state.outlineKind, state.corners);
  if (!made.ok) return { state: { ...state, problem: made.problems[0] }, edits: [] };
  return {
    state: beginReshape(made.value.id, state.setAside),
    edits: [made.value.edit],
    select: { kind: 'outline', id: made.value.id },
  };
}

/** Takes back the last corner; with none, takes up the outline that was put aside. */
function backOne(state: TraceState): TraceState {
  if (state.corners.length > 0) return { ...state, corners: state.corners.slice(0, -1), problem: null };
  if (state.setAside === null) return state;
  const { outlineKind, corners } = state.setAside;
  return { ...state, outlineKind, corners, setAside: null, problem: null };
}

function leaveOpen(state: TraceState): Step {
  const setAside = traceLeftOpen(state);
  if (state.corners.length === 0) return { state: beginSelect(setAside), edits: [], select: null };
  return { state: { ...beginTrace(state.outlineKind, setAside), aim: state.aim }, edits: [] };
}
