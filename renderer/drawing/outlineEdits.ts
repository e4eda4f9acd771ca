import { straight } from '../../core/curves/index.ts';
import { type Change, type Edit, makeEdit, newOutline, putRow, removeRow } from '../../core/edits/index.ts';
import { checksFollowing, checksFollowingMark } from '../../core/fieldCheck/index.ts';
import { checkRing, signedAreaM2 } from '../../core/kernel/index.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { FieldCheck, Mark, MarkKind, Outline, OutlineKind } from '../../core/yard.ts';
import type { DrawingContext } from './drawing.ts';
import { nextName } from './names.ts';
import { placingOver } from './placingOver.ts';

export interface Made {
  readonly id: string;
  readonly edit: Edit;
}

/** A new outline from traced corners, or what is wrong with them. The corners are taken as they are, only turned the right way round. */
export function traceEdit(context: DrawingContext, kind: OutlineKind, corners: Ring): Result<Made> {
  const name = nextName(context.yard, kind);
  const id = context.makeId();
  const checked = checkRing(corners, id, name);
  if (!checked.ok) return checked;
  const placing = placingOver(context.yard.pictures, corners);
  const outline = newOutline({ id, kind, name, outer: straight(turned(corners, 1)), placing });
  return ok({ id, edit: makeEdit(`trace ${name}`, putRow(context.yard, 'outlines', outline)) });
}

/** An outline's rings put in place of the old ones, or what is wrong with the new ones. */
export function reshapeEdit(
  context: DrawingContext,
  outline: Outline,
  rings: readonly Ring[],
  label: string,
): Result<Edit> {
  for (const ring of rings) {
    const checked = checkRing(ring, outline.id, outline.name);
    if (!checked.ok) return checked;
  }
  const after = withRings(outline, rings);
  const checks = checksFollowing(context.yard.checks, outline, after);
  return ok(makeEdit(label, putRow(context.yard, 'outlines', after), ...putChecks(context, checks)));
}

/** The outline with other rings, each running the way its place asks for. */
export function withRings(outline: Outline, rings: readonly Ring[]): Outline {
  const [outer = [], ...holes] = rings;
  return {
    ...outline,
    outer: straight(turned(outer, 1)),
    holes: holes.map((hole) => straight(turned(hole, -1))),
  };
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

/** Same corners, counter-clockwise for sign 1, clockwise for -1; the first corner stays the first. */
function turned(ring: Ring, sign: 1 | -1): Ring {
  const [first, ...rest] = ring;
  if (first === undefined || Math.sign(signedAreaM2(ring)) !== -sign) return ring;
  return [first, ...rest.reverse()];
}
