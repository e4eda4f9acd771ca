import { distanceToEdgeM } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { WalkPreview } from '../drawing/index.ts';

/** The cut nearest to a point, within reach of it. */
export function cutNear(walk: WalkPreview, at: YardPoint, reachM: number): string | undefined {
  const near = walk.cuts
    .map(({ id, from, to }) => ({ id, farM: distanceToEdgeM(from, to, at) }))
    .filter(({ farM }) => farM <= reachM);
  return near.toSorted((a, b) => a.farM - b.farM)[0]?.id;
}
