import { type Litres, litres, type SquareMetres } from '../units/index.ts';
import type { Product } from '../yard.ts';

/** The product that a piece of ground needs at the product's rate: rate × area. */
export function productAmountL(product: Product, areaM2: SquareMetres): Litres {
  return litres(product.rateLPerM2 * areaM2);
}
