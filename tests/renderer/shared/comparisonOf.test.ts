import { expect, test } from 'vitest';
import { regionsAreaM2 } from '../../../core/kernel/index.ts';
import { emptyYard } from '../../../core/edits/index.ts';
import type { Outline, Yard } from '../../../core/yard.ts';
import { comparisonOf, groundToDraw } from '../../../renderer/shared/comparisonOf.ts';
import { outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

function yardOf(...outlines: readonly Outline[]): Yard {
  return { ...emptyYard('Yard', { kind: 'loose' }, 'us', '2026-05-01'), outlines };
}

const LAWN = outline('zone', 'Lawn', rect(0, 0, 10, 10));
const BEFORE = yardOf(LAWN);
const AFTER = yardOf(LAWN, outline('bed', 'Bed', rect(1, 1, 2, 3)));

test('the same two states are worked out once', () => {
  expect(comparisonOf(BEFORE, AFTER)).toBe(comparisonOf(BEFORE, AFTER));
  expect(comparisonOf(AFTER, BEFORE)).not.toBe(comparisonOf(BEFORE, AFTER));
});

test('what is drawn is what was asked for: turf that is lost, or the bed that took it', () => {
  const comparison = comparisonOf(BEFORE, AFTER);
  if (!comparison.ok) throw new Error('not compared');
  const turf = groundToDraw(comparison.value, 'turf');
  expectNear(regionsAreaM2(turf.lost), 6, 1e-4, 'm²'); // 2 * 3
  expect(turf.gained).toEqual([]);
  const bed = groundToDraw(comparison.value, 'bed');
  expectNear(regionsAreaM2(bed.gained), 6, 1e-4, 'm²'); // 2 * 3
  expect(groundToDraw(comparison.value, 'water')).toEqual({ lost: [], gained: [] });
});
