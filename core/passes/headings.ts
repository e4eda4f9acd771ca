import type { Region, YardPoint } from '../spaces.ts';

/** Edge directions nearer than this are one heading: 1 degree. */
const SAME_HEADING_RAD = Math.PI / 180;

/**
 * How many lanes of one swath it takes to cover ground at a heading, about.
 *
 * @param laneRad direction of the lanes, counter-clockwise from east
 * Source: the lanes crossing an edge e are |e . n| / swath, and every lane crosses the edge twice:
 *   N = sum |e . n| / (2 swath) over outer rings and holes alike. Own work.
 */
export function expectedLanes(regions: readonly Region[], laneRad: number, swathM: number): number {
  const nx = -Math.sin(laneRad);
  const ny = Math.cos(laneRad);
  let acrossM = 0;
  for (const { xM, yM } of edgesOf(regions)) acrossM += Math.abs(xM * nx + yM * ny);
  return acrossM / (2 * swathM);
}

/**
 * The headings worth trying, best first. The count above is concave between edge directions, so its least lies
 * along an edge: only those are offered.
 *
 * @returns directions in radians counter-clockwise from east, at most `most`
 */
export function laneHeadings(regions: readonly Region[], swathM: number, most: number): number[] {
  const known: number[] = [];
  const edges = edgesOf(regions).sort((a, b) => Math.hypot(b.xM, b.yM) - Math.hypot(a.xM, a.yM));
  for (const { xM, yM } of edges) {
    const rad = (Math.atan2(yM, xM) + Math.PI) % Math.PI;
    const isKnown = known.some((other) => {
      const apart = Math.abs(other - rad);
      return Math.min(apart, Math.PI - apart) < SAME_HEADING_RAD;
    });
    if (!isKnown) known.push(rad);
  }
  return known
    .map((rad) => ({ rad, lanes: expectedLanes(regions, rad, swathM) }))
    .sort((a, b) => a.lanes - b.lanes)
    .slice(0, most)
    .map(({ rad }) => rad);
}

function edgesOf(regions: readonly Region[]): YardPoint[] {
  return regions.flatMap((region) =>
    [region.outer, ...region.holes].flatMap((ring) =>
      ring.map((from, i) => {
        const to = ring[(i + 1) % ring.length] as YardPoint;
        return { xM: to.xM - from.xM, yM: to.yM - from.yM };
      }),
    ),
  );
}

/** Compass bearing (0 = north, 90 = east) of a lane direction, in [0, 180): a lane is walked both ways. */
export function bearingDegOf(laneRad: number): number {
  const deg = (90 - (laneRad * 180) / Math.PI) % 180;
  return deg < 0 ? deg + 180 : deg;
}
