import type { SightLines } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { TracedCorner } from '../yard.ts';

/** Directions counter-clockwise from one, from east. */
export interface Sector {
  readonly fromRad: number;
  readonly sweepRad: number;
}

const FULL_TURN_RAD = 2 * Math.PI;
/** Arcs are drawn in parts no longer than this. */
const ARC_RAD = FULL_TURN_RAD / 3;
/** Directions nearer than this are one. */
const SAME_RAD = 1e-12;

/**
 * The ground seen from a place, no farther than a distance: a closed edge with arcs where nothing is in the way.
 *
 * @param at inside no barrier
 * @param sector null = all round
 * @returns fewer than three corners when nothing is seen
 * Accuracy: exact but for rounding
 * Cost: all edges, and one line of sight between every two directions in which a corner or an arc's end lies
 * Method: between two such directions the same edge is nearest, or none
 */
export function seenWithin(
  lines: SightLines,
  at: YardPoint,
  sector: Sector | null,
  radiusM: number,
): readonly TracedCorner[] {
  const { fromRad, sweepRad } = sector ?? { fromRad: 0, sweepRad: FULL_TURN_RAD };
  const turns = directionsOf(lines, at, radiusM)
    .map((rad) => (((rad - fromRad) % FULL_TURN_RAD) + FULL_TURN_RAD) % FULL_TURN_RAD)
    .filter((turn) => turn < sweepRad);
  for (let turn = 0; turn < sweepRad; turn += ARC_RAD) turns.push(turn);
  turns.push(sweepRad);
  turns.sort((a, b) => a - b);
  const corners: TracedCorner[] = sector === null ? [] : [at];
  const put = (corner: TracedCorner): void => {
    const last = corners.at(-1);
    if (last?.xM === corner.xM && last.yM === corner.yM) corners.pop();
    corners.push(corner);
  };
  const out = (turn: number, awayM: number): YardPoint => {
    const rad = fromRad + turn;
    return { xM: at.xM + awayM * Math.cos(rad), yM: at.yM + awayM * Math.sin(rad) };
  };
  turns.forEach((to, i) => {
    const from = turns[i - 1];
    if (from === undefined || to - from < SAME_RAD) return;
    const middle = out((from + to) / 2, radiusM);
    const edge = lines.firstMet(at, middle);
    if (edge === undefined) {
      put({ ...out(from, radiusM), run: { kind: 'arc', via: middle } });
      put(out(to, radiusM));
    } else {
      put(onEdge(lines, edge, at, out(from, radiusM)));
      put(onEdge(lines, edge, at, out(to, radiusM)));
    }
  });
  return closedUp(corners);
}

/** Where corners within the distance lie, and where edges cross it, from east. */
function directionsOf(lines: SightLines, at: YardPoint, radiusM: number): number[] {
  const directions: number[] = [];
  for (const { at: from, after: to } of lines.corners) {
    const [fx, fy] = [from.xM - at.xM, from.yM - at.yM];
    const [dx, dy] = [to.xM - from.xM, to.yM - from.yM];
    const away2 = fx * fx + fy * fy;
    if (away2 > 0 && away2 <= radiusM * radiusM) directions.push(Math.atan2(fy, fx));
    // |f + s d| = r
    const a = dx * dx + dy * dy;
    const b = fx * dx + fy * dy;
    const root2 = b * b - a * (away2 - radiusM * radiusM);
    if (a === 0 || root2 <= 0) continue;
    for (const share of [(-b - Math.sqrt(root2)) / a, (-b + Math.sqrt(root2)) / a]) {
      if (share > 0 && share < 1) directions.push(Math.atan2(fy + share * dy, fx + share * dx));
    }
  }
  return directions;
}

/** Where the line of an edge is met on the way to a place, and no farther. */
function onEdge(lines: SightLines, edge: number, at: YardPoint, to: YardPoint): YardPoint {
  const corner = lines.corners[edge];
  if (corner === undefined) return to;
  const { at: from, after } = corner;
  const [wx, wy] = [to.xM - at.xM, to.yM - at.yM];
  const [dx, dy] = [after.xM - from.xM, after.yM - from.yM];
  const share = ((from.xM - at.xM) * dy - (from.yM - at.yM) * dx) / (wx * dy - wy * dx);
  // A way along the edge meets it nowhere, or at its end.
  const sound = share >= 0 && share <= 1 ? share : 1;
  return { xM: at.xM + sound * wx, yM: at.yM + sound * wy };
}

/** Without a last corner that is the first. */
function closedUp(corners: readonly TracedCorner[]): readonly TracedCorner[] {
  const [first, last] = [corners[0], corners.at(-1)];
  const repeats = first !== undefined && last !== undefined && first !== last;
  const isSame = repeats && Math.hypot(first.xM - last.xM, first.yM - last.yM) < 1e-9;
  return isSame ? corners.slice(0, -1) : corners;
}
