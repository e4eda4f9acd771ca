import { expect, test } from 'vitest';
import { coverageFigures, sheetFigures } from '../../../core/sheet/index.ts';
import { areaStepM2 } from '../../../core/units/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';

test.each([
  ['nine sections', NINE_SECTIONS, 'us'],
  ['three zones', THREE_ZONES, 'metric'],
] as const)('of %s the parts shown add up to the treated ground and to the whole', (_, ground, units) => {
  const { plan } = handMadePlan(ground);
  const { treatedM2 } = sheetFigures(plan, units).zoneSum;
  const { once, twice, missed } = coverageFigures(plan, treatedM2, units);
  expectNear(once.areaM2 + twice.areaM2 + missed.areaM2, treatedM2, 1e-9 * treatedM2, 'm²'); // the law; float rounding
  expectNear(once.share + twice.share + missed.share, 1, 1e-12, ''); // the law; float rounding
  for (const { areaM2, share } of [once, twice, missed]) {
    expectNear(areaM2 / areaStepM2(units), Math.round(areaM2 / areaStepM2(units)), 1e-6, 'steps'); // whole steps
    expectNear(share, areaM2 / treatedM2, 0.001 + areaStepM2(units) / treatedM2, ''); // each within a step of its own
  }
});

test('ground thrown outside is not part of the treated ground', () => {
  const { plan } = handMadePlan(THREE_ZONES);
  const coverage = { ...plan.ground.coverage, outsideM2: 7 };
  const shown = coverageFigures({ ...plan, ground: { ...plan.ground, coverage } }, 700, 'metric');
  expect(shown.outside).toEqual({ areaM2: 7, share: 0.01 }); // 7 m² of 700 m²
});
