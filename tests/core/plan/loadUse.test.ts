import { expect, test } from 'vitest';
import { loadUses } from '../../../core/plan/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS } from '../../support/handMadeYards.ts';

const { ground } = handMadePlan(NINE_SECTIONS).plan;

test('a load is held against the length of its passes times the swath', () => {
  const uses = loadUses(ground);
  expect(uses.length).toBe(ground.loads.length); // one for each load
  const passes = ground.passes.filter(({ sectionId }) => sectionId === ground.loads[0]?.sectionIds[0]);
  const lengthM = passes.reduce((sum, pass) => sum + pass.lengthM, 0);
  const areaM2 = ground.sections[0]?.areaM2 ?? 0;
  expectNear(uses[0]?.sweptM2 ?? 0, lengthM * ground.request.swathM, 1e-9, 'm²'); // length times swath
  expectNear(uses[0]?.ratio ?? 0, (lengthM * ground.request.swathM) / areaM2, 1e-12, ''); // swept over mixed
});

test('walked at the lasting pace the load is empty as the last pass ends', () => {
  const { swathM, paceMPerS } = ground.request;
  for (const use of loadUses(ground)) {
    const lastsS = use.mixedM2 / (paceMPerS * swathM); // mix over what is let out a second
    const walkS = use.sweptM2 / swathM / use.lastingPaceMPerS; // length over pace
    expectNear(walkS, lastsS, 1e-9 * lastsS, 's'); // the law
  }
});

test('sections that share a load are held against it together, and half a rate counts half', () => {
  const [first, second] = ground.coverage.sections;
  const loads = [{ number: 1, sectionIds: [first?.sectionId ?? '', second?.sectionId ?? ''], areaM2: 1 }];
  const [use] = loadUses({ ...ground, loads, request: { ...ground.request, rounds: 2 } });
  const sweptM2 = (first?.sweptM2 ?? 0) + (second?.sweptM2 ?? 0);
  expectNear(use?.sweptM2 ?? 0, sweptM2 / 2, 1e-9, 'm²'); // half of both
  expectNear(use?.mixedM2 ?? 0, (first?.treatedM2 ?? 0) + (second?.treatedM2 ?? 0), 1e-9, 'm²'); // both
});
