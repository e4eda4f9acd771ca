import { expect, test } from 'vitest';
import { applyEdit, emptyYard } from '../../../core/edits/index.ts';
import type { Yard } from '../../../core/yard.ts';
import { resolveZones } from '../../../core/zones/index.ts';
import { giveOverlap } from '../../../renderer/outlines/giveOverlap.ts';
import { outline, rect } from '../../support/builders.ts';

test('shared ground goes to the zone it is given to, there and back, each in one edit', () => {
  const zones = [outline('zone', 'front', rect(0, 0, 20, 10)), outline('zone', 'back', rect(15, 0, 20, 10))];
  let yard: Yard = { ...emptyYard('Yard', { kind: 'loose' }, 'us', '2026-05-01'), outlines: zones };
  const owner = () => {
    const resolved = resolveZones(yard);
    return resolved.ok ? resolved.value.overlaps.map(({ ownerId }) => ownerId) : [];
  };
  expect(owner()).toEqual(['front']); // drawn first
  yard = applyEdit(yard, giveOverlap(yard, 'back', 'front'));
  expect(owner()).toEqual(['back']);
  const backAgain = giveOverlap(yard, 'front', 'back');
  expect(backAgain.label).toBe('give shared ground to front');
  yard = applyEdit(yard, backAgain);
  expect(owner()).toEqual(['front']);
  expect(yard.outlines.map(({ claimsOverlaps }) => claimsOverlaps)).toEqual([true, false]);
});
