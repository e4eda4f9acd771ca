/**
 * Field checks: the map held against distances taped on the ground. In: a yard and its taped distances; out: the
 * map's distance, the difference, whether it is inside the stated ±, and what all of them say of the scale.
 * Method: first-order propagation; weighted least squares. Out of scope: mending the scale.
 */
export type { CheckedYard } from './endBase.ts';
export { type CheckedDistance, fieldCheck } from './fieldCheck.ts';
export { type CheckEnd, findEnd } from './findEnd.ts';
export { checksFollowing, checksFollowingMark } from './checksFollowing.ts';
export { newCheck } from './newCheck.ts';
export { cornersOf, type NamedPlace } from './places.ts';
export { type ScaleHint, scaleHint } from './scaleHint.ts';
export { tapeSigmaM } from './tapeSigma.ts';
export { verdictWords } from './verdictWords.ts';
