import { expect, test } from 'vitest';
import { covarianceOf, sigmaOf, sigmaOfSum } from '../../../core/area/index.ts';
import { partSpreads, resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const ground = groundOf([outline('zone', 'lawn', rect(0, 0, 30, 20))], 0.1);
const cut = { from: { xM: 12, yM: 0 }, to: { xM: 12, yM: 20 } };
const parts = [rect(0, 0, 12, 20), rect(12, 0, 18, 20)].map((ring) => ({
  zoneId: 'lawn',
  region: region(ring),
}));

test('two parts along one cut line gain from each other what they lose', () => {
  const [west, east] = partSpreads(ground, parts, [cut]);
  if (!west || !east) throw new Error('two parts');
  const flags = ({ errors }: typeof west) =>
    errors.filter(({ cause }) => typeof cause !== 'string' && cause.outlineId === null);
  // Both ends of a line 20 m long: 10 m each, 0.1 m sure
  expect(flags(west).map(({ eastM2 }) => Math.abs(eastM2).toFixed(9))).toEqual([
    '1.000000000',
    '1.000000000',
  ]);
  expect(covarianceOf(west, east)).toBeLessThan(0);
});

test('all parts of a zone together are as sure as the zone: where the cut lies makes no ground', () => {
  const resolved = resolveZones(ground);
  const zone = resolved.ok ? resolved.value.zones[0]?.sigmaM2 : undefined;
  const together = sigmaOfSum(partSpreads(ground, parts, [cut]));
  expectNear(together ?? -1, zone ?? -2, 1e-9, 'm²'); // 0.1 √(30² + 20²)
  expectNear(zone ?? -1, 0.1 * Math.sqrt(1300), 1e-9, 'm²'); // σ times the diagonal
});

test('without a cut line a part is bounded by its zone alone', () => {
  const [whole] = partSpreads(ground, [{ zoneId: 'lawn', region: region(rect(0, 0, 30, 20)) }], []);
  expectNear((whole && sigmaOf(whole)) ?? -1, 0.1 * Math.sqrt(1300), 1e-9, 'm²'); // σ times the diagonal
});
