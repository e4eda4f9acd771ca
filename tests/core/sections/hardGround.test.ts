import { expect, test } from 'vitest';
import { intersectRegions, regionAreaM2, regionsAreaM2, unionRegions } from '../../../core/kernel/index.ts';
import { planSections } from '../../../core/sections/index.ts';
import type { Region } from '../../../core/spaces.ts';
import { expectNear } from '../../support/expectNear.ts';
import { HARD_GROUND } from '../../support/hardGround.ts';
import { seededRandom } from '../../support/randomYards.ts';

/** Thinned: each count of sections with one policy, at two headings. */
const ASKED = [
  { k: 2, policy: 'even', headings: [null, 90] },
  { k: 4, policy: 'fewest', headings: [0, 30] },
  { k: 7, policy: 'even', headings: [null, 30] },
  { k: 12, policy: 'even', headings: [0, 90] },
] as const;
const CASES = HARD_GROUND.flatMap(({ name, make }) => ASKED.map((asked) => ({ name, make, ...asked })));

test.each(CASES)('$name is cut into $k connected sections, $policy', ({ make, k, policy, headings }) => {
  const ground = make(seededRandom(1000 + k));
  const wholeM2 = regionAreaM2(ground);
  const loadAreaM2 = (wholeM2 / k) * 1.01;
  for (const headingDeg of headings) {
    const planned = planSections(
      { zoneId: 'z', zoneName: 'Lawn', letter: 'A', treated: [ground] },
      { loadAreaM2, policy, headingDeg, swathM: 1, markM: 0.1 },
    );
    if (!planned.ok) throw new Error(`${headingDeg}: ${planned.problems[0].kind}`);
    const regions = planned.value.sections.map(({ region }) => region);
    expect(regions.length).toBe(k); // ceil(k / 1.01)
    for (const region of regions) {
      expect(regionAreaM2(region)).toBeLessThanOrEqual(loadAreaM2 * (1 + 1e-9)); // one load
      expect(piecesOf(region)).toBe(1); // connected, by the kernel
    }
    expectNear(regionsAreaM2(regions), wholeM2, 1e-8 * wholeM2, 'm²'); // nothing lost
    expectNear(sharedM2(regions), 0, 1e-5 * wholeM2, 'm²'); // nothing twice, by the kernel
  }
});

/** Slivers of the kernel's grid along shared edges left out. */
function piecesOf(region: Region): number {
  return unionRegions([region]).filter((piece) => regionAreaM2(piece) > 1e-3).length;
}

function sharedM2(regions: readonly Region[]): number {
  return regions.reduce((sum, region, place) => {
    return sum + regionsAreaM2(intersectRegions([region], regions.slice(place + 1)));
  }, 0);
}
