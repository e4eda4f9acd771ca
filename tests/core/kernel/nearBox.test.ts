import { expect, test } from 'vitest';
import { intersectRegions, nearBox, regionsAreaM2, ringBounds } from '../../../core/kernel/index.ts';
import { lShape, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomYard, seededRandom } from '../../support/randomYards.ts';

test('what lies far from the box is left out', () => {
  const lawn = region(lShape(100, 100, 50, 50), rect(2, 2, 4, 4), rect(40, 2, 4, 4));
  const [near] = nearBox([lawn], ringBounds(rect(0, 0, 10, 10)));
  expect(regionsAreaM2(near === undefined ? [] : [near])).toBe(11 * 11 - 16); // a metre more each way; the near hole
  expect(nearBox([lawn], ringBounds(rect(200, 0, 1, 1)))).toEqual([]);
});

test('a bed shares with what is left near it as much ground as with the whole lawn', () => {
  for (let seed = 1; seed <= 80; seed++) {
    const { zone, beds } = randomYard(seededRandom(seed), 40, 6);
    const lawn = [region(zone)];
    for (const bed of beds) {
      const near = nearBox(lawn, ringBounds(bed));
      const shared = (of: readonly ReturnType<typeof region>[]) =>
        regionsAreaM2(intersectRegions(of, [region(bed)]));
      expectNear(shared(near), shared(lawn), 1e-4, `m² (seed ${seed})`); // grid steps along the edges
    }
  }
});
