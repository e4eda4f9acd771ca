import { expect, test } from 'vitest';
import { leastLoads } from '../../../core/plan/index.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';

const square = (name: string, xM: number, sizeM: number) => ({
  name,
  ring: [
    [xM, 0],
    [xM + sizeM, 0],
    [xM + sizeM, sizeM],
    [xM, sizeM],
  ] as const,
  cutsAtXM: [],
});

function least(loadAreaM2: number): number {
  const { plan } = handMadePlan({
    name: 'Two squares',
    units: 'metric',
    zones: [square('One', 0, 10), square('Two', 20, 5)],
  });
  const { request, resolved } = plan.ground;
  return leastLoads({ request: { ...request, loadAreaM2 }, resolved });
}

test('the least loads are what all the ground fills, zones together', () => {
  // 100 + 25 = 125 m² by hand
  expect(least(60)).toBe(3); // 2.08 loads
  expect(least(62.5)).toBe(2);
  expect(least(125)).toBe(1);
  expect(least(1000)).toBe(1);
});

test('ground on a slope counts by its surface where amounts do', () => {
  const { plan } = handMadePlan({ name: 'Slope', units: 'metric', zones: [square('One', 0, 10)] });
  const { request, resolved } = plan.ground;
  const zones = resolved.zones.map((zone) => ({ ...zone, amountFactor: 1.1 }));
  // 100 m² × 1.1 = 110 m² of surface, by hand
  expect(leastLoads({ request: { ...request, loadAreaM2: 100 }, resolved: { ...resolved, zones } })).toBe(2);
});
