import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Crossing } from './chords.ts';
import type { TapeSide, TapeSides } from './TapeSides.ts';

/** Cut ends this near to where they were meant are there. */
const SAME_M = 1e-6;
/** Shorter edges are steps of a curve, and have no mark to set a tape on. */
const LEAST_EDGE_MARKS = 2;
/** Where sides are known, an edge off them is a cut line or a step of a curve; those are shorter than this. */
const LEAST_LINE_M = 1;

/**
 * Places near a cut's end that a tape can set: the marks on either hand of it, counted from either end of the sides
 * its edge lies on, and those ends themselves.
 *
 * @param sides empty = every edge is counted from its own corners
 */
export function edgeMarks({ edge, at }: Crossing, markM: number, sides: TapeSides): YardPoint[] {
  const [a, b] = [edge.at, edge.next.at];
  const edgeM = distanceM(a, b);
  const under = sides.under(a, b);
  if (under.length === 0 && !sides.isEmpty && edgeM < LEAST_LINE_M) return [at];
  const counted = under.length === 0 ? [{ from: a, to: b }] : under;
  const [x, y] = [(b.xM - a.xM) / edgeM, (b.yM - a.yM) / edgeM];
  return counted.flatMap((side) =>
    marksAlong(side, at, markM).flatMap((mark): YardPoint[] => {
      // Back onto the edge itself: the side may be some grid steps off it.
      const placeM = (mark.xM - a.xM) * x + (mark.yM - a.yM) * y;
      if (placeM < -SAME_M || placeM > edgeM + SAME_M) return [];
      if (placeM < SAME_M) return [a];
      if (placeM > edgeM - SAME_M) return [b];
      return [{ xM: a.xM + x * placeM, yM: a.yM + y * placeM }];
    }),
  );
}

function marksAlong({ from, to }: TapeSide, at: YardPoint, markM: number): YardPoint[] {
  const lengthM = distanceM(from, to);
  if (lengthM < LEAST_EDGE_MARKS * markM) return [];
  const alongM = distanceM(from, at);
  const before = Math.floor(alongM / markM) * markM;
  const after = Math.floor((lengthM - alongM) / markM) * markM;
  const places = [before, before + markM, lengthM - after, lengthM - after - markM];
  return places.map((placeM) => ({
    xM: from.xM + ((to.xM - from.xM) * placeM) / lengthM,
    yM: from.yM + ((to.yM - from.yM) * placeM) / lengthM,
  }));
}
