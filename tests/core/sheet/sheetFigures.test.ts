import { describe, expect, test } from 'vitest';
import { sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { areaStepM2 } from '../../../core/units/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { inOneLoad, onASlope } from '../../support/sheetContexts.ts';
import { LONG_STRIP, NINE_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';

test('the sigma of all zones together is the root of the sum of squares', () => {
  const { plan } = handMadePlan(THREE_ZONES);
  const sigmas = plan.ground.resolved.zones.map((zone) => zone.sigmaM2 ?? Number.NaN);
  const expected = Math.sqrt(sigmas.reduce((sum, sigma) => sum + sigma * sigma, 0)); // variances of independent errors add
  expectNear(sheetFigures(plan, 'us').zoneSum.sigmaM2 ?? Number.NaN, expected, 1e-9, 'm²');
});

test('one zone without a stated sigma leaves the total without one', () => {
  const zones = THREE_ZONES.zones.map((zone, i) => (i === 1 ? { ...zone, sigmaM2: null } : zone));
  expect(sheetFigures(handMadePlan({ ...THREE_ZONES, zones }).plan, 'us').zoneSum.sigmaM2).toBeNull();
});

test('all loads are printed in one unit, the one the largest is measured in', () => {
  const figures = sheetFigures(handMadePlan(NINE_SECTIONS).plan, 'us');
  expect([figures.productUnit, figures.carrierUnit]).toEqual(['fl oz', 'gal']);
  expect(sheetFigures(handMadePlan(LONG_STRIP).plan, 'metric').productUnit).toBe('mL');
});

test('loads keep the order and the sections of the mixes', () => {
  const { plan } = handMadePlan(NINE_SECTIONS);
  const figures = sheetFigures(plan, 'us');
  expect(figures.loads.map((load) => load.section.id)).toEqual(plan.mixes.map((mix) => mix.sectionId));
  expect(figures.loads.map((load) => load.load)).toEqual(plan.mixes.map((_, i) => i + 1));
});

test('only zones the job treats are in the schedule', () => {
  const { plan } = handMadePlan(THREE_ZONES);
  const sections = plan.ground.sections.filter((section) => section.zoneName !== 'Front lawn');
  const names = sheetFigures({ ...plan, ground: { ...plan.ground, sections } }, 'us').zones.map(
    (zone) => zone.name,
  );
  expect(names).toEqual(['Back lawn', 'West side']); // the fixture's zones without the one left out
});

test('areas are stepped by whole square feet or tenths of a square metre', () => {
  expect(areaStepM2('us')).toBe(0.09290304); // 0.3048² m², the international foot
  expect(areaStepM2('metric')).toBe(0.1);
});

test('loads add up to what amounts are worked out from, on a slope too', () => {
  const { plan } = handMadePlan(THREE_ZONES);
  const level = sheetFigures(plan, 'us');
  expect(level.isMixedBySurface).toBe(false); // nothing slopes
  expect(level.loads.map((load) => load.mixedM2)).toEqual(level.loads.map((load) => load.areaM2)); // level
  const bank = sheetFigures(onASlope(plan, 1.25), 'us');
  expect(bank.isMixedBySurface).toBe(true); // all zones slope, and amounts are by it
  const mixed = bank.loads.reduce((sum, load) => sum + load.mixedM2, 0);
  expectNear(mixed, bank.zoneSum.amountsM2, 1e-9, 'm²'); // to the last digit shown
  expectNear(mixed, bank.zoneSum.treatedM2 * 1.25, 3 * areaStepM2('us'), 'm²'); // three zones, each to its own step
});

describe('fills', () => {
  const { plan } = handMadePlan(THREE_ZONES);

  test('are one a section where none share', () => {
    const { fills, loads } = sheetFigures(plan, 'us');
    expect(fills.map(({ number, productL, mixedM2 }) => [number, productL, mixedM2])).toEqual(
      loads.map(({ load, productL, mixedM2 }) => [load, productL, mixedM2]),
    );
    expect(fills.map(({ productSigmaL }) => productSigmaL)).toEqual(loads.map((load) => load.productSigmaL));
  });

  test.each(['us', 'metric'] as const)(
    'of several sections are the sum of them as printed, in %s',
    (units) => {
      const shared = sheetFigures(inOneLoad(plan, 'B1', 'C1'), units);
      expect(shared.fills.length).toBe(4); // five sections, two of them together
      const both = shared.fills.find(({ parts }) => parts.length === 2);
      const [b1, c1] = both?.parts ?? [];
      expect(both?.number).toBe(4); // after the three of zone A
      expect([b1?.section.id, c1?.section.id]).toEqual(['B1', 'C1']);
      expect(both?.productL).toBe((b1?.productL ?? 0) + (c1?.productL ?? 0));
      const allL = shared.fills.reduce((sum, { productL }) => sum + productL, 0);
      expectNear(allL, shared.productTotalL, 1e-12, 'L'); // to the last digit shown
      const carrierL = shared.fills.reduce((sum, fill) => sum + fill.carrierL, 0);
      expectNear(carrierL, shared.carrierTotalL, 1e-9, 'L');
      const variance = ((b1?.productSigmaL ?? 0) ** 2 + (c1?.productSigmaL ?? 0) ** 2) ** 0.5;
      expectNear(both?.productSigmaL ?? 0, variance, 1e-9, 'L'); // errors of two zones: variances add
    },
  );
});
