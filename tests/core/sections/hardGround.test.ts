import { expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { planSections } from '../../../core/sections/index.ts';
import { HARD_GROUND } from '../../support/hardGround.ts';
import { expectNear } from '../../support/expectNear.ts';
import { seededRandom } from '../../support/randomYards.ts';

const HEADINGS = [null, 30];
const CASES = HARD_GROUND.flatMap(({ name, make }) => [4, 7].map((k) => ({ name, k, make })));

test.each(CASES)(
  '$name is cut into $k connected sections, whatever the heading and policy',
  ({ k, make }) => {
    const ground = make(seededRandom(1000 + k));
    const wholeM2 = regionAreaM2(ground);
    const loadAreaM2 = (wholeM2 / k) * 1.01;
    for (const headingDeg of HEADINGS) {
      for (const policy of ['even', 'fewest'] as const) {
        const planned = planSections(
          { zoneId: 'z', zoneName: 'Lawn', letter: 'A', treated: [ground] },
          { loadAreaM2, policy, headingDeg, swathM: 1, markM: 0.1 },
        );
        if (!planned.ok) throw new Error(`${headingDeg} ${policy}: ${planned.problems[0].kind}`);
        const areasM2 = planned.value.sections.map(({ areaM2 }) => areaM2);
        expect(areasM2.length).toBe(k); // ceil(k / 1.01)
        expect(Math.max(...areasM2)).toBeLessThanOrEqual(loadAreaM2 * (1 + 1e-9)); // one load
        const sumM2 = areasM2.reduce((sum, areaM2) => sum + areaM2, 0);
        expectNear(sumM2, wholeM2, 1e-8 * wholeM2, 'm²'); // nothing lost, nothing twice: each section is one region
      }
    }
  },
);
