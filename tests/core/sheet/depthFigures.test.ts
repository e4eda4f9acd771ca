import { expect, test } from 'vitest';
import { coverageFigures, depthFigures, depthWords } from '../../../core/sheet/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';

const { coverage } = handMadePlan(THREE_ZONES).plan.ground;
/** 100 m²: 60 once, 20.15 twice, 4.45 three times, 4.35 more often, the rest missed. */
const ONE_ROUND = {
  ...coverage,
  treatedM2: 100,
  onceM2: 60,
  shortM2: 0,
  twiceM2: 28.95,
  missedM2: 11.05,
  depthsM2: [11.05, 60, 20.15, 4.45, 4.35],
};

test('ground above the rate is told apart and still adds up to what is shown of it', () => {
  const shown = coverageFigures(ONE_ROUND, 100, 'metric');
  const depths = depthFigures(ONE_ROUND, shown, 'metric');
  expect([depths[0], depths[1]]).toEqual([shown.missed, shown.once]); // the same rows
  expectNear(depths[2].areaM2 + depths[3].areaM2, shown.twice.areaM2, 1e-9, 'm²'); // the law; float rounding
  expectNear(depths[2].share + depths[3].share, shown.twice.share, 1e-12, ''); // the law; float rounding
  expectNear(depths[2].areaM2, 20.15, 0.1, 'm²'); // within a step of its own value
  expectNear(depths[3].areaM2, 4.45 + 4.35, 0.1, 'm²'); // three times and more often, within a step
});

test('ground nowhere covered twice shows nought for both', () => {
  const once = { ...ONE_ROUND, onceM2: 88.95, twiceM2: 0, depthsM2: [11.05, 88.95, 0, 0, 0] };
  const depths = depthFigures(once, coverageFigures(once, 100, 'metric'), 'metric');
  expect([depths[2], depths[3]]).toEqual([
    { areaM2: 0, share: 0 }, // nothing lies there
    { areaM2: 0, share: 0 },
  ]);
});

test('where it is walked twice the depths are the rows of the rate', () => {
  const both = { ...ONE_ROUND, rounds: [...coverage.rounds, ...coverage.rounds] };
  const shown = coverageFigures({ ...both, onceM2: 20.15, shortM2: 60, twiceM2: 8.8 }, 100, 'metric');
  const depths = depthFigures(both, shown, 'metric');
  expect(depths).toEqual({ 0: shown.missed, 1: shown.short, 2: shown.once, 3: shown.twice }); // by definition of a round
  expect(depthWords(2)[2]).toContain('whole rate'); // two halves
  expect(depthWords(1)[1]).toBe('once'); // one round
});
