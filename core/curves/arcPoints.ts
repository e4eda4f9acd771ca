import type { YardPoint } from '../spaces.ts';
import type { Arc } from './arc.ts';
import { LEAST_PER_TURN, MOST_CHORDS, MOST_OFF_CURVE_M, soundCount } from './offCurve.ts';

/**
 * The corners between the ends of an arc that stand for it.
 *
 * Accuracy: edge within 2 mm of the arc; area that of the arc but for rounding (relative 1e-12 of its sector)
 * Source: worked out here. n chords, each over φ = θ/n; the ends stay on the arc and the corners between stand at
 * R = (1 + ε) r. The triangles to the centre hold ½ (n − 2) R² sin φ and at the ends r R sin φ, which is to be the
 * sector ½ r² θ: ½ (n − 2) ε² + (n − 1) ε = C with C = n (φ − sin φ) / (2 sin φ). The corners are then
 * n / (n − 1) · rφ²/12 outside, and the edge, deepest in the chords at the ends, at most (5/12)²/2 · rφ² inside.
 * Places are taken from the chord, not the centre: x = r sin t, y = 2 r sin((θ/2 + t)/2) sin((θ/2 − t)/2), t from
 * −θ/2 to θ/2, which keeps its digits when the arc is nearly straight.
 */
export function arcPoints(arc: Arc, chords: number = arcChords(arc)): readonly YardPoint[] {
  const { from, to, radiusM, sweepRad } = arc;
  const halfRad = Math.abs(sweepRad) / 2;
  const outM = radiusM * outsideBy(2 * halfRad, chords);
  const chordM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  const [east, north] = [(to.xM - from.xM) / chordM, (to.yM - from.yM) / chordM];
  // The arc bulges to the right of its chord when it runs counter-clockwise.
  const side = Math.sign(sweepRad);
  const [middleX, middleY] = [(from.xM + to.xM) / 2, (from.yM + to.yM) / 2];
  return Array.from({ length: chords - 1 }, (_, i) => {
    const t = halfRad * ((2 * (i + 1)) / chords - 1);
    const alongM = (radiusM + outM) * Math.sin(t);
    const bulgeM =
      2 * radiusM * Math.sin((halfRad + t) / 2) * Math.sin((halfRad - t) / 2) + outM * Math.cos(t);
    return {
      xM: middleX + alongM * east + side * bulgeM * north,
      yM: middleY + alongM * north - side * bulgeM * east,
    };
  });
}

/** How many chords an arc is drawn with. */
export function arcChords({ radiusM, sweepRad }: Arc): number {
  const sweep = Math.abs(sweepRad);
  // 1/11 is above (5/12)²/2, and by more than what the terms of φ⁴ come to.
  const byDepth = sweep * Math.sqrt(radiusM / (11 * MOST_OFF_CURVE_M));
  const byLook = (sweep * LEAST_PER_TURN) / (2 * Math.PI);
  let chords = Math.ceil(Math.max(byDepth, byLook, 2));
  // With few chords the corners stand farther out than the edge dips in.
  while (chords <= MOST_CHORDS && radiusM * outsideBy(sweep, chords) > MOST_OFF_CURVE_M) chords += 1;
  return soundCount(chords);
}

/** ε of the note above. */
function outsideBy(sweepRad: number, chords: number): number {
  const phi = sweepRad / chords;
  const c = (chords * lessSine(phi)) / (2 * Math.sin(phi));
  return (2 * c) / (chords - 1 + Math.sqrt((chords - 1) ** 2 + 2 * (chords - 2) * c));
}

/** φ − sin φ for φ up to a quarter turn; the plain difference loses its digits. */
function lessSine(phi: number): number {
  const q = phi * phi;
  const tail = 1 - (q / 72) * (1 - (q / 110) * (1 - (q / 156) * (1 - q / 210)));
  return ((phi * q) / 6) * (1 - (q / 20) * (1 - (q / 42) * tail));
}
