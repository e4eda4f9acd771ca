import { FLUID_OUNCE_L, GALLON_L, THOUSAND_FT2_M2 } from '../../core/units/index.ts';
import type { Applicator, Product } from '../../core/yard.ts';

export type ProductUse = Product['use'];

/** Fluid ounces per 1,000 ft² as the yard document holds them. */
export function flOzPer1000Ft2(flOz: number): number {
  return (flOz * FLUID_OUNCE_L) / THOUSAND_FT2_M2;
}

/** Gallons per 1,000 ft² as the yard document holds them. */
export function galPer1000Ft2(gal: number): number {
  return (gal * GALLON_L) / THOUSAND_FT2_M2;
}

/** An invented iron supplement at 3 fl oz per 1,000 ft², unless changed. */
export function productWith(changes: Partial<Product> = {}): Product {
  return {
    id: 'p1',
    name: 'Meadow Iron',
    use: 'fertilizer',
    rateLPerM2: flOzPer1000Ft2(3),
    mostRateLPerM2: null,
    leastCarrierLPerM2: null,
    ...changes,
  };
}

/** An invented 4 gal tank sprayer at 1.25 gal per 1,000 ft², unless changed. */
export function applicatorWith(changes: Partial<Applicator> = {}): Applicator {
  return {
    id: 'a1',
    name: 'Back tank',
    kind: 'tank',
    capacityL: 4 * GALLON_L,
    carrierLPerM2: galPer1000Ft2(1.25),
    swathM: 1.5,
    paceMPerS: 0.8,
    stepM: 0.7,
    ...changes,
  };
}
