import { productAmountL } from '../products/index.ts';
import { litres, squareMetres } from '../units/index.ts';
import type { Applicator, Product } from '../yard.ts';
import type { LoadMix } from './loadMix.ts';

/** The ground of one load. */
export interface LoadGround {
  readonly id: string;
  /** In the terms amounts are worked out in: the map's area, or the sloping surface. */
  readonly areaM2: number;
}

/**
 * One mix for each section, in the order given.
 *
 * hose-end: the carrier is the water through the hose, and the dial sets product per water: "so many fluid
 * ounces per gallon" times the gallons really put down is the product used (Montana State University
 * MT200015AG). tank: the carrier volume over ground is the whole mix, so the carrier to pour in is what is left
 * of it beside the product.
 */
export function mixLoads(
  sections: readonly LoadGround[],
  product: Product,
  applicator: Applicator,
): LoadMix[] {
  return sections.map((section) => {
    const areaM2 = squareMetres(section.areaM2);
    const productL = productAmountL(product, areaM2);
    const sprayedL = litres(applicator.carrierLPerM2 * areaM2);
    const isTank = applicator.kind === 'tank';
    return {
      sectionId: section.id,
      areaM2,
      productL,
      carrierL: isTank ? Math.max(0, sprayedL - productL) : sprayedL,
      dialRatio: isTank ? null : product.rateLPerM2 / applicator.carrierLPerM2,
    };
  });
}
