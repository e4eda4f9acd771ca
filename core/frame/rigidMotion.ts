import { ok, type Result, trouble } from '../result.ts';
import type { YardPoint } from '../spaces.ts';

/** Takes `about` to `to` and turns everything round it, clockwise; no length changes. */
export interface RigidMotion {
  readonly about: YardPoint;
  readonly to: YardPoint;
  readonly turnDeg: number;
}

/** Coordinates are taken from `about` first, so that far from the origin no digit of a shape is lost. */
export function movePoint({ about, to, turnDeg }: RigidMotion, { xM, yM }: YardPoint): YardPoint {
  const turnRad = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const [dx, dy] = [xM - about.xM, yM - about.yM];
  return { xM: to.xM + (dx * cos + dy * sin), yM: to.yM + (dy * cos - dx * sin) };
}

export interface PointPair {
  readonly from: YardPoint;
  readonly to: YardPoint;
}

export interface RigidFit {
  readonly motion: RigidMotion;
  /** How far each point still is from where it should be, in metres. */
  readonly residualsM: readonly number[];
  /** By how much the points asked for are farther apart than those given (1 = not at all); never applied. */
  readonly ratio: number;
}

/**
 * The motion that brings points nearest to where they should be, by least squares: turn and shift, no scale.
 *
 * With both sets taken about their means, a_i and b_i, the sum of |R a_i - b_i|² is least for the turn (counter-
 * clockwise) atan2(Σ a × b, Σ a · b), and the scale that would fit best is √((Σ a × b)² + (Σ a · b)²) / Σ |a|².
 * (Plane case of P. H. Schönemann, "A generalized solution of the orthogonal Procrustes problem", Psychometrika 31,
 * 1966; derived by setting the derivative by the turn to zero.)
 *
 * Problems: value/too-few below two pairs, value/places-coincide when the points of either side are all one place
 */
export function fitRigid(pairs: readonly PointPair[]): Result<RigidFit> {
  const where = { field: 'points with known places' };
  if (pairs.length < 2) {
    return trouble({ kind: 'value/too-few', where, facts: { found: pairs.length, least: 2 } });
  }
  const about = mean(pairs.map(({ from }) => from));
  const to = mean(pairs.map((pair) => pair.to));
  let [cross, dot, from2, to2] = [0, 0, 0, 0];
  for (const pair of pairs) {
    const [ax, ay] = [pair.from.xM - about.xM, pair.from.yM - about.yM];
    const [bx, by] = [pair.to.xM - to.xM, pair.to.yM - to.yM];
    cross += ax * by - ay * bx;
    dot += ax * bx + ay * by;
    from2 += ax * ax + ay * ay;
    to2 += bx * bx + by * by;
  }
  if (from2 === 0 || to2 === 0 || (cross === 0 && dot === 0)) {
    return trouble({ kind: 'value/places-coincide', where, facts: {} });
  }
  const motion = { about, to, turnDeg: (-Math.atan2(cross, dot) * 180) / Math.PI };
  const residualsM = pairs.map((pair) => {
    const at = movePoint(motion, pair.from);
    return Math.hypot(at.xM - pair.to.xM, at.yM - pair.to.yM);
  });
  return ok({ motion, residualsM, ratio: Math.hypot(cross, dot) / from2 });
}

function mean(points: readonly YardPoint[]): YardPoint {
  // Summed from the first point, for the same reason as in `movePoint`.
  const first = points[0] ?? { xM: 0, yM: 0 };
  let [xM, yM] = [0, 0];
  for (const point of points) {
    xM += point.xM - first.xM;
    yM += point.yM - first.yM;
  }
  return { xM: first.xM + xM / points.length, yM: first.yM + yM / points.length };
}
