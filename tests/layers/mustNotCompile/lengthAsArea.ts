import { productAmountL } from '../../../core/products/index.ts';
import { metres } from '../../../core/units/index.ts';
import type { Product } from '../../../core/yard.ts';

declare const product: Product;

// TS2345: a rate goes over an area, not along a length
productAmountL(product, metres(10));
