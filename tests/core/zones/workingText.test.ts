import { expect, test } from 'vitest';
import { areaWorking, resolveZones, twiceWords, workingText } from '../../../core/zones/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';

const yard = yardOf({
  outlines: [outline('zone', 'lawn', rect(0, 0, 20, 10)), outline('bed', 'rose', rect(4, 2, 4, 4))],
});
const metric = { ...yard, details: { ...yard.details, unitSystem: 'metric' as const, cornerSigmaM: null } };

test('the copied working holds corners, products, sums and the balance in lines that can be checked', () => {
  const resolved = resolveZones(metric);
  if (!resolved.ok) throw new Error('the yard does not resolve');
  const working = areaWorking(resolved.value, metric, 'lawn');
  if (working === undefined) throw new Error('no working');
  const lines = workingText(working)
    .split('\n')
    .map((line) => line.replace(/\s+/g, ' ').trim());
  expect(lines).toContain('3 20.00 10.00 200.0000 0.0000'); // corner 3 to 4: 20 × 10 and 0 × 10
  expect(lines).toContain('sum 400.0000 0.0000'); // 20 × 10 twice, from corners 2 and 3
  expect(lines).toContain('1/2 × (400.0000 - 0.0000) = 200.00000 m²'); // 20 × 10
  expect(lines).toContain('rose 16.000 16.000'); // 4 × 4
  expect(lines).toContain('treated 184.000 184.0'); // 200 - 16
  // cornerSigmaM is null above
  expect(lines).toContain('± not stated: nothing says how well the corners of lawn, rose were placed');
});

test('the line under what is taken says whether ground is shared or only digits are', () => {
  const shape = { name: 'bed', kind: 'bed', ownArea: 1, takes: 1 } as const;
  const taken = (countedTwice: number) => ({ shapes: [shape, shape], countedTwice, together: 2 });
  // Two rows and their sum, half a last digit each: 1.5 of them at most.
  expect(twiceWords(taken(0.01), 'us')).toBe('rounding of the rows above'); // 1 of 0.01
  expect(twiceWords(taken(-0.001), 'metric')).toBe('rounding of the rows above'); // 1 of 0.001
  expect(twiceWords(taken(0.02), 'us')).toBe('ground under two of them, counted once'); // 2 of 0.01
});
