import { outlineRings } from '../../../core/curves/index.ts';
import { moveYardEdit, yardMiddle } from '../../../core/edits/index.ts';
import type { RigidMotion } from '../../../core/frame/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { parseAngle, parseOffset } from '../../../core/units/index.ts';
import type { Yard } from '../../../core/yard.ts';
import type { DrawingContext, DrawingInput, MoveYardState, SetAside, Step } from '../drawing.ts';
import { alongBearing, bearingDegOf, moved } from '../plane.ts';
import { typedUnit } from '../typedCorner.ts';
import { beginSelect } from './select.ts';

/** The turning handle stands halfway out, so that it is in sight with the yard, */
const HANDLE_OUT = 0.5;
/** but never nearer than this, so that a small yard can still be turned finely. */
const LEAST_HANDLE_M = 3;
/** A shift beyond this is a slip of the hand: within it the frame stays true (2e-9 in area at 3 km). */
const MOST_SHIFT_M = 3000;

export function beginMoveYard(setAside: SetAside | null): MoveYardState {
  return { kind: 'move-yard', held: null, ...AT_ITS_PLACE, setAside, problem: null };
}

const AT_ITS_PLACE = { eastM: 0, northM: 0, turnDeg: 0 } as const;

/**
 * The whole yard in hand: dragged anywhere it moves, by its handle it turns about its middle. Letting go is one edit,
 * and so is a typed shift or turn.
 */
export function stepMoveYard(state: MoveYardState, input: DrawingInput, context: DrawingContext): Step {
  const { yard } = context;
  const stay = (part: Partial<MoveYardState>): Step => ({ state: { ...state, ...part }, edits: [] });
  switch (input.kind) {
    case 'press': {
      const turns = distanceM(input.at, turnHandle(yard)) <= 2 * input.reachM;
      return stay({ held: { by: turns ? 'turn' : 'shift', from: input.at }, problem: null });
    }
    case 'move': {
      const { held } = state;
      if (held === null) return stay({});
      if (held.by === 'shift') {
        return stay({ eastM: input.at.xM - held.from.xM, northM: input.at.yM - held.from.yM });
      }
      const middle = yardMiddle(yard);
      const [from, to] = [bearingDegOf(middle, held.from), bearingDegOf(middle, input.at)];
      return from === undefined || to === undefined ? stay({}) : stay({ turnDeg: to - from });
    }
    case 'arrow':
      return state.held === null
        ? stay({ eastM: state.eastM + input.eastM, northM: state.northM + input.northM, problem: null })
        : stay({});
    case 'release':
      return commit(state, context);
    case 'arrows-let-go':
      return state.held === null ? commit(state, context) : stay({});
    case 'typed':
      return typed(state, input.text, context);
    case 'interrupted':
      return stay({ held: null, ...AT_ITS_PLACE });
    case 'escape':
      return state.held !== null || isMoved(state)
        ? stay({ held: null, ...AT_ITS_PLACE, problem: null })
        : { state: beginSelect(state.setAside), edits: [] };
    default:
      return stay({});
  }
}

/** What the hand does to the yard just now. */
export function motionInHand({ eastM, northM, turnDeg }: MoveYardState, yard: Yard): RigidMotion {
  const about = yardMiddle(yard);
  return { about, to: moved(about, eastM, northM), turnDeg };
}

export function isMoved({ eastM, northM, turnDeg }: MoveYardState): boolean {
  return eastM !== 0 || northM !== 0 || turnDeg !== 0;
}

/** North of the middle. */
export function turnHandle(yard: Yard): YardPoint {
  const middle = yardMiddle(yard);
  const drawn = yard.outlines.flatMap((outline) => outlineRings(outline)[0] ?? []);
  const reachM = drawn.reduce((most, at) => Math.max(most, distanceM(middle, at)), 0);
  return alongBearing(middle, Math.max(LEAST_HANDLE_M, HANDLE_OUT * reachM), 0);
}

function commit(state: MoveYardState, context: DrawingContext): Step {
  const at = { ...state, held: null, ...AT_ITS_PLACE, problem: null };
  if (!isMoved(state)) return { state: at, edits: [] };
  return { state: at, edits: [moveYardEdit(context.yard, motionInHand(state, context.yard))] };
}

/** "3, -2" moves east and north; "12" or "12° 30'" turns clockwise; nothing puts the yard down. */
function typed(state: MoveYardState, text: string, context: DrawingContext): Step {
  if (text.trim() === '') return { state: beginSelect(state.setAside), edits: [] };
  const parts = text.split(',');
  if (parts.length < 2) {
    const turn = parseAngle(text, 'turn');
    if (!turn.ok) return { state: { ...state, problem: turn.problems[0] }, edits: [] };
    return commit({ ...state, ...AT_ITS_PLACE, turnDeg: turn.value }, context);
  }
  const unit = typedUnit(context.units);
  const east = parseOffset(parts[0] ?? '', 'east', unit);
  const north = parseOffset(parts.slice(1).join(','), 'north', unit);
  const wrong = east.ok ? (north.ok ? undefined : north.problems[0]) : east.problems[0];
  if (wrong !== undefined || !east.ok || !north.ok) {
    return { state: { ...state, problem: wrong ?? null }, edits: [] };
  }
  if (Math.hypot(east.value, north.value) > MOST_SHIFT_M) {
    const facts = { least: 0, most: MOST_SHIFT_M, unit: 'm' };
    const problem = { kind: 'value/out-of-range', where: { field: 'the shift' }, facts } as const;
    return { state: { ...state, problem }, edits: [] };
  }
  return commit({ ...state, ...AT_ITS_PLACE, eastM: east.value, northM: north.value }, context);
}
