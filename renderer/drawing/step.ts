import { distanceM } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { DrawingContext, DrawingInput, DrawingState, SetAside, Step, Tool } from './drawing.ts';
import { handleNear } from './handles.ts';
import { mayStep } from './mayStep.ts';
import { beginAddCut, stepAddCut } from './states/addCut.ts';
import { stepCut } from './states/cut.ts';
import { beginOval } from './states/beginOval.ts';
import { beginMoveYard, stepMoveYard } from './states/moveYard.ts';
import { stepOval } from './states/oval.ts';
import { beginPlaceMark, stepPlaceMark } from './states/placeMark.ts';
import { beginPlaceEnd, stepPlaceEnd } from './states/placeEnd.ts';
import { beginPlaceYard, stepPlaceYard } from './states/placeYard.ts';
import { stepReshape } from './states/reshape.ts';
import { ringsOf } from './states/rings.ts';
import { beginScalePicture, stepScalePicture } from './states/scalePicture.ts';
import { beginSelect, stepSelect } from './states/select.ts';
import { beginTapeBetween, stepTapeBetween } from './states/tapeBetween.ts';
import { beginTrace, stepTrace, traceLeftOpen } from './states/trace.ts';

/** Nothing in hand, nothing put aside. */
export const AT_REST: DrawingState = beginSelect(null);

/** The one way the drawing goes on: from a state and an input to the next state and the edits made. */
export function step(given: DrawingState, input: DrawingInput, context: DrawingContext): Step {
  const state = mayStep(given, context) ? given : withoutTool(given);
  if (input.kind === 'take') return take(state, input.tool, context);
  switch (state.kind) {
    case 'select':
      return stepSelect(state, input, context);
    case 'trace':
      return stepTrace(state, input, context);
    case 'oval':
      return stepOval(state, input, context);
    case 'place-mark':
      return stepPlaceMark(state, input, context);
    case 'reshape':
      return stepReshape(state, input, context);
    case 'scale-picture':
      return stepScalePicture(state, input, context);
    case 'tape-between':
      return stepTapeBetween(state, input, context);
    case 'place-yard':
      return stepPlaceYard(state, input, context);
    case 'move-yard':
      return stepMoveYard(state, input, context);
    case 'cut':
      return stepCut(state, input, context);
    case 'add-cut':
      return stepAddCut(state, input, context);
    case 'place-end':
      return stepPlaceEnd(state, input, context);
  }
}

/** Whether pressing here takes hold of something, so that the sketch must not slide along with the pointer. */
export function canGrab(
  state: DrawingState,
  at: YardPoint,
  reachM: number,
  context: DrawingContext,
): boolean {
  if (!context.mayEdit) return false;
  if (state.kind === 'move-yard') return true;
  if (state.kind === 'reshape') {
    const outline = context.yard.outlines.find(({ id }) => id === state.outlineId);
    const rings = state.draft?.rings ?? (outline ? ringsOf(outline) : []);
    return handleNear(rings, at, reachM) !== undefined;
  }
  const mark = state.kind === 'select' && context.yard.marks.find(({ id }) => id === state.mark?.id);
  return mark ? distanceM(mark.at, at) <= reachM : false;
}

/** Where nothing may be changed, a tool brought from another page is put down and its trace put aside. */
function withoutTool(state: DrawingState): DrawingState {
  if (state.kind === 'trace') return beginSelect(traceLeftOpen(state));
  return state.kind === 'select' || state.kind === 'reshape' ? state : beginSelect(state.setAside);
}

function take(state: DrawingState, tool: Tool, context: DrawingContext): Step {
  const setAside: SetAside | null = state.kind === 'trace' ? traceLeftOpen(state) : state.setAside;
  if (tool.kind === 'select') return { state: beginSelect(setAside), edits: [] };
  if (tool.kind === 'add-cut' || tool.kind === 'place-end') {
    if (context.walk?.mayEdit !== true) return { state: beginSelect(setAside), edits: [] };
    const state = tool.kind === 'add-cut' ? beginAddCut(setAside) : beginPlaceEnd(tool.end, setAside);
    return { state, edits: [], select: null };
  }
  if (!context.mayEdit) return { state: beginSelect(setAside), edits: [] };
  const unscaled = context.yard.pictures.find(({ placement }) => placement.kind === 'unscaled');
  if (unscaled !== undefined && tool.kind !== 'scale-picture' && tool.kind !== 'tape-between') {
    // What is traced over a picture without a scale would have a size nobody knows.
    const problem = { kind: 'value/no-scale', where: { field: unscaled.name }, facts: {} } as const;
    return { state: { ...beginSelect(setAside), problem }, edits: [] };
  }
  switch (tool.kind) {
    case 'trace': {
      const fresh = beginTrace(tool.outlineKind, setAside);
      // The same kind again goes on with what was left open; another kind leaves it for Backspace.
      const goesOn = setAside?.outlineKind === tool.outlineKind;
      const state = goesOn ? { ...fresh, corners: setAside.corners, setAside: null } : fresh;
      return { state, edits: [], select: null };
    }
    case 'oval':
      return { state: beginOval(tool.outlineKind, tool.shape, setAside), edits: [], select: null };
    case 'place-mark':
      return { state: beginPlaceMark(tool.markKind, setAside), edits: [], select: null };
    case 'tape-between':
      return { state: beginTapeBetween(setAside), edits: [], select: null };
    case 'place-yard':
      return { state: beginPlaceYard(tool.readPlace, setAside), edits: [], select: null };
    case 'move-yard':
      return { state: beginMoveYard(setAside), edits: [], select: null };
    case 'scale-picture':
      return {
        state: beginScalePicture(tool.pictureId, setAside),
        edits: [],
        select: { kind: 'picture', id: tool.pictureId },
      };
  }
}
