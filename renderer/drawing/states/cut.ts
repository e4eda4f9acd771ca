import { makeEdit, putRow } from '../../../core/edits/index.ts';
import {
  holdCut,
  isSameLine,
  letCutGo,
  moveCut,
  splitAlong,
  tapeMarkM,
} from '../../../core/sections/index.ts';
import type { Job } from '../../../core/yard.ts';
import { parseLength } from '../../../core/units/index.ts';
import type { CutDraft, CutPart, CutState, DrawingContext, DrawingInput, Step } from '../drawing.ts';
import {
  type CutGround,
  cutPartNear,
  movedAcross,
  nudgedAcross,
  withEndAlong,
  withEndAt,
  withEndNudged,
} from '../moveCutLine.ts';
import { alongBearing } from '../plane.ts';
import { readLengthAndDirection, typedUnit } from '../typedCorner.ts';
import { bedOf, cutsOf, type NamedCut, plannedCutsOf, tapeSidesIn, type WalkContext } from '../walkCuts.ts';
import { beginSelect, stepSelect } from './select.ts';

const PARTS: readonly CutPart[] = ['from', 'middle', 'to'];

/** A cut with its ends and its middle open to the hand: moved, it is held where it is let go. */
export function stepCut(state: CutState, input: DrawingInput, context: DrawingContext): Step {
  const { walk } = context;
  const select = beginSelect(state.setAside);
  if (input.kind === 'choose') return stepSelect(select, input, context);
  const cut = walk && cutsOf(walk).find(({ id }) => id === state.cutId);
  // Planned anew, or taken back: what was in hand is no more.
  if (walk === null || !cut) return { state: select, edits: [] };
  const line = state.draft?.line ?? cut;
  switch (input.kind) {
    case 'press': {
      const part = walk.mayEdit ? cutPartNear(cut, input.at, input.reachM) : null;
      return still(part === null ? state : { ...put(state), chosen: part, heldAt: input.at });
    }
    case 'move': {
      if (state.heldAt === null) return still({ ...state, hover: cutPartNear(line, input.at, input.reachM) });
      const ground = groundOf(walk, cut, context);
      if (ground === undefined) return still(state);
      const { at, free } = input;
      const way = { eastM: at.xM - state.heldAt.xM, northM: at.yM - state.heldAt.yM };
      const draft = isEnd(state.chosen)
        ? withEndAt(cut, state.chosen, at, free, ground)
        : movedAcross(cut, way, free, ground);
      return still(draft === undefined ? state : { ...state, draft, problem: null });
    }
    case 'release':
      return commit({ ...state, heldAt: null }, cut, context);
    case 'arrow': {
      const ground = walk.mayEdit && state.heldAt === null && groundOf(walk, cut, context);
      if (!ground) return still(state);
      const draft = isEnd(state.chosen)
        ? withEndNudged(line, state.chosen, input, ground)
        : nudgedAcross(line, input, ground);
      return still(draft === undefined ? state : { ...state, draft, problem: null });
    }
    case 'arrows-let-go':
      return state.heldAt === null && state.draft !== null ? commit(state, cut, context) : still(state);
    case 'typed':
      if (!walk.mayEdit) return still(state);
      return input.text.trim() === '' ? hold(state, cut, context) : typed(state, input.text, cut, context);
    case 'next-corner':
    case 'previous-corner': {
      const by = input.kind === 'next-corner' ? 1 : 2;
      const next = state.chosen === null ? 0 : (PARTS.indexOf(state.chosen) + by) % PARTS.length;
      return still({ ...state, chosen: PARTS[next] ?? null });
    }
    case 'remove':
      return walk.mayEdit ? letGo(state, cut, context) : still(state);
    case 'leave':
      return still({ ...state, hover: null });
    case 'interrupted':
      return still({ ...put(state), hover: null });
    case 'escape':
      if (state.draft !== null || state.problem !== null) return still(put(state));
      if (state.chosen !== null) return still({ ...state, chosen: null });
      return { state: select, edits: [], select: null };
    default:
      return still(state);
  }
}

function still(state: CutState): Step {
  return { state, edits: [] };
}

