import { test } from 'vitest';
import { resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const sigmaOfFirst = (...outlines: Parameters<typeof groundOf>[0]): number => {
  const resolved = resolveZones(groundOf(outlines, 0.1));
  return (resolved.ok ? resolved.value.zones[0]?.sigmaM2 : undefined) ?? Number.NaN;
};

const lawn = outline('zone', 'lawn', rect(0, 0, 30, 40));

test('a bed that lies clear and one that an overlay took out make the same ±', () => {
  const bed = outline('bed', 'bed', rect(10, 10, 6, 8));
  const alone = sigmaOfFirst(lawn, bed);
  expectNear(alone, Math.hypot(5, 1), 1e-9, 'm²'); // 0.1 × 50 m and 0.1 × 10 m of diagonal
  // A sliver of a second bed over the south edge makes the kernel draw every ring anew.
  const sliver = outline('bed', 'sliver', rect(29.99, -1, 0.005, 1.001));
  expectNear(sigmaOfFirst(lawn, bed, sliver), alone, 1e-3, 'm²'); // it takes 5 mm by 1 mm: 0.1 m × some 5 mm
});

test('a strip kept off moves with the edge it is kept off', () => {
  const strip = { ...lawn, keepOffM: 2 };
  // 26 m × 36 m are left. By hand: an edge of length l about the middle of one of length L gives l/2 to both ends:
  // each corner (13, 18), four of them.
  expectNear(sigmaOfFirst(strip), 0.1 * Math.sqrt(4 * (13 ** 2 + 18 ** 2)), 1e-3, 'm²');
});

test('a bed near by that takes nothing makes no difference', () => {
  expectNear(sigmaOfFirst(lawn, outline('bed', 'far', rect(31, 5, 4, 4))), 5, 1e-9, 'm²'); // 0.1 × 50 m of diagonal
});
