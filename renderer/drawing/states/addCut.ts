import { makeEdit, putRow } from '../../../core/edits/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import type { Problem } from '../../../core/problems.ts';
import {
  addCut,
  atAlong,
  nearestEdgePlace,
  onMark,
  splitAlong,
  tapeMarkM,
} from '../../../core/sections/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { parseLength } from '../../../core/units/index.ts';
import type { ResolvedZone } from '../../../core/zones/index.ts';
import type {
  AddCutState,
  CutAim,
  CutFoot,
  DrawingContext,
  DrawingInput,
  SetAside,
  Step,
} from '../drawing.ts';
import { moved } from '../plane.ts';
import { unsnapped } from '../snap.ts';
import { readTypedCorner, typedUnit } from '../typedCorner.ts';
import { tapeSidesIn } from '../walkCuts.ts';
import { beginCut } from './beginCut.ts';
import { beginSelect } from './select.ts';

export function beginAddCut(setAside: SetAside | null): AddCutState {
  return { kind: 'add-cut', from: null, aim: null, setAside, problem: null };
}

/** Two places on the edge of one zone's ground, and a cut between them that is held from the first. */
export function stepAddCut(state: AddCutState, input: DrawingInput, context: DrawingContext): Step {
  switch (input.kind) {
    case 'move':
      return still({ ...state, aim: aimAt(state, input.at, input.reachM, input.free, context) });
    case 'leave':
    case 'interrupted':
      return still({ ...state, aim: null });
    case 'click':
      return point(state, aimAt(state, input.at, input.reachM, input.free, context), context);
    case 'arrow': {
      const at = moved(state.aim?.snap.at ?? state.from?.place.at ?? input.from, input.eastM, input.northM);
      // Less than half a step, so that the next one always gets away again.
      const reachM = 0.49 * Math.hypot(input.eastM, input.northM);
      return still({ ...state, aim: aimAt(state, at, reachM, false, context) });
    }
    case 'place':
      return state.aim === null ? still(state) : point(state, state.aim, context);
    case 'typed':
      if (input.text.trim() !== '') return typed(state, input.text, context);
      return state.aim === null ? still(state) : point(state, state.aim, context);
    case 'back':
      return still({ ...state, from: null, problem: null });
    case 'escape':
      if (state.from === null) return { state: beginSelect(state.setAside), edits: [], select: null };
      return still({ ...beginAddCut(state.setAside), aim: state.aim });
    default:
      return still(state);
  }
}

function still(state: AddCutState): Step {
  return { state, edits: [] };
}

/** The zone the cut was begun in; before that, every zone that is planned. */
function zonesFor({ from }: AddCutState, { walk }: DrawingContext): readonly ResolvedZone[] {
  const zones = walk?.plan?.resolved.zones ?? [];
  return from === null ? zones : zones.filter(({ zoneId }) => zoneId === from.zoneId);
}

function aimAt(
  state: AddCutState,
  at: YardPoint,
  reachM: number,
  free: boolean,
  context: DrawingContext,
): CutAim {
  const sides = tapeSidesIn(context.walk?.plan ?? null);
  let best: CutFoot | null = null;
  let bestM = reachM;
  for (const { zoneId, treated } of zonesFor(state, context)) {
    const place = nearestEdgePlace(treated, at, sides);
    const farM = place === undefined ? Number.POSITIVE_INFINITY : distanceM(place.at, at);
    if (place === undefined || farM > bestM) continue;
    best = { zoneId, place: free ? place : onMark(place, tapeMarkM(context.units), sides) };
    bestM = farM;
  }
  if (best === null) return { snap: unsnapped(at), on: null };
  return { snap: { at: best.place.at, to: 'edge', words: 'the edge' }, on: best };
}

function point(state: AddCutState, aim: CutAim, context: DrawingContext): Step {
  if (aim.on === null) return refused({ ...state, aim }, offEdge(state));
  if (state.from === null) return still({ ...state, from: aim.on, aim: null, problem: null });
  const { walk } = context;
  const zone = zonesFor(state, context)[0];
  const line = { from: state.from.place.at, to: aim.on.place.at };
  if (walk === null || !zone?.treated.some((region) => splitAlong(region, line) !== undefined)) {
    const where = { thing: zone?.name ?? 'the ground' };
    return refused({ ...state, aim }, { kind: 'plan/cut-parts-nothing', where, facts: {} });
  }
  const id = context.makeId();
  const job = addCut(walk.job, zone.zoneId, line, id);
  return {
    state: beginCut(id, state.setAside),
    edits: [makeEdit('add a cut', putRow(context.yard, 'jobs', job))],
    select: { kind: 'cut', id },
  };
}

/** A distance along the edge the hand points at, or coordinates of a place on one. */
function typed(state: AddCutState, text: string, context: DrawingContext): Step {
  const { aim } = state;
  const isAlong = aim?.on && !text.includes(',');
  if (isAlong && aim?.on) {
    const alongM = parseLength(text, 'distance along the edge', typedUnit(context.units));
    if (!alongM.ok) return refused(state, alongM.problems[0]);
    const place = atAlong(aim.on.place, alongM.value, tapeSidesIn(context.walk?.plan ?? null));
    if (place === undefined) return refused(state, offEdge(state));
    const on = { ...aim.on, place };
    return point(state, { snap: { ...aim.snap, at: place.at }, on }, context);
  }
  const at = readTypedCorner(
    text,
    state.from ? [state.from.place.at] : [],
    aim?.snap.at ?? null,
    context.units,
  );
  if (!at.ok) return refused(state, at.problems[0]);
  // Coordinates are typed to a mark or so: nearer than that is meant to be on the edge.
  return point(state, aimAt(state, at.value, tapeMarkM(context.units), true, context), context);
}

function refused(state: AddCutState, problem: Problem): Step {
  return still({ ...state, problem });
}

function offEdge({ from }: AddCutState): Problem {
  const thing = from === null ? 'The start of the cut' : 'The end of the cut';
  return { kind: 'plan/cut-off-edge', where: { thing }, facts: {} };
}
