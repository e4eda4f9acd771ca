import { distanceM, distanceToEdgeM, regionContains } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';

/** A stretch this near to an edge runs along it, and is not inside. */
const ALONG_M = 1e-6;

/**
 * Length of a line that lies inside any of some regions; what runs along an edge does not.
 *
 * @param regions disjoint
 * Accuracy: exact but for rounding
 * Method: the line is cut where it meets an edge, and each stretch is where its middle is
 */
export function lengthInsideM(line: readonly YardPoint[], regions: readonly Region[]): number {
  let insideM = 0;
  line.forEach((b, i) => {
    const a = line[i - 1];
    if (a !== undefined) for (const region of regions) insideM += edgeInsideM(a, b, region);
  });
  return insideM;
}

function edgeInsideM(a: YardPoint, b: YardPoint, region: Region): number {
  const rings = [region.outer, ...region.holes];
  const shares = [
    0,
    1,
    ...rings.flatMap((ring) => ring.flatMap((c, i) => meets(a, b, c, ring.at(i - 1) as YardPoint))),
  ];
  const along = (share: number): YardPoint => {
    return { xM: a.xM + share * (b.xM - a.xM), yM: a.yM + share * (b.yM - a.yM) };
  };
  const stops = shares.sort((p, q) => p - q);
  let insideM = 0;
  stops.forEach((to, i) => {
    const from = stops[i - 1];
    if (from === undefined || to === from) return;
    const middle = along((from + to) / 2);
    if (!regionContains(region, middle)) return;
    const isAlong = rings.some((ring) =>
      ring.some((c, k) => distanceToEdgeM(ring.at(k - 1) as YardPoint, c, middle) < ALONG_M),
    );
    if (!isAlong) insideM += (to - from) * distanceM(a, b);
  });
  return insideM;
}

/** How far along a to b the edge from c to d is met, as a share; none when it is not. */
function meets(a: YardPoint, b: YardPoint, c: YardPoint, d: YardPoint): number[] {
  const [abX, abY] = [b.xM - a.xM, b.yM - a.yM];
  const sideC = abX * (c.yM - a.yM) - abY * (c.xM - a.xM);
  const sideD = abX * (d.yM - a.yM) - abY * (d.xM - a.xM);
  if (sideC > 0 === sideD > 0) return [];
  const part = sideC / (sideC - sideD);
  const [xM, yM] = [c.xM + part * (d.xM - c.xM), c.yM + part * (d.yM - c.yM)];
  const share = ((xM - a.xM) * abX + (yM - a.yM) * abY) / (abX * abX + abY * abY);
  return share > 0 && share < 1 ? [share] : [];
}
