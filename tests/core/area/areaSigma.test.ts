import { describe, expect, test } from 'vitest';
import { areaSigmaM2 } from '../../../core/area/index.ts';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import type { Ring } from '../../../core/spaces.ts';
import { lShape, rect, region, regularPolygon } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { type Random, seededRandom } from '../../support/randomYards.ts';

describe('how sure an area is', () => {
  test('for a rectangle is σ times its diagonal', () => {
    // Every corner's neighbours are a diagonal apart: ¼ σ² · 4 (a² + b²) = σ² (a² + b²).
    expectNear(areaSigmaM2([region(rect(0, 0, 30, 40))], 0.1), 5, 1e-12, 'm²'); // 0.1 * √(900 + 1600)
  });

  test('counts holes and further pieces as well', () => {
    const pieces = [region(rect(0, 0, 30, 40), rect(5, 5, 3, 4)), region(rect(100, 0, 6, 8))];
    expectNear(areaSigmaM2(pieces, 0.1), 0.1 * Math.sqrt(2500 + 25 + 100), 1e-12, 'm²'); // diagonals 50, 5, 10
  });

  test('is nought for corners that are sure, and for nothing', () => {
    expect(areaSigmaM2([region(rect(0, 0, 30, 40))], 0)).toBe(0); // no spread
    expect(areaSigmaM2([], 0.1)).toBe(0); // no ground
  });

  test('is what repeated tracing spreads by, and 95 % of tracings lie within 1.96 of it', () => {
    const lawn = region(lShape(24, 18, 9, 7), regularPolygon({ xM: 6, yM: 6 }, 2, 12));
    const SIGMA_M = 0.08;
    const TRIALS = 20_000;
    const sigmaM2 = areaSigmaM2([lawn], SIGMA_M);
    const trueM2 = regionAreaM2(lawn);
    const random = seededRandom(2026);
    let squares = 0;
    let within = 0;
    for (let trial = 0; trial < TRIALS; trial++) {
      const traced = region(
        shaken(lawn.outer, SIGMA_M, random),
        ...lawn.holes.map((hole) => shaken(hole, SIGMA_M, random)),
      );
      const missM2 = regionAreaM2(traced) - trueM2;
      squares += missM2 * missM2;
      if (Math.abs(missM2) <= 1.96 * sigmaM2) within++;
    }
    // A spread from 20,000 trials is itself sure to 1 / √(2 * 20,000) = 0.5 %; four of those.
    expectNear(Math.sqrt(squares / TRIALS) / sigmaM2, 1, 0.02, 'of the spread');
    expectNear((100 * within) / TRIALS, 95, 1, '%'); // design, section 15: 94 to 96 %
  });
});

function shaken(ring: Ring, sigmaM: number, random: Random): Ring {
  return ring.map(({ xM, yM }) => ({ xM: xM + sigmaM * normal(random), yM: yM + sigmaM * normal(random) }));
}

/** Box & Muller 1958. */
function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
