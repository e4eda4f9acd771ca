import { movedTraced, tracedRing } from '../../../core/curves/index.ts';
import { type Change, type Edit, makeEdit, putRow } from '../../../core/edits/index.ts';
import { distanceM, regionContains } from '../../../core/kernel/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { parseLength } from '../../../core/units/index.ts';
import type { Picture, PictureCorners, Traced, Yard } from '../../../core/yard.ts';
import type { DrawingContext, DrawingInput, ScalePictureState, SetAside, Step } from '../drawing.ts';
import { pictureCorners, yardToPicture } from '../pictureCorners.ts';
import { moved } from '../plane.ts';
import { typedUnit } from '../typedCorner.ts';
import { beginSelect } from './select.ts';

export function beginScalePicture(pictureId: string, setAside: SetAside | null): ScalePictureState {
  return { kind: 'scale-picture', pictureId, from: null, to: null, aim: null, setAside, problem: null };
}

/** Two ends of a known length, then the length: the picture and all that is traced over it take its scale. */
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
  const edit = scaleEdit(context.yard, picture, from, to, length.value);
  return { state: beginSelect(state.setAside), edits: [edit], select: { kind: 'picture', id: picture.id } };
}

/**
 * Scales the picture about `from` so that the length between the two ends is true. A picture that had a scale
 * takes with it every outline and mark with a corner on it: what was traced stays over what it was traced from.
 * Over one that had none nothing was traced (`take` sees to that), so what lies there keeps its own lengths.
 */
export function scaleEdit(
  yard: Yard,
  picture: Picture,
  from: YardPoint,
  to: YardPoint,
  lengthM: number,
): Edit {
  const factor = lengthM / distanceM(from, to);
  const scaled = (at: YardPoint): YardPoint => ({
    xM: from.xM + (at.xM - from.xM) * factor,
    yM: from.yM + (at.yM - from.yM) * factor,
  });
  const corners = pictureCorners(picture);
  const covers = (at: YardPoint): boolean => regionContains({ outer: corners, holes: [] }, at);
  const changes: Change[] = [
    putRow(yard, 'pictures', {
      ...picture,
      placement: {
        kind: 'scaled',
        lengths: [{ fromPx: yardToPicture(picture, from), toPx: yardToPicture(picture, to), lengthM }],
        corners: corners.map(scaled) as unknown as PictureCorners,
      },
    }),
  ];
  if (picture.placement.kind === 'unscaled') return makeEdit(`scale ${picture.name}`, ...changes);
  for (const outline of yard.outlines) {
    if (!tracedRing(outline.outer).some(covers)) continue;
    const move = (traced: Traced): Traced => movedTraced(traced, { move: scaled, scale: factor, turnDeg: 0 });
    const [outer, holes] = [move(outline.outer), outline.holes.map(move)];
    changes.push(putRow(yard, 'outlines', { ...outline, outer, holes }));
  }
  for (const mark of yard.marks) {
    if (covers(mark.at)) changes.push(putRow(yard, 'marks', { ...mark, at: scaled(mark.at) }));
  }
  return makeEdit(`scale ${picture.name}`, ...changes);
}
