import { uncrossed } from '../../../core/curves/index.ts';
import type { Ring, YardPoint } from '../../../core/spaces.ts';
import type { Outline, Traced } from '../../../core/yard.ts';
import type {
  Draft,
  DrawingContext,
  DrawingInput,
  EdgeToCome,
  Handle,
  ReshapeState,
  Step,
} from '../drawing.ts';
import { withCornerOn, withEdge, withoutCorner } from '../edges.ts';
import { handleAfter, handleNear, handlePlace } from '../handles.ts';
import { removeOutlineEdit, reshapeEdit, tracedProblem } from '../outlineEdits.ts';
import { pickAt } from '../pick.ts';
import { cornerBefore, moved } from '../plane.ts';
import { type Snap, snapPoint, unsnapped } from '../snap.ts';
import { snapIndexOf } from '../snapIndex.ts';
import { readTypedCorner } from '../typedCorner.ts';
import { readTypedEdge } from '../typedEdge.ts';
import { readOwnPoint } from '../typedOwnPoint.ts';
import { changeRing, movedRings, moveHandle, ringsOf } from './rings.ts';
import { beginReshape } from './beginReshape.ts';
import { beginSelect, stepSelect } from './select.ts';
import { beginTrace } from './trace.ts';

/** The selected outline: its own points are dragged, added, removed, edges bent, or the whole is moved. */
export function stepReshape(given: ReshapeState, input: DrawingInput, context: DrawingContext): Step {
  const outline = context.yard.outlines.find(({ id }) => id === given.outlineId);
  if (outline === undefined) return { state: beginSelect(given.setAside), edits: [], select: null };
  const state = given.draft !== null && given.draft.of !== outline ? withoutDraft(given) : given;
  const rings = state.draft?.rings ?? ringsOf(outline);
  switch (input.kind) {
    case 'press': {
      const handle = handleNear(rings, input.at, input.reachM);
      return handle && context.mayEdit ? grab(state, outline, rings, handle, input.free) : still(state);
    }
    case 'move': {
      if (!state.held || state.chosen === null) {
        return still({ ...state, hover: handleNear(rings, input.at, input.reachM) ?? null });
      }
      const snap = input.free
        ? unsnapped(input.at)
        : snapCorner(rings, state.chosen, outline, input, context);
      const draft = moveChosen(state, outline, rings, state.chosen, snap.at);
      return still({ ...state, draft, snap, problem: null });
    }
    case 'leave':
      return still({ ...state, hover: null });
    case 'release':
      // A bend that was not pulled anywhere would only lie along the straight edge.
      if (state.draft?.unpulled) return still(withoutDraft(state));
      return state.draft?.asks ? still({ ...state, held: false }) : commit(state, outline, context);
    case 'arrows-let-go': {
      // Said also when the focus goes, as it does when a pointer takes hold: that must not end the hold.
      const waits = state.held || state.problem !== null || state.draft?.asks === true;
      return waits ? still(state) : commit(state, outline, context);
    }
    case 'arrow': {
      if (!context.mayEdit) return still(state);
      const corner = state.chosen && handlePlace(rings, state.chosen);
      const draft =
        state.chosen && corner
          ? moveChosen(state, outline, rings, state.chosen, moved(corner, input.eastM, input.northM))
          : draftOf(outline, movedRings(rings, input.eastM, input.northM), `move ${outline.name}`);
      return still({ ...state, draft, problem: null });
    }
    case 'typed':
      return typed(state, outline, rings, input.text, context);
    case 'next-corner':
      return still({ ...state, chosen: handleAfter(rings, state.chosen, 1) });
    case 'previous-corner':
      return still({ ...state, chosen: handleAfter(rings, state.chosen, -1) });
    case 'run':
      return context.mayEdit ? run(state, outline, rings, input.edge, context) : still(state);
    case 'redraw': {
      if (!context.mayEdit) return still(state);
      const draft = draftOf(
        outline,
        changeRing(rings, input.ring, () => input.traced),
        input.label,
      );
      return commit({ ...state, draft }, outline, context);
    }
    case 'mend':
      return context.mayEdit && !state.held ? mend(state, outline, rings) : still(state);
    case 'back':
    case 'remove':
      return remove(state, outline, rings, input.kind, context);
    case 'escape':
      if (state.draft !== null) return still(withoutDraft(state));
      if (state.chosen !== null) return still({ ...state, chosen: null, problem: null });
      return { state: beginSelect(state.setAside), edits: [], select: null };
    case 'interrupted':
      // A drag torn away is not an edit: the outline goes back to where the yard has it.
      return still(state.held ? withoutDraft(state) : { ...state, hover: null });
    case 'click':
      return click(state, pickAt(context.yard, input.at, input.reachM), context);
    case 'choose':
      return choose(state, input.selection, context);
    default:
      return still(state);
  }
}

