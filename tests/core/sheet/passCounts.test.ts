import { expect, test } from 'vitest';
import { passCounts } from '../../../core/sheet/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { LONG_STRIP, NINE_SECTIONS } from '../../support/handMadeYards.ts';
import { contextOf } from '../../support/sheetContexts.ts';

test('a pass takes its length over the pace, and its length over a step', () => {
  const { plan, figures } = contextOf(NINE_SECTIONS);
  const request = { ...plan.ground.request, paceMPerS: 0.5, stepM: 0.8 };
  const slow = { ...plan, ground: { ...plan.ground, request } };
  const { passes } = passCounts(slow, figures, 'hose-end', 1, 'us');
  const [first] = passes;
  const lengthM = first?.pass.lengthM ?? 0;
  expect(lengthM).toBeGreaterThan(0); // there is one
  expectNear(first?.timeS ?? 0, lengthM / 0.5, 1e-9, 's'); // length over pace
  expect(first?.steps).toBe(Math.round(lengthM / 0.8)); // whole steps of 0.8 m
});

test('what is left falls with the way walked to nothing', () => {
  const { plan, figures } = contextOf(NINE_SECTIONS);
  const { passes, unit } = passCounts(plan, figures, 'hose-end', 1, 'us');
  const filledL = figures.loads[0]?.productL ?? 0;
  const wholeM = passes.reduce((sum, { pass }) => sum + pass.lengthM, 0);
  const [first] = passes;
  expectNear(first?.leftL ?? 0, filledL * (1 - (first?.pass.lengthM ?? 0) / wholeM), 1e-12, 'L'); // by proportion
  expect(passes.at(-1)?.leftL).toBe(0); // the load is for its passes
  expect(unit).toBe(figures.productUnit); // a bottle of product
});

test('a tank is read by its whole mix', () => {
  const { plan, figures } = contextOf(LONG_STRIP);
  const { passes } = passCounts(plan, figures, 'tank', 1, 'metric');
  const filledL = (figures.loads[0]?.productL ?? 0) + (figures.loads[0]?.carrierL ?? 0);
  expectNear(passes[0]?.leftL ?? 0, filledL / 2, 1e-9, 'L'); // two equal lanes
});

test('a load that sections share runs on from one to the next', () => {
  const { plan, figures } = contextOf(NINE_SECTIONS);
  const loads = figures.loads.map((part, place) => ({ ...part, load: place < 2 ? 1 : place }));
  const { passes } = passCounts(plan, { ...figures, loads }, 'hose-end', 1, 'us');
  expect(new Set(passes.map(({ pass }) => pass.sectionId)).size).toBe(2); // both sections
  const lastOfFirst = passes.findLast(({ pass }) => pass.sectionId === passes[0]?.pass.sectionId);
  expect(lastOfFirst?.leftL).toBe(figures.loads[1]?.productL); // what the second one needs
  expect(passes.at(-1)?.leftL).toBe(0); // nothing after the last
});
