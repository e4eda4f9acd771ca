import { type SquareMetres, squareMetres } from '../units/index.ts';
import type { Applicator, Product } from '../yard.ts';

/**
 * The treated area one load covers. A hose-end bottle holds undiluted product, so it lasts for capacity ÷ rate.
 * A tank holds the whole mix, and a carrier volume over ground means all that is sprayed, product included, so
 * it lasts for capacity ÷ carrier volume: the convention of sprayer calibration, where what is caught is mix.
 */
export function loadAreaM2(product: Product, applicator: Applicator): SquareMetres {
  const sprayedLPerM2 = applicator.kind === 'tank' ? applicator.carrierLPerM2 : product.rateLPerM2;
  return squareMetres(applicator.capacityL / sprayedLPerM2);
}