function still(state: ReshapeState): Step {
  return { state, edits: [] };
}

function withoutDraft(state: ReshapeState): ReshapeState {
  return { ...state, draft: null, held: false, snap: null, problem: null };
}

function draftOf(of: Outline, rings: readonly Traced[], label: string): Draft {
  return { of, rings, label };
}

function grab(
  state: ReshapeState,
  outline: Outline,
  rings: readonly Traced[],
  { of, ring, at, place }: NonNullable<ReturnType<typeof handleNear>>,
  bends: boolean,
): Step {
  const handle: Handle = { of, ring, at };
  if (of !== 'edge') return still({ ...state, chosen: handle, held: true, hover: handle, snap: null });
  const chosen: Handle = bends ? { of: 'via', ring, at } : { of: 'corner', ring, at: at + 1 };
  const changed = changeRing(rings, ring, (traced) => {
    if (!bends) return withCornerOn(traced, at, place);
    const bent = withEdge(traced, at, { kind: 'arc', via: place });
    return bent.ok ? bent.value : traced;
  });
  const label = bends ? `bend an edge of ${outline.name}` : `add a corner to ${outline.name}`;
  const draft: Draft = { ...draftOf(outline, changed, label), ...(bends ? { unpulled: true } : {}) };
  return still({ ...state, chosen, held: true, hover: chosen, draft, snap: null, problem: null });
}

/** A corner added a moment ago and now being moved is still one edit, told as the adding. */
function moveChosen(
  state: ReshapeState,
  outline: Outline,
  rings: readonly Traced[],
  chosen: Handle,
  to: YardPoint,
): Draft {
  return draftOf(outline, moveHandle(rings, chosen, to), labelOf(state, outline, chosen));
}

function labelOf(state: ReshapeState, outline: Outline, chosen: Handle): string {
  return state.draft?.label ?? `${MOVED[chosen.of]} ${outline.name}`;
}

const MOVED: Readonly<Record<Handle['of'], string>> = {
  corner: 'move a corner of',
  edge: 'move a corner of',
  via: 'bend an edge of',
  centre: 'move',
  rim: 'size',
  'length-end': 'size',
  'width-end': 'size',
};

function snapCorner(
  rings: readonly Traced[],
  chosen: Handle,
  outline: Outline,
  ask: { readonly at: YardPoint; readonly reachM: number },
  context: DrawingContext,
): Snap {
  const chain = chainBefore(rings, chosen);
  return snapPoint(snapIndexOf(context.yard), { ...ask, chain, except: outline.id });
}

/** The two corners before the chosen one: the edge it can be square to, the corner it is measured from. */
function chainBefore(rings: readonly Traced[], chosen: Handle): Ring {
  const traced = rings[chosen.ring];
  if (traced?.kind !== 'corners' || chosen.of !== 'corner') return [];
  const ring = traced.corners;
  const before = cornerBefore(ring, chosen.at);
  const beforeThat = cornerBefore(ring, chosen.at + ring.length - 1);
  return before && beforeThat ? [beforeThat, before] : [];
}

function commit(state: ReshapeState, outline: Outline, context: DrawingContext): Step {
  if (state.draft === null) return still({ ...state, held: false, snap: null });
  const { rings, label } = state.draft;
  const edit = reshapeEdit(context, outline, rings, label);
  if (!edit.ok) return still({ ...state, held: false, snap: null, problem: edit.problems[0] });
  return { state: withoutDraft(state), edits: [edit.value] };
}

function typed(
  state: ReshapeState,
  outline: Outline,
  rings: readonly Traced[],
  text: string,
  context: DrawingContext,
): Step {
  if (text.trim() === '') {
    if (state.draft !== null) return commit(state, outline, context);
    return context.mayEdit && state.chosen === null
      ? { state: beginTrace(outline.kind, state.setAside), edits: [] }
      : still(state);
  }
  if (!context.mayEdit) return still(state);
  const word = readTypedEdge(text, context.units);
  if (word?.ok) return stepReshape(state, word.value, context);
  if (word !== null) return still({ ...state, problem: word.problems[0] });
  const { chosen } = state;
  const traced = chosen === null ? undefined : rings[chosen.ring];
  if (chosen !== null && traced !== undefined) {
    const changed = readOwnPoint(text, traced, chosen, chainBefore(rings, chosen), context.units);
    if (!changed.ok) return still({ ...state, problem: changed.problems[0] });
    const draft = draftOf(
      outline,
      changeRing(rings, chosen.ring, () => changed.value),
      labelOf(state, outline, chosen),
    );
    return commit({ ...state, draft }, outline, context);
  }
  const first = firstPlace(rings);
  const to = readTypedCorner(text, first ? [first] : [], null, context.units);
  if (!to.ok) return still({ ...state, problem: to.problems[0] });
  const eastM = to.value.xM - (first?.xM ?? 0);
  const northM = to.value.yM - (first?.yM ?? 0);
  const draft = draftOf(outline, movedRings(rings, eastM, northM), `move ${outline.name}`);
  return commit({ ...state, draft }, outline, context);
}

