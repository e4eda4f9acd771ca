import { expect, test } from 'vitest';
import { byKind } from '../../../core/passes/coverage.ts';
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
  const { once, twice, missed } = coverageFigures(plan.ground.coverage, treatedM2, units);
  expectNear(once.areaM2 + twice.areaM2 + missed.areaM2, treatedM2, 1e-9 * treatedM2, 'm²'); // the law; float rounding
  expectNear(once.share + twice.share + missed.share, 1, 1e-12, ''); // the law; float rounding
  for (const { areaM2, share } of [once, twice, missed]) {
    expectNear(areaM2 / areaStepM2(units), Math.round(areaM2 / areaStepM2(units)), 1e-6, 'steps'); // whole steps
    expectNear(share, areaM2 / treatedM2, 0.001 + areaStepM2(units) / treatedM2, ''); // each within a step of its own
  }
});

test('ground thrown outside is not part of the treated ground', () => {
  const { plan } = handMadePlan(THREE_ZONES);
  const outsideOntoM2 = byKind((kind) => (kind === 'bed' ? 4.96 : kind === 'tree' ? 2.04 : 0));
  const coverage = { ...plan.ground.coverage, outsideM2: 7, outsideOntoM2 };
  const shown = coverageFigures(coverage, 700, 'metric');
  expect(shown.outside).toEqual({ areaM2: 7, share: 0.01 }); // 7 m² of 700 m²
  expectNear(
    shown.outsideOnto.reduce((sum, { areaM2 }) => sum + areaM2, 0),
    7,
    1e-9,
    'm²',
  ); // the kinds add up to it
});

test('only where it is walked twice can ground be short of its rate', () => {
  const { coverage } = handMadePlan(THREE_ZONES).plan.ground;
  expect(coverageFigures(coverage, 700, 'metric').short).toBeNull(); // one round
  const { treatedM2 } = coverage;
  const twoRounds = {
    ...coverage,
    onceM2: treatedM2 * 0.7,
    shortM2: treatedM2 * 0.2,
    twiceM2: treatedM2 * 0.1,
    missedM2: 0,
    rounds: [...coverage.rounds, ...coverage.rounds],
  };
  const shown = coverageFigures(twoRounds, 700, 'metric');
  expectNear(shown.short?.areaM2 ?? 0, 140, 1e-6, 'm²'); // a fifth of 700 m²
  expectNear(shown.once.areaM2 + shown.twice.areaM2 + 140, 700, 1e-6, 'm²'); // the whole
});
