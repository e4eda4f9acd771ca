import { applyEdit } from '../../../core/edits/index.ts';
import { lengthsDisagree } from '../../../core/frame/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { parseLength } from '../../../core/units/index.ts';
import type { Picture } from '../../../core/yard.ts';
import type { DrawingContext, DrawingInput, ScalePictureState, SetAside, Step } from '../drawing.ts';
import { yardToPicture } from '../pictureCorners.ts';
import { moved } from '../plane.ts';
import { rescaleEdit } from '../rescaleEdit.ts';
import { typedUnit } from '../typedCorner.ts';
import { beginSelect } from './select.ts';

export function beginScalePicture(pictureId: string, setAside: SetAside | null): ScalePictureState {
  return { kind: 'scale-picture', pictureId, from: null, to: null, aim: null, setAside, problem: null };
}

/**
 * Two ends of a known length, then the length: it joins those the picture has, and the picture and all that is traced
 * over it take the scale of them all. One that disagrees wildly with the others is taken and said.
 */
export function stepScalePicture(
  state: ScalePictureState,
  input: DrawingInput,
  context: DrawingContext,
): Step {
  const picture = context.yard.pictures.find(({ id }) => id === state.pictureId);
  // A picture that knows where it is has its scale from there.
  if (picture === undefined || picture.placement.kind === 'georeferenced') {
    return { state: beginSelect(state.setAside), edits: [] };
  }
  switch (input.kind) {
    case 'move':
      return { state: { ...state, aim: input.at }, edits: [] };
    case 'leave':
    case 'interrupted':
      return { state: { ...state, aim: null }, edits: [] };
    case 'click':
      return point(state, input.at);
    case 'arrow': {
      const aim = moved(state.aim ?? state.from ?? input.from, input.eastM, input.northM);
      return { state: { ...state, aim }, edits: [] };
    }
    case 'place':
      return state.aim === null ? { state, edits: [] } : point(state, state.aim);
    case 'typed':
      if (input.text.trim() === '' && state.aim !== null && state.to === null) return point(state, state.aim);
      return typed(state, picture, input.text, context);
    case 'back':
      if (state.to !== null) return { state: { ...state, to: null, problem: null }, edits: [] };
      return { state: { ...state, from: null, problem: null }, edits: [] };
    case 'escape':
      if (state.from !== null) {
        return { state: { ...beginScalePicture(picture.id, state.setAside), aim: state.aim }, edits: [] };
      }
      return { state: beginSelect(state.setAside), edits: [] };
    default:
      return { state, edits: [] };
  }
}

/** The first click sets one end, the second the other; a third moves the second end. */
function point(state: ScalePictureState, at: YardPoint): Step {
  if (state.from === null) return { state: { ...state, from: at, problem: null }, edits: [] };
  if (distanceM(state.from, at) === 0) return { state, edits: [] };
  return { state: { ...state, to: at, problem: null }, edits: [] };
}

function typed(state: ScalePictureState, picture: Picture, text: string, context: DrawingContext): Step {
  const { from, to } = state;
  if (from === null || to === null) {
    const problem = {
      kind: 'value/missing',
      where: { field: 'both ends of the length' },
      facts: {},
    } as const;
    return { state: { ...state, problem }, edits: [] };
  }
  const length = parseLength(text, 'length', typedUnit(context.units));
  if (!length.ok) return { state: { ...state, problem: length.problems[0] }, edits: [] };
  const known = {
    fromPx: yardToPicture(picture, from),
    toPx: yardToPicture(picture, to),
    lengthM: length.value,
  };
  const lengths = picture.placement.kind === 'scaled' ? [...picture.placement.lengths, known] : [known];
  const edit = rescaleEdit(context.yard, picture, lengths, `scale ${picture.name}`);
  if (!edit.ok) return { state: { ...state, problem: edit.problems[0] }, edits: [] };
  const after = applyEdit(context.yard, edit.value).pictures.find(({ id }) => id === picture.id);
  const problem = (after && lengthsDisagree(after)) ?? null;
  return {
    state: { ...beginSelect(state.setAside), problem },
    edits: [edit.value],
    select: { kind: 'picture', id: picture.id },
  };
}
