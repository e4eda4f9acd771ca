import type { Region, Ring } from '../spaces.ts';

/**
 * One standard deviation of the area of regions whose corners are each misplaced by `cornerSigmaM`, east and
 * north alike and independently.
 *
 * With A = ½ Σ x_i (y_{i+1} - y_{i-1}), each coordinate enters linearly, so
 * σ_A² = ¼ σ² Σ [(x_{i+1} - x_{i-1})² + (y_{i+1} - y_{i-1})²] over the corners of all rings.
 *
 * @param regions that do not overlap; a corner made by the overlay counts as one placed by hand
 * Accuracy: first order. Neglects that a corner where two outlines cross moves with both of them, that many
 * corners on one curve are not placed independently, and a common scale error.
 * Source: first-order propagation of the coordinate area formula (Chrisman & Yandell 1988, from memory;
 * derived above)
 */
export function areaSigmaM2(regions: readonly Region[], cornerSigmaM: number): number {
  const sum = regions
    .flatMap((region) => [region.outer, ...region.holes])
    .reduce((total, ring) => total + spanSquares(ring), 0);
  return (cornerSigmaM / 2) * Math.sqrt(sum);
}

function spanSquares(ring: Ring): number {
  return ring.reduce((total, _, i) => {
    const before = ring[(i + ring.length - 1) % ring.length] as Ring[number];
    const after = ring[(i + 1) % ring.length] as Ring[number];
    return total + (after.xM - before.xM) ** 2 + (after.yM - before.yM) ** 2;
  }, 0);
}
