/**
 * Area: how sure an area is. In: regions and how well their corners are placed; out: a standard deviation.
 * Method: first-order propagation through the coordinate area formula. Plain areas are `core/kernel`'s.
 * Out of scope: scale errors of a picture, slope.
 */
export { areaSigmaM2 } from './areaSigma.ts';
