import { productAmountL } from '../../../core/products/index.ts';
import type { Product } from '../../../core/yard.ts';

declare const product: Product;

// TS2345: an amount is worked out from square metres that say so, not from a number of who knows what
productAmountL(product, 1000);