/** Let go of, unmoved. */
function put(state: CutState): CutState {
  return { ...state, heldAt: null, draft: null, problem: null };
}

function isEnd(part: CutPart | null): part is 'from' | 'to' {
  return part === 'from' || part === 'to';
}

function groundOf(walk: WalkContext, cut: NamedCut, { units }: DrawingContext): CutGround | undefined {
  const bed = bedOf(walk, cut);
  return bed && { bed, markM: tapeMarkM(units), sides: tapeSidesIn(walk.plan) };
}

/** What was moved becomes one edit; a line that parts nothing goes back to where it was. */
function commit(state: CutState, cut: NamedCut, context: DrawingContext): Step {
  const { walk } = context;
  const { draft } = state;
  if (walk === null || draft === null || isSameLine(draft.line, cut)) return still(put(state));
  const bed = bedOf(walk, cut);
  if (bed === undefined || splitAlong(bed, draft.line) === undefined) {
    const where = { thing: zoneName(walk, cut) };
    return still({ ...put(state), problem: { kind: 'plan/cut-parts-nothing', where, facts: {} } });
  }
  const { job, id } = moveCut(walk.job, cut, draft.line, plannedCutsOf(walk), context.makeId);
  return edited({ ...put(state), cutId: id }, 'move a cut', job, context);
}

function hold(state: CutState, cut: NamedCut, context: DrawingContext): Step {
  const { walk } = context;
  if (walk === null) return still(state);
  const job = holdCut(walk.job, cut, plannedCutsOf(walk), context.makeId);
  const id = job.heldCuts.find((held) => isSameLine(held, cut))?.id ?? state.cutId;
  return job === walk.job ? still(state) : edited({ ...put(state), cutId: id }, 'hold a cut', job, context);
}

function letGo(state: CutState, cut: NamedCut, context: DrawingContext): Step {
  const { walk } = context;
  if (walk === null || cut.heldId === null) return still(state);
  const edits = [jobEdit('let a cut go', letCutGo(walk.job, cut.heldId), context)];
  return { state: beginSelect(state.setAside), edits, select: null };
}

function edited(state: CutState, label: string, job: Job, context: DrawingContext): Step {
  return { state, edits: [jobEdit(label, job, context)], select: { kind: 'cut', id: state.cutId } };
}

function jobEdit(label: string, job: Job, { yard }: DrawingContext) {
  return makeEdit(label, putRow(yard, 'jobs', job));
}

/** Of an end how far it is along its edge, of the whole how far and which way it goes. */
function typed(state: CutState, text: string, cut: NamedCut, context: DrawingContext): Step {
  const { walk, units } = context;
  const ground = walk === null ? undefined : groundOf(walk, cut, context);
  if (ground === undefined) return still(state);
  let draft: CutDraft | undefined;
  if (isEnd(state.chosen)) {
    const alongM = parseLength(text, 'distance along the edge', typedUnit(units));
    if (!alongM.ok) return still({ ...state, problem: alongM.problems[0] });
    draft = withEndAlong(cut, state.chosen, alongM.value, ground);
  } else {
    const read = readLengthAndDirection(text, units);
    if (!read.ok) return still({ ...state, problem: read.problems[0] });
    const { lengthM, direction } = read.value;
    if (direction.kind !== 'bearing') {
      const where = { field: 'which way' };
      return still({ ...state, problem: { kind: 'value/missing', where, facts: {} } });
    }
    const to = alongBearing({ xM: 0, yM: 0 }, lengthM, direction.deg);
    draft = movedAcross(cut, { eastM: to.xM, northM: to.yM }, true, ground);
  }
  if (draft !== undefined) return commit({ ...state, draft }, cut, context);
  const where = { thing: isEnd(state.chosen) ? 'That far along' : zoneName(walk, cut) };
  const kind = isEnd(state.chosen) ? 'plan/cut-off-edge' : 'plan/cut-parts-nothing';
  return still({ ...state, problem: { kind, where, facts: {} } });
}

function zoneName(walk: WalkContext | null, cut: NamedCut): string {
  return walk?.plan?.resolved.zones.find(({ zoneId }) => zoneId === cut.zoneId)?.name ?? 'the ground';
}
