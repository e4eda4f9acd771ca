import { describe, expect, test } from 'vitest';
import { orientRegion, regionsAreaM2, signedAreaM2, subtractRegions } from '../../../core/kernel/index.ts';
import { overlayBySecondKernel } from '../../../core/kernel/secondKernel.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomYard, seededRandom } from '../../support/randomYards.ts';

const square = region(rect(0, 0, 10, 10));
const bed = region(rect(8, 8, 4, 4));

test('orientation', () => {
  const [ring] = overlayBySecondKernel('subtract', [square], [region(rect(2, 2, 3, 3))]).map(orientRegion);
  expectNear(signedAreaM2(ring?.outer ?? []), 100, 1e-9, 'm²'); // 10 * 10, counter-clockwise
  expectNear(signedAreaM2(ring?.holes[0] ?? []), -9, 1e-9, 'm²'); // 3 * 3, clockwise
  expect(ring?.outer.length).toBe(4); // open: the first corner is not repeated
});

describe('the second kernel', () => {
  test('does the three overlays', () => {
    expectNear(regionsAreaM2(overlayBySecondKernel('union', [square], [bed])), 112, 1e-9, 'm²'); // 100 + 16 - 4
    expectNear(regionsAreaM2(overlayBySecondKernel('subtract', [square], [bed])), 96, 1e-9, 'm²'); // 100 - 4
    expectNear(regionsAreaM2(overlayBySecondKernel('intersect', [square], [bed])), 4, 1e-9, 'm²'); // 2 * 2
  });

  test('finds the areas the first finds, on random yards', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const yard = randomYard(seededRandom(seed), 16, 4);
      const beds = yard.beds.map((ring) => region(ring));
      const second = regionsAreaM2(overlayBySecondKernel('subtract', [region(yard.zone)], beds));
      const first = regionsAreaM2(subtractRegions([region(yard.zone)], beds));
      expectNear(first, second, 1e-6 * second, `m² (seed ${seed})`); // design's promise between two kernels
    }
  });
});
