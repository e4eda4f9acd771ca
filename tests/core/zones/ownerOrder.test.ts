import { expect, test } from 'vitest';
import type { OverlapRule } from '../../../core/yard.ts';
import { ownerOrder } from '../../../core/zones/ownerOrder.ts';
import { shapeOf } from '../../../core/zones/shape.ts';
import { outline, rect } from '../../support/builders.ts';

const middle = outline('zone', 'middle', rect(0, 0, 10, 5)); // 50 m²
const large = outline('zone', 'large', rect(0, 0, 10, 9)); // 90 m²
const small = outline('zone', 'small', rect(0, 0, 2, 5)); // 10 m²

function order(rule: OverlapRule, ...claimers: readonly string[]): readonly string[] {
  const zones = [middle, large, small].map((zone) => ({
    ...zone,
    claimsOverlaps: claimers.includes(zone.id),
  }));
  return ownerOrder(zones.map(shapeOf), rule).map(({ outline: { id } }) => id);
}

test.each([
  ['drawn-first', ['middle', 'large', 'small']],
  ['drawn-last', ['small', 'large', 'middle']],
  ['smaller', ['small', 'middle', 'large']],
  ['larger', ['large', 'middle', 'small']],
] as const)('%s', (rule, expected) => {
  expect(order(rule)).toEqual(expected); // by the areas noted above
});

test('who claims goes before all others; several by the rule among themselves', () => {
  expect(order('drawn-first', 'small')).toEqual(['small', 'middle', 'large']);
  expect(order('larger', 'small', 'middle')).toEqual(['middle', 'small', 'large']);
});

test('zones of one size go in the order they were drawn, under either rule, however they lie', () => {
  // Two copies of one zone far apart: their areas differ in the last bits.
  const ring = (at: number) => rect(at + 0.1, at + 0.7, 3.3, 7.1);
  const zones = [1000, 0, 300].map((at) => shapeOf(outline('zone', `${at}`, ring(at))));
  for (const rule of ['smaller', 'larger'] as const) expect(ownerOrder(zones, rule)).toEqual(zones);
});
