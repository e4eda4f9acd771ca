import { distanceToEdgeM, signedAreaM2 } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';

export interface Circle {
  readonly centre: YardPoint;
  readonly radiusM: number;
}

/** The circle through three points, from the linear equations of its middle: 2 (b − a) · c = |b|² − |a|². */
export function circleThrough(a: YardPoint, b: YardPoint, c: YardPoint): Circle {
  const [bx, by, cx, cy] = [b.xM - a.xM, b.yM - a.yM, c.xM - a.xM, c.yM - a.yM];
  const d = 2 * (bx * cy - by * cx);
  const [b2, c2] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * b2 - by * c2) / d, (bx * c2 - cx * b2) / d];
  return { centre: { xM: a.xM + x, yM: a.yM + y }, radiusM: Math.hypot(x, y) };
}

/** Many points of the arc from `from` through `via` to `to`, ends included, by angle about its middle. */
export function arcSamples(from: YardPoint, via: YardPoint, to: YardPoint, steps: number): YardPoint[] {
  const { centre, radiusM } = circleThrough(from, via, to);
  const angle = ({ xM, yM }: YardPoint) => Math.atan2(yM - centre.yM, xM - centre.xM);
  const turn = (rad: number) => ((rad % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  const [start, toVia, toEnd] = [angle(from), turn(angle(via) - angle(from)), turn(angle(to) - angle(from))];
  const sweep = toVia < toEnd ? toEnd : toEnd - 2 * Math.PI;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const rad = start + (sweep * i) / steps;
    return { xM: centre.xM + radiusM * Math.cos(rad), yM: centre.yM + radiusM * Math.sin(rad) };
  });
}

/** How far two lines lie apart at most, by the points of each and some between them. */
export function mostApartM(a: readonly YardPoint[], b: readonly YardPoint[]): number {
  return Math.max(mostOffM(dense(a), b), mostOffM(dense(b), a));
}

function mostOffM(points: readonly YardPoint[], line: readonly YardPoint[]): number {
  return Math.max(
    ...points.map((point) =>
      line
        .slice(1)
        .reduce(
          (least, to, i) => Math.min(least, distanceToEdgeM(line[i] as YardPoint, to, point)),
          Infinity,
        ),
    ),
  );
}

function dense(line: readonly YardPoint[]): YardPoint[] {
  return line.flatMap((to, i) => {
    const from = line[i - 1];
    if (from === undefined) return [to];
    return [1 / 3, 2 / 3, 1].map((share) => ({
      xM: from.xM + share * (to.xM - from.xM),
      yM: from.yM + share * (to.yM - from.yM),
    }));
  });
}

/** Area between a line and the chord from its first point to its last. */
export function areaToChordM2(line: readonly YardPoint[]): number {
  return signedAreaM2(line);
}
