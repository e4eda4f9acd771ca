import { moveOwnPoint, ownPoints } from '../../../core/curves/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import { ok, type Result } from '../../../core/result.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { parseLength } from '../../../core/units/index.ts';
import type { Traced } from '../../../core/yard.ts';
import { aimOf } from '../aim.ts';
import type { DrawingContext, DrawingInput, OvalState, Step } from '../drawing.ts';
import { traceEdit } from '../outlineEdits.ts';
import { alongBearing, bearingDegOf, middle, moved } from '../plane.ts';
import { unsnapped } from '../snap.ts';
import { readTypedCorner, typedUnit } from '../typedCorner.ts';
import { readTypedShape } from '../typedEdge.ts';
import { beginOval } from './beginOval.ts';
import { handOver } from './handOver.ts';
import { beginSelect } from './select.ts';

/** The centre, then the rim of a circle, or the end of an ellipse's length and then its width. */
export function stepOval(state: OvalState, input: DrawingInput, context: DrawingContext): Step {
  switch (input.kind) {
    case 'move':
      return { state: { ...state, aim: aimOf(input, context) }, edits: [] };
    case 'leave':
    case 'interrupted':
      return { state: { ...state, aim: null }, edits: [] };
    case 'click':
      return place(state, aimOf(input, context).at, context);
    case 'arrow': {
      const from = state.aim?.at ?? state.points[state.points.length - 1] ?? input.from;
      return { state: { ...state, aim: unsnapped(moved(from, input.eastM, input.northM)) }, edits: [] };
    }
    case 'place':
      return state.aim === null ? { state, edits: [] } : place(state, state.aim.at, context);
    case 'typed':
      return typed(state, input.text, context);
    case 'back':
      return { state: { ...state, points: state.points.slice(0, -1), problem: null }, edits: [] };
    case 'escape':
      if (state.points.length === 0) return { state: beginSelect(state.setAside), edits: [], select: null };
      return { state: { ...state, points: [], problem: null }, edits: [] };
    default:
      return { state, edits: [] };
  }
}

/** The shape as it would be with its next point at a place; null while there is only a centre. */
export function ovalTo({ shape, points }: OvalState, at: YardPoint): Traced | null {
  const [centre, end] = points;
  if (centre === undefined) return null;
  const outM = distanceM(centre, end ?? at);
  if (shape === 'circle') return { kind: 'circle', centre, radiusM: outM };
  const bearingDeg = bearingDegOf(centre, end ?? at) ?? 0;
  // Until its width is pointed out, half its length is as good as any.
  const long: Traced = { kind: 'ellipse', centre, halfLengthM: outM, halfWidthM: outM / 2, bearingDeg };
  const width = ownPoints(long).find(({ kind }) => kind === 'width-end');
  return end === undefined || width === undefined ? long : moveOwnPoint(long, width, at);
}

function place(state: OvalState, at: YardPoint, context: DrawingContext): Step {
  const { shape, points, outlineKind } = state;
  const last = points[points.length - 1];
  // A double click: a size of nothing is nobody's wish.
  if (last?.xM === at.xM && last.yM === at.yM) return { state, edits: [] };
  if (points.length < (shape === 'circle' ? 1 : 2)) {
    return { state: { ...state, points: [...points, at], problem: null }, edits: [] };
  }
  const traced = ovalTo(state, at);
  if (traced === null) return { state, edits: [] };
  return handOver(state, traceEdit(context, outlineKind, traced));
}

function typed(state: OvalState, text: string, context: DrawingContext): Step {
  if (text.trim() === '') {
    return state.aim === null ? { state, edits: [] } : place(state, state.aim.at, context);
  }
  const shape = readTypedShape(text);
  if (shape !== null && state.points.length === 0) {
    return { state: beginOval(state.outlineKind, shape, state.setAside), edits: [] };
  }
  const at = readPoint(state, text, context);
  if (!at.ok) return { state: { ...state, problem: at.problems[0] }, edits: [] };
  const placed = place(state, at.value, context);
  return placed.state.kind === 'oval' ? { ...placed, state: { ...placed.state, aim: null } } : placed;
}

/** A place, or a size: the radius of a circle, the whole length (and its bearing) and the whole width of an ellipse. */
function readPoint(state: OvalState, text: string, context: DrawingContext): Result<YardPoint> {
  const [centre, end] = state.points;
  const { units } = context;
  if (centre === undefined || text.includes(',')) {
    return readTypedCorner(text, state.points.slice(0, 1), null, units);
  }
  if (state.shape === 'circle') {
    const radius = parseLength(text, 'radius', typedUnit(units));
    return radius.ok ? ok(alongBearing(centre, radius.value, 90)) : radius;
  }
  if (end === undefined) {
    const far = readTypedCorner(text, [centre], state.aim?.at ?? moved(centre, 1, 0), units);
    return far.ok ? ok(middle(centre, far.value)) : far;
  }
  const width = parseLength(text, 'width', typedUnit(units));
  const bearingDeg = bearingDegOf(centre, end) ?? 0;
  return width.ok ? ok(alongBearing(centre, width.value / 2, bearingDeg - 90)) : width;
}
