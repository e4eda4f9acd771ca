import { GALLON_L, THOUSAND_FT2_M2 } from '../units/index.ts';
import type { Applicator, Product, Yard } from '../yard.ts';

/** When a caution is of use: while planning, while mixing, on the lawn, or once it is done. */
export type CautionMoment = 'plan' | 'mix' | 'spray' | 'after';

/** One thing to mind, in plain words, and who says so. */
export interface Caution {
  readonly id: string;
  readonly moment: CautionMoment;
  readonly text: string;
  readonly source: string;
}

interface CautionRule extends Caution {
  applies(product: Product, applicator: Applicator, yard: Yard): boolean;
}

/** Below this the mix is strong: lawn labels usually ask for 1 to 5 gal per 1,000 ft² (UF/IFAS PI-225). */
const LOW_CARRIER_L_PER_M2 = GALLON_L / THOUSAND_FT2_M2;

const always = () => true;
const isFertilizer = (product: Product) => product.use === 'fertilizer';
/** What a product of other use is we do not know, so it is handled like a pesticide. */
const maybePesticide = (product: Product) => product.use !== 'fertilizer';

const RULES: readonly CautionRule[] = [
  {
    id: 'label',
    moment: 'plan',
    text: 'The label governs every number here. Using a product against its label is a violation of federal law.',
    source: 'US EPA, Introduction to Pesticide Labels; FIFRA § 12(a)(2)(G), 7 U.S.C. 136j',
    applies: (product) => product.use === 'pesticide',
  },
  {
    id: 'label-rate',
    moment: 'plan',
    text: 'The label governs every number here: where it says otherwise, follow the label.',
    source: 'Michigan State University Extension, safety tips for lawn products',
    applies: (product) => product.use !== 'pesticide',
  },
  {
    id: 'licence',
    moment: 'plan',
    text: 'Spraying for hire needs a state licence, usually for general-use products too. Check your state and local rules.',
    source: 'Ohio State Extension; Kansas and Oregon Departments of Agriculture',
    applies: (product) => product.use === 'pesticide',
  },
  {
    id: 'local-dates',
    moment: 'plan',
    text: 'Many places bar lawn fertilizer for part of the year or cap it. Check your state and local rules.',
    source: 'Maryland Code, Agriculture § 8-803.5; New Jersey Statutes 58:10A-62',
    applies: isFertilizer,
  },
  {
    id: 'water',
    moment: 'plan',
    text: 'There is water in this yard. Keep well back from its edge: states ask for 10 to 25 ft (3 to 8 m), the label or a local rule may ask for more. Give the water that width to keep off, or draw the strip.',
    source: 'Maryland Code, Agriculture § 8-803.5; Rutgers NJAES on the New Jersey buffers',
    applies: (_product, _applicator, yard) => yard.outlines.some((outline) => outline.kind === 'water'),
  },
  {
    id: 'gloves',
    moment: 'mix',
    text: 'Wear waterproof or chemical-resistant gloves, not cotton or leather.',
    source: 'Michigan State University Extension, safety tips for lawn products',
    applies: maybePesticide,
  },
  {
    id: 'vacuum-breaker',
    moment: 'mix',
    text: 'Fit a vacuum breaker at the spigot, and never leave the end of the hose under water: a drop in pressure can draw product into the house supply.',
    source: 'University of Florida (Smajstrla), on backflow prevention',
    applies: (_product, applicator) => applicator.kind === 'hose-end',
  },
  {
    id: 'low-volume',
    moment: 'mix',
    text: 'So little water makes a strong mix that can burn the grass. Walking slower puts down more.',
    source: 'Colorado State University, CEPEP fact sheet 204',
    // No carrier at all is a plan without a sprayer, not a strong mix.
    applies: (_product, { carrierLPerM2 }) => carrierLPerM2 > 0 && carrierLPerM2 < LOW_CARRIER_L_PER_M2,
  },
  {
    id: 'wind',
    moment: 'spray',
    text: 'If the label is silent: spray in a wind of 3 to 8 mph (1.3 to 3.6 m/s) that blows away from people, water and garden beds. Dead calm is no better.',
    source: 'North Carolina Cooperative Extension, Pesticide Environmental Stewardship: drift',
    applies: maybePesticide,
  },
  {
    id: 'rain',
    moment: 'spray',
    text: 'Not before or during heavy rain, nor on soaked or frozen ground.',
    source: 'New Jersey Statutes 58:10A-62',
    applies: isFertilizer,
  },
  {
    id: 'off-until-dry',
    moment: 'after',
    text: 'Take toys and pet dishes in before you start, and keep people and pets off until the lawn is dry, or longer if the label says so.',
    source: 'National Pesticide Information Center, minimizing exposure; Michigan State University Extension',
    applies: always,
  },
];

/** The cautions that apply to this product from this applicator in this yard, in the order of the work. */
export function cautionsFor(product: Product, applicator: Applicator, yard: Yard): Caution[] {
  return RULES.filter((rule) => rule.applies(product, applicator, yard)).map(
    ({ id, moment, text, source }) => ({ id, moment, text, source }),
  );
}
