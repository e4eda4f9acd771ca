import { straight } from '../../../core/curves/index.ts';
import { newOutline } from '../../../core/edits/index.ts';
import { describe, expect, test } from 'vitest';
import { cautionsFor } from '../../../core/products/index.ts';
import type { Applicator, Outline, Product, Yard } from '../../../core/yard.ts';
import { applicatorWith, galPer1000Ft2, productWith } from '../../support/products.ts';

const POND = newOutline({
  id: 'o1',
  kind: 'water',
  name: 'Pond',
  outer: straight([
    { xM: 0, yM: 0 },
    { xM: 3, yM: 0 },
    { xM: 3, yM: 3 },
  ]),
});

function yardWith(...outlines: readonly Outline[]): Yard {
  const frame = { kind: 'loose' } as const;
  return {
    details: {
      id: 'yard',
      name: 'Test yard',
      groundDate: '2026-05-12',
      unitSystem: 'us',
      frame,
      cornerSigmaM: null,
      overlapRule: 'drawn-first',
      amountsBy: 'plan',
    },
    pictures: [],
    outlines,
    marks: [],
    elevations: [],
    checks: [],
    products: [],
    applicators: [],
    jobs: [],
  };
}

const idsFor = (product: Partial<Product>, applicator: Partial<Applicator>, yard = yardWith()): string[] =>
  cautionsFor(productWith(product), applicatorWith(applicator), yard).map((caution) => caution.id);

describe('cautions', () => {
  test('the label comes first for every product, as law for a pesticide', () => {
    expect(idsFor({ use: 'pesticide' }, {})[0]).toBe('label');
    expect(idsFor({ use: 'fertilizer' }, {})[0]).toBe('label-rate');
    expect(idsFor({ use: 'other' }, {})[0]).toBe('label-rate');
  });

  test('a hose-end sprayer needs a vacuum breaker and a tank does not', () => {
    expect(idsFor({}, { kind: 'hose-end' })).toContain('vacuum-breaker');
    expect(idsFor({}, { kind: 'tank' })).not.toContain('vacuum-breaker');
  });

  test('water is spoken of only where the yard has some', () => {
    expect(idsFor({}, {}, yardWith(POND))).toContain('water');
    expect(idsFor({}, {}, yardWith({ ...POND, kind: 'bed' }))).not.toContain('water');
  });

  test('gloves, wind and licence go with pesticides, rain and closed seasons with fertilizers', () => {
    expect(idsFor({ use: 'pesticide' }, {})).toEqual(['label', 'licence', 'gloves', 'wind', 'off-until-dry']);
    expect(idsFor({ use: 'fertilizer' }, {})).toEqual(['label-rate', 'local-dates', 'rain', 'off-until-dry']);
  });

  test('a strong mix is spoken of below the usual gallon per 1,000 ft² only', () => {
    expect(idsFor({}, { carrierLPerM2: galPer1000Ft2(0.5) })).toContain('low-volume'); // UF/IFAS PI-225: 1–5 is usual
    expect(idsFor({}, { carrierLPerM2: galPer1000Ft2(1) })).not.toContain('low-volume'); // the same
  });

  test('are never shown all at once, come in the order of the work, and each says who says so', () => {
    const moments = ['plan', 'mix', 'spray', 'after'];
    for (const use of ['fertilizer', 'pesticide', 'other'] as const) {
      for (const kind of ['hose-end', 'tank'] as const) {
        const cautions = cautionsFor(productWith({ use }), applicatorWith({ kind }), yardWith(POND));
        expect(cautions.length).toBeLessThan(9); // of 11 there are
        const order = cautions.map((caution) => moments.indexOf(caution.moment));
        expect(order).toEqual([...order].sort((a, b) => a - b));
        for (const caution of cautions) {
          expect(caution.source.length).toBeGreaterThan(10);
          expect(caution.text).toMatch(/^[A-Z][^!]*\.$/);
        }
      }
    }
  });
});
