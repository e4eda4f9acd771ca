import { makeEdit, putRow } from '../../../core/edits/index.ts';
import { newCheck } from '../../../core/fieldCheck/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { parseLength } from '../../../core/units/index.ts';
import type { DrawingContext, DrawingInput, SetAside, Step, TapeBetweenState } from '../drawing.ts';
import { moved } from '../plane.ts';
import { type Snap, type SnapTo, snapPoint, unsnapped } from '../snap.ts';
import { snapIndexOf } from '../snapIndex.ts';
import { typedUnit } from '../typedCorner.ts';
import { beginSelect } from './select.ts';

/** What a tape can be held to: it has to be found again on the ground. */
const FINDABLE: ReadonlySet<SnapTo> = new Set(['corner', 'mark', 'edge']);

export function beginTapeBetween(setAside: SetAside | null): TapeBetweenState {
  return { kind: 'tape-between', from: null, to: null, aim: null, setAside, problem: null };
}

/** Two places that can be found on the ground, then what the tape between them reads; then the next two. */
export function stepTapeBetween(state: TapeBetweenState, input: DrawingInput, context: DrawingContext): Step {
  switch (input.kind) {
    case 'move':
      return { state: { ...state, aim: aimAt(input.at, input.reachM, context) }, edits: [] };
    case 'leave':
    case 'interrupted':
      return { state: { ...state, aim: null }, edits: [] };
    case 'click':
      return point(state, aimAt(input.at, input.reachM, context));
    case 'arrow': {
      const at = moved(state.aim?.at ?? state.from ?? input.from, input.eastM, input.northM);
      // Less than half a step, so that the next one always gets away again.
      const reachM = 0.49 * Math.hypot(input.eastM, input.northM);
      return { state: { ...state, aim: aimAt(at, reachM, context) }, edits: [] };
    }
    case 'place':
      return state.aim === null ? { state, edits: [] } : point(state, state.aim);
    case 'typed':
      if (input.text.trim() === '' && state.to === null) {
        return state.aim === null ? { state, edits: [] } : point(state, state.aim);
      }
      return typed(state, input.text, context);
    case 'back':
      if (state.to !== null) return { state: { ...state, to: null, problem: null }, edits: [] };
      return { state: { ...state, from: null, problem: null }, edits: [] };
    case 'escape':
      if (state.from === null) return { state: beginSelect(state.setAside), edits: [], select: null };
      return { state: { ...beginTapeBetween(state.setAside), aim: state.aim }, edits: [] };
    default:
      return { state, edits: [] };
  }
}

function aimAt(at: YardPoint, reachM: number, context: DrawingContext): Snap {
  const snap = snapPoint(snapIndexOf(context.yard), { at, reachM, chain: [], except: null });
  return FINDABLE.has(snap.to) ? snap : unsnapped(at);
}

/** The first click sets one end, the second the other; a third moves the second end. */
function point(state: TapeBetweenState, aim: Snap): Step {
  if (!FINDABLE.has(aim.to)) {
    const where = { field: 'the tape' };
    return {
      state: { ...state, aim, problem: { kind: 'value/nothing-to-hold', where, facts: {} } },
      edits: [],
    };
  }
  if (state.from === null) return { state: { ...state, from: aim.at, problem: null }, edits: [] };
  if (distanceM(state.from, aim.at) === 0) return { state, edits: [] };
  return { state: { ...state, to: aim.at, problem: null }, edits: [] };
}

function typed(state: TapeBetweenState, text: string, context: DrawingContext): Step {
  const { from, to } = state;
  if (from === null || to === null) {
    const where = { field: from === null ? 'the start of the tape' : 'the end of the tape' };
    return { state: { ...state, problem: { kind: 'value/missing', where, facts: {} } }, edits: [] };
  }
  const taped = parseLength(text, 'taped distance', typedUnit(context.units));
  if (!taped.ok) return { state: { ...state, problem: taped.problems[0] }, edits: [] };
  const check = newCheck(context.yard, { id: context.makeId(), from, to, tapedM: taped.value });
  return {
    state: beginTapeBetween(state.setAside),
    edits: [makeEdit(`note taped ${check.name}`, putRow(context.yard, 'checks', check))],
    select: { kind: 'check', id: check.id },
  };
}
