import { expect, test } from 'vitest';
import { lengthInsideM } from '../../../core/hose/lengthInside.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, seededRandom } from '../../support/randomYards.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const LAWN = region(rect(0, 0, 10, 10), rect(4, 4, 2, 2));

test('what of a line lies on ground, over a hole in it and beyond it not', () => {
  expectNear(lengthInsideM([at(-3, 5), at(13, 5)], [LAWN]), 8, 1e-12, 'm'); // 10 across, 2 of them in the hole
  expectNear(lengthInsideM([at(1, 1), at(4, 5)], [LAWN]), 5, 1e-12, 'm'); // 3-4-5, all inside
  expectNear(lengthInsideM([at(2, -1), at(2, 3), at(-4, 3)], [LAWN]), 3 + 2, 1e-12, 'm'); // up 3 inside, west 2
});

test('a line along an edge is beside the ground, not on it', () => {
  expect(lengthInsideM([at(0, 0), at(10, 0)], [LAWN])).toBe(0);
  expect(lengthInsideM([at(-5, 4), at(4, 4), at(6, 4)], [LAWN])).toBeCloseTo(4, 12); // 4 to the hole, then along it
  expect(lengthInsideM([at(20, 0), at(30, 0)], [LAWN])).toBe(0);
  expect(lengthInsideM([at(5, 1)], [LAWN])).toBe(0);
});

test('counts as looking at it every millimetre does, on random ground', () => {
  const random = seededRandom(11);
  for (let round = 0; round < 20; round++) {
    const ground = region(randomStar(random, 12, at(0, 0), 10, 0.7));
    const [a, b] = [0, 1].map(() => at(between(random, -9, 9), between(random, -9, 9)));
    if (a === undefined || b === undefined) throw new Error('two ends');
    const looks = Math.ceil(Math.hypot(b.xM - a.xM, b.yM - a.yM) * 1000);
    let inside = 0;
    for (let i = 0; i < looks; i++) {
      const share = (i + 0.5) / looks;
      if (isIn(ground.outer, a.xM + share * (b.xM - a.xM), a.yM + share * (b.yM - a.yM))) inside += 1;
    }
    expectNear(lengthInsideM([a, b], [ground]), inside / 1000, 0.012, 'm'); // a millimetre at each of at most 12 edges
  }
});

/** Even-odd, worked out here. */
function isIn(ring: readonly { xM: number; yM: number }[], x: number, y: number): boolean {
  return (
    ring.filter((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      return a.yM > y !== b.yM > y && x < a.xM + ((y - a.yM) / (b.yM - a.yM)) * (b.xM - a.xM);
    }).length %
      2 ===
    1
  );
}
