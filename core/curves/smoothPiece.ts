import type { YardPoint } from '../spaces.ts';
import type { TracedCorner } from '../yard.ts';
import type { Bezier } from './bezier.ts';

/**
 * A smooth edge as a cubic piece. Where two smooth edges meet, the curve goes through their corner without a kink;
 * at the end of a run it leaves its corner as a parabola.
 *
 * @param before the corner before `from` when the edge between them is smooth too, else null; likewise `after`
 * Source: centripetal Catmull-Rom (Yuksel, Schaefer, Keyser 2011, "Parameterization and applications of Catmull-Rom
 * curves"): knots √length apart, the tangent at a corner that of the parabola through it and its neighbours; such a
 * piece has no cusp and does not cross itself. At an end P''' = 0, which gives M0 = 2 (P1 − P0) − M1; a run of one
 * edge is straight.
 */
export function smoothPiece(
  before: YardPoint | null,
  from: YardPoint,
  to: YardPoint,
  after: YardPoint | null,
): Bezier {
  const chord = { xM: to.xM - from.xM, yM: to.yM - from.yM };
  const start = before === null ? null : tangent(before, from, to, 'after');
  const end = after === null ? null : tangent(from, to, after, 'before');
  const m0 = start ?? mirrored(chord, end);
  const m1 = end ?? mirrored(chord, start);
  return [
    from,
    { xM: from.xM + m0.xM / 3, yM: from.yM + m0.yM / 3 },
    { xM: to.xM - m1.xM / 3, yM: to.yM - m1.yM / 3 },
    to,
  ];
}

/** The tangent at `at` for the edge before or after it; null when two of the three are at one place. */
function tangent(
  before: YardPoint,
  at: YardPoint,
  after: YardPoint,
  edge: 'before' | 'after',
): YardPoint | null {
  const [ax, ay, bx, by] = [at.xM - before.xM, at.yM - before.yM, after.xM - at.xM, after.yM - at.yM];
  const [ta, tb] = [Math.sqrt(Math.hypot(ax, ay)), Math.sqrt(Math.hypot(bx, by))];
  if (!(ta > 0 && tb > 0)) return null;
  const knot = edge === 'before' ? ta : tb;
  // In this order the same edge walked the other way comes to the same numbers.
  return {
    xM: knot * (ax / ta + bx / tb - (ax + bx) / (ta + tb)),
    yM: knot * (ay / ta + by / tb - (ay + by) / (ta + tb)),
  };
}

function mirrored(chord: YardPoint, other: YardPoint | null): YardPoint {
  return other === null ? chord : { xM: 2 * chord.xM - other.xM, yM: 2 * chord.yM - other.yM };
}

/** The corners before and after a smooth edge that its curve goes by; null at the ends of a run. */
export function smoothNeighbours(
  corners: readonly TracedCorner[],
  edge: number,
): { readonly before: TracedCorner | null; readonly after: TracedCorner | null } {
  const n = corners.length;
  const at = (corner: number): TracedCorner => corners[(corner + n) % n] as TracedCorner;
  const isSmooth = (corner: number): boolean => at(corner).run?.kind === 'smooth';
  return {
    before: isSmooth(edge - 1) ? at(edge - 1) : null,
    after: isSmooth(edge + 1) ? at(edge + 2) : null,
  };
}
