import { expect, test } from 'vitest';
import { balanceWords, printedSum, printedZones, resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, rect } from '../../support/builders.ts';

function words(...zones: readonly (readonly [number, number, number, number])[]): string {
  const drawn = zones.map((box, i) => outline('zone', `${i}`, rect(...box)));
  const resolved = resolveZones(groundOf([...drawn, outline('bed', 'bed', rect(1, 1, 2, 2))]));
  if (!resolved.ok) throw new Error('refused');
  return balanceWords(printedSum(printedZones(resolved.value, 'metric')), 'metric');
}

test('one lawn: its turf and what is cut out of it', () => {
  expect(words([0, 0, 20, 10])).toBe('ground 200.0 m² = turf 196.0 + cut out 4.0'); // 20 * 10 less 2 * 2
});

test('two that share ground: as drawn, less what is in both', () => {
  expect(words([0, 0, 20, 10], [15, 0, 20, 10])).toBe(
    'zones as drawn 400.0 − in more than one 50.0 = ground 350.0 m² = turf 346.0 + cut out 4.0', // 5 * 10 in both
  );
});
