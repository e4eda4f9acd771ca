import type { Mark } from '../../../core/yard.ts';
import type { DrawingContext, DrawingInput, SelectState, Selection, SetAside, Step } from '../drawing.ts';
import { moveMarkEdit, removeMarkEdit } from '../outlineEdits.ts';
import { pickAt } from '../pick.ts';
import { moved } from '../plane.ts';
import { snapIndexOf } from '../snapIndex.ts';
import { snapPoint } from '../snap.ts';
import { beginCut } from './beginCut.ts';
import { beginReshape } from './beginReshape.ts';

export function beginSelect(setAside: SetAside | null): SelectState {
  return { kind: 'select', setAside, problem: null, mark: null };
}

/** Nothing in hand. Picking an outline opens its corners; picking a mark lets it be dragged. */
export function stepSelect(state: SelectState, input: DrawingInput, context: DrawingContext): Step {
  const mark = context.yard.marks.find(({ id }) => id === state.mark?.id);
  switch (input.kind) {
    case 'click':
      return chosen(state, pickAt(context.yard, input.at, input.reachM), context, true);
    case 'choose':
      return chosen(state, input.selection, context, false);
    case 'press':
      return mark && context.mayEdit ? hold(state, mark, true, null) : { state, edits: [] };
    case 'move': {
      if (mark === undefined || state.mark?.held !== true) return { state, edits: [] };
      const ask = { at: input.at, reachM: input.free ? 0 : input.reachM, chain: [], except: null };
      const others = { ...context.yard, marks: [] };
      return hold(state, mark, true, input.free ? input.at : snapPoint(snapIndexOf(others), ask).at);
    }
    case 'arrow':
      if (mark === undefined || !context.mayEdit) return { state, edits: [] };
      return hold(state, mark, false, moved(state.mark?.to ?? mark.at, input.eastM, input.northM));
    case 'release':
    case 'arrows-let-go': {
      // Letting go of the arrows is also said when the focus goes; a pointer that holds the mark keeps it.
      if (input.kind === 'arrows-let-go' && state.mark?.held === true) return { state, edits: [] };
      const to = state.mark?.to;
      if (mark === undefined || !to) return { state: letGo(state), edits: [] };
      return { state: letGo(state), edits: [moveMarkEdit(context, mark, to)] };
    }
    case 'remove': {
      const edit = mark && context.mayEdit ? removeMarkEdit(context, mark) : undefined;
      return edit ? { state: { ...state, mark: null }, edits: [edit], select: null } : { state, edits: [] };
    }
    case 'interrupted':
      return { state: letGo(state), edits: [] };
    case 'escape':
      return state.mark?.to
        ? { state: letGo(state), edits: [] }
        : { state: { ...state, mark: null }, edits: [], select: null };
    default:
      return { state, edits: [] };
  }
}

function chosen(state: SelectState, selection: Selection, context: DrawingContext, tell: boolean): Step {
  const select = tell ? { select: selection } : {};
  if (selection?.kind === 'outline' && context.mayEdit) {
    return { state: beginReshape(selection.id, state.setAside), edits: [], ...select };
  }
  if (selection?.kind === 'cut' && context.walk !== null) {
    return { state: beginCut(selection.id, state.setAside), edits: [], ...select };
  }
  const mark = selection?.kind === 'mark' ? { id: selection.id, to: null, held: false } : null;
  return { state: { ...state, mark }, edits: [], ...select };
}

function hold(state: SelectState, mark: Mark, held: boolean, to: SelectMark['to']): Step {
  return { state: { ...state, mark: { id: mark.id, to, held } }, edits: [] };
}

type SelectMark = NonNullable<SelectState['mark']>;

function letGo(state: SelectState): SelectState {
  return state.mark === null ? state : { ...state, mark: { ...state.mark, to: null, held: false } };
}
