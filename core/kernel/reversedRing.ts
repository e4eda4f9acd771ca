import type { Ring } from '../spaces.ts';

/** Rings do not change, and one turned about and back is the very same one. */
const turned = new WeakMap<Ring, Ring>();

/** The same ring the other way about. The same one every time, so that what is known of it is found again. */
export function reversedRing(ring: Ring): Ring {
  const known = turned.get(ring);
  if (known !== undefined) return known;
  const reversed = [...ring].reverse();
  turned.set(ring, reversed);
  turned.set(reversed, ring);
  return reversed;
}
