import { figureProblems, reversedTraced, tracedRing } from '../../core/curves/index.ts';
import { type Change, type Edit, makeEdit, newOutline, putRow, removeRow } from '../../core/edits/index.ts';
import { checksFollowing, checksFollowingMark } from '../../core/fieldCheck/index.ts';
import { checkRing, signedAreaM2 } from '../../core/kernel/index.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Problem } from '../../core/problems.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { FieldCheck, Mark, MarkKind, Outline, OutlineKind, Traced } from '../../core/yard.ts';
import type { DrawingContext } from './drawing.ts';
import { nextName } from './names.ts';
import { placingOver } from './placingOver.ts';

export interface Made {
  readonly id: string;
  readonly edit: Edit;
}

/** A new outline as traced, or what is wrong with it. It is taken as it is, only turned the right way round. */
export function traceEdit(context: DrawingContext, kind: OutlineKind, traced: Traced): Result<Made> {
  const name = nextName(context.yard, kind);
  const id = context.makeId();
  const problem = tracedProblem(traced, id, name);
  if (problem !== null) return { ok: false, problems: [problem] };
  const placing = placingOver(context.yard.pictures, tracedRing(traced));
  const outline = newOutline({ id, kind, name, outer: turned(traced, 1), placing });
  return ok({ id, edit: makeEdit(`trace ${name}`, putRow(context.yard, 'outlines', outline)) });
}

/** An outline's rings put in place of the old ones, or what is wrong with the new ones. */
export function reshapeEdit(
  context: DrawingContext,
  outline: Outline,
  rings: readonly Traced[],
  label: string,
): Result<Edit> {
  for (const ring of rings) {
    const problem = tracedProblem(ring, outline.id, outline.name);
    if (problem !== null) return { ok: false, problems: [problem] };
  }
  const after = withRings(outline, rings);
  const checks = checksFollowing(context.yard.checks, outline, after);
  return ok(makeEdit(label, putRow(context.yard, 'outlines', after), ...putChecks(context, checks)));
}

/** The outline with other rings, each running the way its place asks for. */
export function withRings(outline: Outline, [outer, ...holes]: readonly Traced[]): Outline {
  return {
    ...outline,
    outer: outer === undefined ? outline.outer : turned(outer, 1),
    holes: holes.map((hole) => turned(hole, -1)),
  };
}

interface Checked {
  readonly outlineId: string;
  readonly name: string;
  readonly problem: Problem | null;
}

/** Traced edges do not change: the preview's answer is the edit's, and is not worked out twice. */
const checked = new WeakMap<Traced, Checked>();

/** What stands in the way of a traced edge being ground; null when nothing does. */
export function tracedProblem(traced: Traced, outlineId: string, name: string): Problem | null {
  const known = checked.get(traced);
  if (known?.outlineId === outlineId && known.name === name) return known.problem;
  const ring = checkRing(tracedRing(traced), outlineId, name);
  const problem = figureProblems(traced, outlineId, name)[0] ?? (ring.ok ? null : ring.problems[0]);
  checked.set(traced, { outlineId, name, problem });
  return problem;
}

export function removeOutlineEdit(context: DrawingContext, outline: Outline): Edit | undefined {
  const change = removeRow(context.yard, 'outlines', outline.id);
  return change && makeEdit(`remove ${outline.name}`, change);
}

export function placeMarkEdit(context: DrawingContext, kind: MarkKind, at: YardPoint): Made {
  const mark: Mark = { id: context.makeId(), kind, name: nextName(context.yard, kind), at };
  return { id: mark.id, edit: makeEdit(`place ${mark.name}`, putRow(context.yard, 'marks', mark)) };
}

export function moveMarkEdit(context: DrawingContext, mark: Mark, at: YardPoint): Edit {
  const after = { ...mark, at };
  const checks = checksFollowingMark(context.yard.checks, mark, after);
  return makeEdit(`move ${mark.name}`, putRow(context.yard, 'marks', after), ...putChecks(context, checks));
}

/** What was taped to a corner or a mark stays taped to it. */
function putChecks(context: DrawingContext, checks: readonly FieldCheck[]): readonly Change[] {
  return checks.map((check) => putRow(context.yard, 'checks', check));
}

export function removeMarkEdit(context: DrawingContext, mark: Mark): Edit | undefined {
  const change = removeRow(context.yard, 'marks', mark.id);
  return change && makeEdit(`remove ${mark.name}`, change);
}

/** Counter-clockwise for sign 1, clockwise for -1; the first corner stays the first. */
function turned(traced: Traced, sign: 1 | -1): Traced {
  return Math.sign(signedAreaM2(tracedRing(traced))) === -sign ? reversedTraced(traced) : traced;
}
