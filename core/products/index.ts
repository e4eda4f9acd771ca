/**
 * Products: what a label says, put to work. In: a product of the yard document and a ground area; out: the
 * amount it takes, whether rate and carrier are within the label, and the cautions that apply, each with who
 * says so. Method: plain proportion; limits are refused or warned about, never trimmed silently. Out of scope:
 * loads and mixes (`core/applicators`), and anything a label leaves to judgement.
 */
export { type Caution, type CautionMoment, cautionsFor } from './cautions.ts';
export { checkCarrier } from './checkCarrier.ts';
export { checkRate } from './checkRate.ts';
export { productAmountL } from './productAmount.ts';
