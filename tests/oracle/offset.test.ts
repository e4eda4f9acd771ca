import { expect, test } from 'vitest';
import { offsetRegions, regionsAreaM2, signedAreaM2 } from '../../core/kernel/index.ts';
import { region } from '../support/builders.ts';
import { expectNear } from '../support/expectNear.ts';
import { startGeos } from '../support/geosNetArea.ts';
import { between, randomComb, randomStar, seededRandom } from '../support/randomYards.ts';

test('a lawn grown or shrunk with round corners has the area GEOS finds, on 300 random lawns', async () => {
  const geos = await startGeos();
  let pieces = 0;
  for (let seed = 1; seed <= 300; seed++) {
    const random = seededRandom(seed);
    const star = randomStar(
      random,
      4 + Math.floor(random() * 40),
      { xM: 0, yM: 0 },
      20,
      between(random, 0, 0.8),
    );
    // A comb falls apart into its teeth once its bar is gone.
    const lawn = seed % 2 === 0 ? star : randomComb(random, 5, 24, 14);
    const byM = seed % 2 === 0 ? between(random, -6, 2) : between(random, -1.2, 2);
    const grown = offsetRegions([region(lawn)], byM);
    // Arcs are within 1 mm of the true ones; a ring of up to 43 corners turns by less than 43 half turns in all.
    const slackM2 = 0.001 * 43 * Math.PI * Math.abs(byM);
    expectNear(regionsAreaM2(grown), geos.grownAreaM2(lawn, byM), slackM2, `m² (seed ${seed}, ${byM} m)`); // GEOS 3.13
    expect(regionsAreaM2(grown) > signedAreaM2(lawn), `seed ${seed}`).toBe(byM > 0);
    pieces += grown.length > 1 ? 1 : 0;
  }
  expect(pieces).toBeGreaterThan(5); // some fell apart while shrinking
});
