import { tracedRegion, tracedRing } from '../../core/curves/index.ts';
import { distanceM, distanceToEdgeM, regionContains, ringBounds } from '../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { Yard } from '../../core/yard.ts';
import type { Selection } from './drawing.ts';
import { cornerAfter } from './plane.ts';

/** What a click means: the nearest mark in reach, else the smallest outline it falls in, else an edge in reach. */
export function pickAt(yard: Yard, at: YardPoint, reachM: number): Selection {
  const mark = nearestBy(yard.marks, (m) => distanceM(m.at, at), reachM);
  if (mark !== undefined) return { kind: 'mark', id: mark.id };
  const holding = yard.outlines
    .filter((outline) => regionContains(tracedRegion(outline), at))
    .sort((a, b) => boxM2(tracedRing(a.outer)) - boxM2(tracedRing(b.outer)));
  if (holding[0] !== undefined) return { kind: 'outline', id: holding[0].id };
  const edged = nearestBy(yard.outlines, (outline) => edgeDistanceM(tracedRing(outline.outer), at), reachM);
  return edged === undefined ? null : { kind: 'outline', id: edged.id };
}

/** Only to put the small before the large; nobody is shown this. */
function boxM2(ring: Ring): number {
  const box = ringBounds(ring);
  return (box.maxXM - box.minXM) * (box.maxYM - box.minYM);
}

function edgeDistanceM(ring: Ring, at: YardPoint): number {
  return ring.reduce((least, from, i) => {
    const to = cornerAfter(ring, i) ?? from;
    return Math.min(least, distanceToEdgeM(from, to, at));
  }, Number.POSITIVE_INFINITY);
}

function nearestBy<T>(items: readonly T[], farM: (item: T) => number, reachM: number): T | undefined {
  let best: T | undefined;
  let bestM = reachM;
  for (const item of items) {
    const far = farM(item);
    if (far < bestM || (far === bestM && best === undefined)) {
      best = item;
      bestM = far;
    }
  }
  return best;
}
