import { outlineRings, tracedRing } from '../curves/index.ts';
import { distanceM, distanceToEdgeM, type RingBounds, ringBounds } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Mark, Outline, Traced, Yard } from '../yard.ts';
import { findCorner } from './places.ts';

/** What the end of a taped distance lies on, as the yard is drawn now; `short` is for a narrow column. */
export type CheckEnd = { readonly words: string; readonly short: string } & (
  | { readonly on: 'corner' | 'edge'; readonly outline: Outline }
  | { readonly on: 'mark'; readonly mark: Mark }
  | { readonly on: 'nothing' }
);

/** What lies closer than this is one place: a tape cannot tell them apart. */
export const SAME_PLACE_M = 0.005;

/**
 * What stands where the end of a check was put: a corner before a mark, a mark before an edge, the first drawn
 * before the others. An end whose corner was moved away since lies on nothing.
 */
export function findEnd({ outlines, marks }: Pick<Yard, 'outlines' | 'marks'>, at: YardPoint): CheckEnd {
  const near = outlines.filter((outline) => mayHold(outline, at));
  for (const outline of near) {
    const corner = findCorner(outline, at, SAME_PLACE_M);
    if (corner !== undefined) return { on: 'corner', outline, ...corner };
  }
  const mark = marks.find((each) => distanceM(each.at, at) <= SAME_PLACE_M);
  if (mark !== undefined) return { on: 'mark', mark, words: mark.name, short: mark.name };
  const edged = near.find((outline) => isOnEdge(outline, at));
  if (edged === undefined) return { on: 'nothing', words: 'no corner, mark or edge', short: 'nothing' };
  return { on: 'edge', outline: edged, words: `the edge of ${edged.name}`, short: `${edged.name} edge` };
}

function isOnEdge(outline: Outline, at: YardPoint): boolean {
  return outlineRings(outline).some((ring) =>
    ring.some((from, i) => distanceToEdgeM(from, ring[(i + 1) % ring.length] ?? from, at) <= SAME_PLACE_M),
  );
}

const boxes = new WeakMap<Traced, RingBounds>();

/** Whether a place is near enough for the outline to be looked at corner by corner. */
function mayHold({ outer }: Outline, { xM, yM }: YardPoint): boolean {
  const box = boxes.get(outer) ?? ringBounds(tracedRing(outer));
  boxes.set(outer, box);
  const { minXM, maxXM, minYM, maxYM } = box;
  return (
    xM >= minXM - SAME_PLACE_M &&
    xM <= maxXM + SAME_PLACE_M &&
    yM >= minYM - SAME_PLACE_M &&
    yM <= maxYM + SAME_PLACE_M
  );
}
