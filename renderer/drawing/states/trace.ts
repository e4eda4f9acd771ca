import { uncrossed } from '../../../core/curves/index.ts';
import { ok, type Result } from '../../../core/result.ts';
import type { OutlineKind, Traced } from '../../../core/yard.ts';
import { aimOf } from '../aim.ts';
import type {
  DrawingContext,
  DrawingInput,
  EdgeToCome,
  Pointing,
  SetAside,
  Step,
  TraceState,
} from '../drawing.ts';
import { runOf, withRun } from '../edges.ts';
import { traceEdit } from '../outlineEdits.ts';
import { moved } from '../plane.ts';
import { type Snap, unsnapped } from '../snap.ts';
import { readTypedCorner } from '../typedCorner.ts';
import { readTypedEdge, readTypedShape } from '../typedEdge.ts';
import { beginOval } from './beginOval.ts';
import { handOver } from './handOver.ts';
import { beginSelect } from './select.ts';

export function beginTrace(outlineKind: OutlineKind, setAside: SetAside | null): TraceState {
  return {
    kind: 'trace',
    outlineKind,
    corners: [],
    edge: { kind: 'straight' },
    aim: null,
    setAside,
    problem: null,
  };
}

/** Corner after corner until the outline closes; a crossing is said and left open for mending. */
export function stepTrace(state: TraceState, input: DrawingInput, context: DrawingContext): Step {
  switch (input.kind) {
    case 'move':
      return { state: { ...state, aim: nextCorner(state, input, context) }, edits: [] };
    case 'leave':
      return { state: { ...state, aim: null }, edits: [] };
    case 'click':
      return place(state, nextCorner(state, input, context), context);
    case 'arrow': {
      const from = state.aim?.at ?? state.corners[state.corners.length - 1] ?? input.from;
      return { state: { ...state, aim: unsnapped(moved(from, input.eastM, input.northM)) }, edits: [] };
    }
    case 'place':
      return state.aim === null ? { state, edits: [] } : place(state, state.aim, context);
    case 'typed':
      return typed(state, input.text, context);
    case 'run':
      return { state: { ...state, edge: input.edge, problem: null }, edits: [] };
    case 'mend':
      return { state: mend(state), edits: [] };
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

function nextCorner(state: TraceState, pointing: Pointing, context: DrawingContext): Snap {
  return aimOf(pointing, context, { chain: state.corners, closes: mayClose(state) });
}

function place(state: TraceState, aim: Snap, context: DrawingContext): Step {
  if (aim.to === 'first-corner') return close(state, context);
  const { corners, edge } = state;
  const last = corners[corners.length - 1];
  if (last === undefined) return { state: { ...state, corners: [aim.at], aim, problem: null }, edits: [] };
  // A double click, or Enter on the corner just placed: the same corner twice would be an edge of no length.
  if (last.xM === aim.at.xM && last.yM === aim.at.yM) return { state, edits: [] };
  if (edge.kind === 'arc' && edge.via === null) {
    return { state: { ...state, edge: { kind: 'arc', via: aim.at }, aim, problem: null }, edits: [] };
  }
  const run = runOf(edge, last, aim.at);
  if (!run.ok) return { state: { ...state, problem: run.problems[0] }, edits: [] };
  const placed = [...corners.slice(0, -1), withRun(last, run.value), aim.at];
  return { state: { ...state, corners: placed, edge: edgeAfter(edge), aim, problem: null }, edits: [] };
}

/** Arcs follow arcs until the person says otherwise; a radius is that of one edge. */
function edgeAfter(edge: EdgeToCome): EdgeToCome {
  if (edge.kind === 'radius') return { kind: 'straight' };
  return edge.kind === 'arc' ? { kind: 'arc', via: null } : edge;
}

function typed(state: TraceState, text: string, context: DrawingContext): Step {
  if (text.trim() === '') {
    if (mayClose(state)) return close(state, context);
    return state.aim === null ? { state, edits: [] } : place(state, state.aim, context);
  }
  const shape = state.corners.length === 0 ? readTypedShape(text) : null;
  if (shape !== null) {
    return { state: beginOval(state.outlineKind, shape, state.setAside), edits: [], select: null };
  }
  const word = readTypedEdge(text, context.units);
  if (word?.ok) return stepTrace(state, word.value, context);
  if (word !== null) return { state: { ...state, problem: word.problems[0] }, edits: [] };
  const corner = readTypedCorner(text, state.corners, state.aim?.at ?? null, context.units);
  if (!corner.ok) return { state: { ...state, problem: corner.problems[0] }, edits: [] };
  const placed = place(state, unsnapped(corner.value), context);
  // The crosshair goes with the corner just typed, so that a bare length runs straight on from it.
  return { ...placed, state: { ...placed.state, aim: null } as TraceState };
}

/** Three corners hold ground; two do when a curve runs between them. */
function mayClose({ corners, edge }: TraceState): boolean {
  if (corners.length !== 2) return corners.length > 2;
  const bends = edge.kind === 'radius' || (edge.kind === 'arc' && edge.via !== null);
  return bends || corners[0]?.run?.kind === 'arc';
}

/** What is traced so far as it would close now: the edge to come runs back to the first corner. */
export function closedTrace(state: TraceState): Result<Traced> {
  const { corners, edge } = state;
  const [first, last] = [corners[0], corners[corners.length - 1]];
  if (first === undefined || last === undefined) return ok({ kind: 'corners', corners });
  const run = runOf(edge, last, first);
  if (!run.ok) return run;
  return ok({ kind: 'corners', corners: [...corners.slice(0, -1), withRun(last, run.value)] });
}

function close(state: TraceState, context: DrawingContext): Step {
  const closed = closedTrace(state);
  return handOver(state, closed.ok ? traceEdit(context, state.outlineKind, closed.value) : closed);
}

/** The corners so far walked so that they do not cross; the trace stays open, so nothing is made of it yet. */
function mend(state: TraceState): TraceState {
  if (state.problem?.kind !== 'shape/self-crossing') return state;
  const closed = closedTrace(state);
  const mended = closed.ok ? uncrossed(closed.value) : null;
  if (mended?.kind !== 'corners') {
    const { where, facts } = state.problem;
    return { ...state, problem: { kind: 'shape/not-uncrossed', where, facts } };
  }
  const [last, ...before] = [...mended.corners].reverse();
  const corners = last === undefined ? [] : [...before.reverse(), withRun(last, undefined)];
  return { ...state, corners, problem: null };
}

/** Takes back the last point; with none, takes up the outline that was put aside. */
function backOne(state: TraceState): TraceState {
  const { corners, edge } = state;
  if (edge.kind === 'arc' && edge.via !== null) {
    return { ...state, edge: { kind: 'arc', via: null }, problem: null };
  }
  if (corners.length > 0) {
    const left = corners
      .slice(0, -1)
      .map((corner, i, all) => (i < all.length - 1 ? corner : withRun(corner, undefined)));
    return { ...state, corners: left, problem: null };
  }
  if (state.setAside === null) return state;
  const { outlineKind, corners: taken } = state.setAside;
  return { ...state, outlineKind, corners: taken, setAside: null, problem: null };
}

function leaveOpen(state: TraceState): Step {
  const setAside = traceLeftOpen(state);
  if (state.corners.length === 0) return { state: beginSelect(setAside), edits: [], select: null };
  return { state: { ...beginTrace(state.outlineKind, setAside), aim: state.aim }, edits: [] };
}
