import type { YardPoint } from '../spaces.ts';
import { MOST_CHORDS, MOST_OFF_CURVE_M, soundCount } from './offCurve.ts';

/** A cubic Bézier piece: its ends and the two points its tangents run to. */
export type Bezier = readonly [YardPoint, YardPoint, YardPoint, YardPoint];

/** Chords may leave the curve by the first share of the 2 mm, corners are shifted by the rest: of an arc 2/3 as much. */
const CHORD_SHARE = 0.6;

/**
 * Area between a piece and its chord, positive when it bulges to the right of the chord (a ring that keeps its
 * ground on the left gains it).
 *
 * Accuracy: rounding only; places are taken from the first end
 * Source: Green's theorem, ½ ∫ (x dy − y dx), of the Bernstein polynomials: with the first end as origin
 * (3 p1×p2 + 3 p1×p3 + 6 p2×p3) / 20
 */
export function bezierAreaM2([p0, p1, p2, p3]: Bezier): number {
  const cross = (a: YardPoint, b: YardPoint): number =>
    (a.xM - p0.xM) * (b.yM - p0.yM) - (a.yM - p0.yM) * (b.xM - p0.xM);
  return (3 * cross(p1, p2) + 3 * cross(p1, p3) + 6 * cross(p2, p3)) / 20;
}

export function bezierAt([p0, p1, p2, p3]: Bezier, t: number): YardPoint {
  const s = 1 - t;
  const [a, b, c, d] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return {
    xM: a * p0.xM + b * p1.xM + c * p2.xM + d * p3.xM,
    yM: a * p0.yM + b * p1.yM + c * p2.yM + d * p3.yM,
  };
}

/**
 * The corners between the ends of a piece that stand for it: points of it, all shifted square to the edge by one
 * length so that the area is the piece's own.
 *
 * Accuracy: edge within 2 mm of the piece, area that of the piece but for rounding
 * Source: worked out here. A chord over 1/n of the parameter leaves the curve by at most max|P''| / 8n², and P'' of a
 * cubic lies between its values at the ends. The area is a quadratic of the shift, so the shift is a root.
 */
export function bezierPoints(piece: Bezier, chords: number = bezierChords(piece)): readonly YardPoint[] {
  return chords < 2 ? [] : shifted(piece, chords).points;
}

/** How many chords a piece is drawn with; 1 = it is straight. */
function bezierChords(piece: Bezier): number {
  const bendM = Math.max(bend(piece[0], piece[1], piece[2]), bend(piece[1], piece[2], piece[3]));
  // Points at even thirds of a chord: nothing to draw but the chord. NaN ends here too.
  if (!(bendM > LEAST_BEND_M)) return 1;
  const byChord = Math.sqrt((6 * bendM) / (8 * CHORD_SHARE * MOST_OFF_CURVE_M));
  let chords = Math.max(Math.ceil(byChord), 2);
  while (
    chords <= MOST_CHORDS &&
    !(Math.abs(shifted(piece, chords).shiftM) <= (1 - CHORD_SHARE) * MOST_OFF_CURVE_M)
  ) {
    chords *= 2;
  }
  return soundCount(chords);
}

/** A thousandth of the kernel grid. */
const LEAST_BEND_M = 1e-9;

function bend(a: YardPoint, b: YardPoint, c: YardPoint): number {
  return Math.hypot(a.xM - 2 * b.xM + c.xM, a.yM - 2 * b.yM + c.yM);
}

function shifted(
  piece: Bezier,
  chords: number,
): { readonly points: readonly YardPoint[]; readonly shiftM: number } {
  const [p0, , , p3] = piece;
  const on = Array.from({ length: chords + 1 }, (_, i) =>
    i === 0 ? p0 : i === chords ? p3 : bezierAt(piece, i / chords),
  );
  const normals = on.map((_, i) => normalAt(on, i));
  // Twice the area as c0 + c1 s + c2 s², s the shift, about the first end.
  let [c0, c1, c2] = [0, 0, 0];
  for (let i = 0; i < chords; i++) {
    const [a, b, m, n] = [on[i], on[i + 1], normals[i], normals[i + 1]] as [
      YardPoint,
      YardPoint,
      Normal,
      Normal,
    ];
    const [ax, ay, bx, by] = [a.xM - p0.xM, a.yM - p0.yM, b.xM - p0.xM, b.yM - p0.yM];
    c0 += ax * by - ay * bx;
    c1 += ax * n.north - ay * n.east + m.east * by - m.north * bx;
    c2 += m.east * n.north - m.north * n.east;
  }
  const shiftM = smallRoot(c2, c1, c0 - 2 * bezierAreaM2(piece));
  const points = on.slice(1, -1).map(({ xM, yM }, i) => {
    const { east, north } = normals[i + 1] as Normal;
    return { xM: xM + shiftM * east, yM: yM + shiftM * north };
  });
  return { points, shiftM };
}

interface Normal {
  readonly east: number;
  readonly north: number;
}

/** To the right of the way from the point before to the point after; the ends are not moved. */
function normalAt(on: readonly YardPoint[], i: number): Normal {
  const [before, after] = [on[i - 1], on[i + 1]];
  if (before === undefined || after === undefined) return { east: 0, north: 0 };
  const [x, y] = [after.xM - before.xM, after.yM - before.yM];
  const lengthM = Math.hypot(x, y);
  return lengthM > 0 ? { east: y / lengthM, north: -x / lengthM } : { east: 0, north: 0 };
}

/** The root of a s² + b s + c nearest nought; NaN where there is none. */
function smallRoot(a: number, b: number, c: number): number {
  if (c === 0) return 0;
  return (-2 * c) / (b + (b < 0 ? -1 : 1) * Math.sqrt(b * b - 4 * a * c));
}
