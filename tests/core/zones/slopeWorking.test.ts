import { expect, test } from 'vitest';
import { resolveZones } from '../../../core/zones/index.ts';
import { slopeWords, slopeWorking } from '../../../core/zones/slopeWorking.ts';
import { groundOf, outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

function workingOf(grade: number | null, amountsBy: 'plan' | 'surface' = 'plan') {
  const lawn = {
    ...outline('zone', 'Bank', rect(0, 0, 20, 10)),
    slope: grade === null ? null : ({ kind: 'grade', grade } as const),
  };
  const ground = groundOf([lawn]);
  const resolved = resolveZones({ ...ground, details: { ...ground.details, amountsBy } });
  const zone = resolved.ok ? resolved.value.zones[0] : undefined;
  if (zone === undefined) throw new Error('the yard does not resolve');
  return slopeWorking(zone, lawn, 200);
}

test('map × factor = surface on a bank of three in four', () => {
  const slope = workingOf(0.75);
  expectNear(slope?.factor ?? Number.NaN, 1.25, 1e-12, ''); // √(1 + 0.75²)
  expectNear(slope?.surfaceArea ?? Number.NaN, 250, 1e-9, 'm²'); // 200 * 1.25
  expect(slope === null ? [] : slopeWords(slope, 'metric')).toEqual([
    'surface over map at a grade of 0.75: √(1 + 0.75²) = 1.250000', // √1.5625
    'treated on the map 200.000 × 1.250000 = 250.000 m² of surface; amounts are taken from the map', // 200 * 1.25
  ]);
});

test('it says when amounts are taken from the surface', () => {
  const slope = workingOf(0.75, 'surface');
  expect(slope === null ? '' : slopeWords(slope, 'metric').join()).toContain('taken from the surface');
});

test('of level ground there is nothing to say', () => {
  expect(workingOf(null)).toBeNull();
  expect(workingOf(0)).toBeNull();
});