/** What the whole outline is moved by when its place is typed: its first corner, or its centre. */
function firstPlace([outer]: readonly Traced[]): YardPoint | undefined {
  return outer?.kind === 'corners' ? outer.corners[0] : outer?.centre;
}

/** The edge in hand, the one from the chosen corner or that of the chosen arc, made to run another way. */
function run(
  state: ReshapeState,
  outline: Outline,
  rings: readonly Traced[],
  edge: EdgeToCome,
  context: DrawingContext,
): Step {
  const { chosen } = state;
  const traced = chosen === null ? undefined : rings[chosen.ring];
  if (chosen === null || traced?.kind !== 'corners') {
    const problem = { kind: 'value/missing', where: { field: 'edge to change' }, facts: {} } as const;
    return still({ ...state, problem });
  }
  const bent = withEdge(traced, chosen.at, edge);
  if (!bent.ok) return still({ ...state, problem: bent.problems[0] });
  if (bent.value === traced) return still({ ...state, problem: null });
  const label = `${edge.kind === 'straight' ? 'straighten' : 'bend'} an edge of ${outline.name}`;
  const draft = draftOf(
    outline,
    changeRing(rings, chosen.ring, () => bent.value),
    label,
  );
  const isArc = bent.value.kind === 'corners' && bent.value.corners[chosen.at]?.run?.kind === 'arc';
  const now: Handle = { of: isArc ? 'via' : 'corner', ring: chosen.ring, at: chosen.at };
  return commit({ ...state, draft, chosen: now }, outline, context);
}

/** The outline uncrossed, shown and kept only when the person says so. */
function mend(state: ReshapeState, outline: Outline, rings: readonly Traced[]): Step {
  const problemOf = (ring: Traced) => tracedProblem(ring, outline.id, outline.name);
  const crossing = rings.map(problemOf).find((problem) => problem?.kind === 'shape/self-crossing');
  if (crossing?.kind !== 'shape/self-crossing') return still(state);
  const mended = rings.map((ring) =>
    problemOf(ring)?.kind === 'shape/self-crossing' ? uncrossed(ring) : ring,
  );
  if (!mended.every((ring) => ring !== null)) {
    const { where, facts } = crossing;
    return still({ ...state, problem: { kind: 'shape/not-uncrossed', where, facts } });
  }
  const draft: Draft = { ...draftOf(outline, mended, `uncross ${outline.name}`), asks: true };
  return still({ ...state, draft, chosen: null, problem: null });
}

function remove(
  state: ReshapeState,
  outline: Outline,
  rings: readonly Traced[],
  key: 'back' | 'remove',
  context: DrawingContext,
): Step {
  if (!context.mayEdit || state.held) return still(state);
  // The point on an arc taken away leaves its edge straight.
  if (state.chosen?.of === 'via') return run(state, outline, rings, { kind: 'straight' }, context);
  if (state.chosen?.of === 'corner') {
    const { ring, at } = state.chosen;
    const left = changeRing(rings, ring, (traced) => withoutCorner(traced, at));
    const draft = draftOf(outline, left, `remove a corner of ${outline.name}`);
    const done = commit({ ...state, draft }, outline, context);
    return {
      ...done,
      state: { ...done.state, ...(done.edits.length > 0 ? { chosen: null } : {}) } as ReshapeState,
    };
  }
  // Backspace never removes a whole outline: it is too easily pressed once too often.
  const edit = key === 'remove' ? removeOutlineEdit(context, outline) : undefined;
  return edit ? { state: beginSelect(state.setAside), edits: [edit], select: null } : still(state);
}

function click(state: ReshapeState, picked: ReturnType<typeof pickAt>, context: DrawingContext): Step {
  // A crossing waits to be mended: a stray click does not throw the draft away, Escape does.
  if (state.draft !== null) return still(state);
  const step = choose(state, picked, context);
  return { ...step, select: picked };
}

function choose(state: ReshapeState, selection: ReturnType<typeof pickAt>, context: DrawingContext): Step {
  if (selection?.kind === 'outline') {
    if (selection.id === state.outlineId) return still(state.draft ? state : { ...state, chosen: null });
    if (context.mayEdit) return still(beginReshape(selection.id, state.setAside));
  }
  return stepSelect(beginSelect(state.setAside), { kind: 'choose', selection }, context);
}
