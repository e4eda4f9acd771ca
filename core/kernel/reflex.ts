import type { Ring, YardPoint } from '../spaces.ts';

/** Whether the ground, left of the ring, takes up more than half a turn at a corner of it. */
export function isReflex(ring: Ring, corner: number): boolean {
  const before = ring.at(corner - 1) as YardPoint;
  const here = ring[corner] as YardPoint;
  const after = ring[(corner + 1) % ring.length] as YardPoint;
  return (here.xM - before.xM) * (after.yM - here.yM) < (here.yM - before.yM) * (after.xM - here.xM);
}
