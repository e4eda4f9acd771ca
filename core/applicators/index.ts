/**
 * Applicators: what one fill covers and what goes into it. In: a product, an applicator and the areas of the
 * sections; out: the area of a load and a mix for each section. Method: plain proportion, under two conventions: a
 * hose-end bottle holds undiluted product and the hose brings the carrier; a tank holds the whole mix, and its carrier
 * volume over ground is the whole mix too. Out of scope: which ground makes a section (`core/sections`), label limits
 * (`core/products`), calibrating.
 */
export { checkApplicator } from './checkApplicator.ts';
export { loadAreaM2 } from './loadArea.ts';
export { LOAD_SLACK, loadsFor } from './loadsFor.ts';
export type { LoadMix } from './loadMix.ts';
export { type LoadGround, mixLoads } from './mixLoads.ts';
export { USUAL_STEP_M } from './usualStep.ts';
