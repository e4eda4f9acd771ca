import type { Ring, YardPoint } from '../../../core/spaces.ts';
import type { Outline } from '../../../core/yard.ts';
import type { Draft, DrawingContext, DrawingInput, Handle, ReshapeState, Step } from '../drawing.ts';
import { removeOutlineEdit, reshapeEdit } from '../outlineEdits.ts';
import { handleNear, pickAt } from '../pick.ts';
import { cornerBefore, moved } from '../plane.ts';
import { type Snap, snapPoint, unsnapped } from '../snap.ts';
import { snapIndexOf } from '../snapIndex.ts';
import { readTypedCorner } from '../typedCorner.ts';
import { addCorner, moveCorner, movedRings, removeCorner, ringsOf } from './rings.ts';
import { beginReshape } from './beginReshape.ts';
import { beginSelect } from './select.ts';
import { beginTrace } from './trace.ts';

/** The selected outline: corners are dragged, added, removed, or the whole is moved. */
export function stepReshape(given: ReshapeState, input: DrawingInput, context: DrawingContext): Step {
  const outline = context.yard.outlines.find(({ id }) => id === given.outlineId);
  if (outline === undefined) return { state: beginSelect(given.setAside), edits: [], select: null };
  const state = given.draft !== null && given.draft.of !== outline ? withoutDraft(given) : given;
  const rings = state.draft?.rings ?? ringsOf(outline);
  switch (input.kind) {
    case 'press': {
      const handle = handleNear(rings, input.at, input.reachM);
      return handle && context.mayEdit ? grab(state, outline, rings, handle) : still(state);
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
      return commit(state, outline, context);
    case 'arrows-let-go':
      // Said also when the focus goes, as it does when a pointer takes hold: that must not end the hold.
      return state.held || state.problem !== null ? still(state) : commit(state, outline, context);
    case 'arrow': {
      if (!context.mayEdit) return still(state);
      const corner = state.chosen && cornerAt(rings, state.chosen);
      const draft =
        state.chosen && corner
          ? moveChosen(state, outline, rings, state.chosen, moved(corner, input.eastM, input.northM))
          : draftOf(outline, movedRings(rings, input.eastM, input.northM), `move ${outline.name}`);
      return still({ ...state, draft, problem: null });
    }
    case 'typed':
      return typed(state, outline, rings, input.text, context);
    case 'next-corner':
      return still({ ...state, chosen: turnedTo(rings, state.chosen, 1) });
    case 'previous-corner':
      return still({ ...state, chosen: turnedTo(rings, state.chosen, -1) });
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

function draftOf(of: Outline, rings: readonly Ring[], label: string): Draft {
  return { of, rings, label };
}

function cornerAt(rings: readonly Ring[], handle: Handle): YardPoint | undefined {
  return rings[handle.ring]?.[handle.at];
}

function grab(state: ReshapeState, outline: Outline, rings: readonly Ring[], handle: Handle): Step {
  if (handle.of === 'corner')
    return still({ ...state, chosen: handle, held: true, hover: handle, snap: null });
  const chosen: Handle = { of: 'corner', ring: handle.ring, at: handle.at + 1 };
  const draft = draftOf(outline, addCorner(rings, handle), `add a corner to ${outline.name}`);
  return still({ ...state, chosen, held: true, hover: chosen, draft, snap: null, problem: null });
}

/** A corner added a moment ago and now being moved is still one edit, told as the adding. */
function moveChosen(
  state: ReshapeState,
  outline: Outline,
  rings: readonly Ring[],
  chosen: Handle,
  to: YardPoint,
): Draft {
  const label = state.draft?.label ?? `move a corner of ${outline.name}`;
  return draftOf(outline, moveCorner(rings, chosen, to), label);
}

function snapCorner(
  rings: readonly Ring[],
  chosen: Handle,
  outline: Outline,
  ask: { readonly at: YardPoint; readonly reachM: number },
  context: DrawingContext,
): Snap {
  const chain = chainBefore(rings, chosen);
  return snapPoint(snapIndexOf(context.yard), { ...ask, chain, except: outline.id });
}

/** The two corners before the chosen one: the edge it can be square to, the corner it is measured from. */
function chainBefore(rings: readonly Ring[], chosen: Handle): Ring {
  const ring = rings[chosen.ring] ?? [];
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
  rings: readonly Ring[],
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
  const first = rings[0]?.[0];
  const corner = state.chosen && cornerAt(rings, state.chosen);
  const chain = state.chosen ? chainBefore(rings, state.chosen) : first ? [first] : [];
  const to = readTypedCorner(text, chain, corner ?? null, context.units);
  if (!to.ok) return still({ ...state, problem: to.problems[0] });
  if (state.chosen !== null) {
    const draft = moveChosen(state, outline, rings, state.chosen, to.value);
    return commit({ ...state, draft }, outline, context);
  }
  const eastM = to.value.xM - (first?.xM ?? 0);
  const northM = to.value.yM - (first?.yM ?? 0);
  const draft = draftOf(outline, movedRings(rings, eastM, northM), `move ${outline.name}`);
  return commit({ ...state, draft }, outline, context);
}

/** The next corner round the outline, through its holes and back to the start. */
function turnedTo(rings: readonly Ring[], chosen: Handle | null, by: 1 | -1): Handle | null {
  const all = rings.flatMap((ring, r) => ring.map((_, at): Handle => ({ of: 'corner', ring: r, at })));
  const now = all.findIndex((handle) => handle.ring === chosen?.ring && handle.at === chosen.at);
  const next = now < 0 ? (by > 0 ? 0 : all.length - 1) : (now + by + all.length) % all.length;
  return all[next] ?? null;
}

function remove(
  state: ReshapeState,
  outline: Outline,
  rings: readonly Ring[],
  key: 'back' | 'remove',
  context: DrawingContext,
): Step {
  if (!context.mayEdit || state.held) return still(state);
  if (state.chosen !== null) {
    const draft = draftOf(outline, removeCorner(rings, state.chosen), `remove a corner of ${outline.name}`);
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
  const select = beginSelect(state.setAside);
  const mark = selection?.kind === 'mark' ? { id: selection.id, to: null, held: false } : null;
  return { state: { ...select, mark }, edits: [] };
}
