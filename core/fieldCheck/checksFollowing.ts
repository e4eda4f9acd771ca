import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { FieldCheck, Mark, Outline } from '../yard.ts';
import { SAME_PLACE_M } from './findEnd.ts';
import { cornersOf } from './places.ts';

/**
 * The checks that must move along when an outline is reshaped: an end that lay on a corner stays on it, so that a
 * map mended by its checks is held against them anew. A corner added or taken away carries no end along.
 *
 * @returns the checks that changed, as they are afterwards
 */
export function checksFollowing(
  checks: readonly FieldCheck[],
  before: Outline,
  after: Outline,
): readonly FieldCheck[] {
  return following(checks, cornersOf(before), cornersOf(after));
}

/** The same when a mark is moved. */
export function checksFollowingMark(
  checks: readonly FieldCheck[],
  before: Mark,
  after: Mark,
): readonly FieldCheck[] {
  return following(checks, [before], [after]);
}

type Placed = { readonly at: YardPoint };

function following(
  checks: readonly FieldCheck[],
  from: readonly Placed[],
  to: readonly Placed[],
): readonly FieldCheck[] {
  if (from.length !== to.length) return [];
  const follow = (end: YardPoint): YardPoint => {
    const at = from.findIndex((corner) => distanceM(corner.at, end) <= SAME_PLACE_M);
    const there = to[at]?.at;
    return there === undefined || distanceM(from[at]?.at ?? there, there) === 0 ? end : there;
  };
  return checks.flatMap((check) => {
    const moved = { ...check, from: follow(check.from), to: follow(check.to) };
    return moved.from === check.from && moved.to === check.to ? [] : [moved];
  });
}
