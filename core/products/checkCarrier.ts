import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import { GALLON_L, THOUSAND_FT2_M2 } from '../units/index.ts';
import type { Product } from '../yard.ts';

/**
 * The carrier volumes lawn labels span: 0.1 to 5 gal per 1,000 ft². A number outside is more likely a slip of
 * the unit than a calibration. Source: label example in UF/IFAS PI-225 (0.1–5.0); 1–5 is usual.
 */
const USUAL_LEAST_L_PER_M2 = (0.1 * GALLON_L) / THOUSAND_FT2_M2;
const USUAL_MOST_L_PER_M2 = (5 * GALLON_L) / THOUSAND_FT2_M2;

/** A volume and a limit typed in different units may differ by the rounding of their conversion. */
const SAME_VOLUME = 1e-9;

/**
 * Whether the applicator puts down as much carrier as the product's label asks for, and a likely volume at all.
 *
 * @param applicatorName names the field in what is said
 * @returns what to tell the person all the same: too little carrier for anything but a pesticide, or a volume
 * no lawn label spans
 * Problems: value/carrier-under-label for a pesticide (a direction of its label, like its rate)
 */
export function checkCarrier(
  product: Product,
  carrierLPerM2: number,
  applicatorName: string,
): Result<readonly Problem[]> {
  const where = { field: `Carrier volume of ${applicatorName}` };
  const warnings: Problem[] = [];
  const leastCarrierLPerM2 = product.leastCarrierLPerM2;
  if (leastCarrierLPerM2 !== null && carrierLPerM2 < leastCarrierLPerM2 * (1 - SAME_VOLUME)) {
    const under: Problem = {
      kind: 'value/carrier-under-label',
      where,
      facts: { carrierLPerM2, leastCarrierLPerM2 },
    };
    if (product.use === 'pesticide') return trouble(under);
    warnings.push(under);
  }
  if (
    carrierLPerM2 < USUAL_LEAST_L_PER_M2 * (1 - SAME_VOLUME) ||
    carrierLPerM2 > USUAL_MOST_L_PER_M2 * (1 + SAME_VOLUME)
  ) {
    const facts = { carrierLPerM2, leastLPerM2: USUAL_LEAST_L_PER_M2, mostLPerM2: USUAL_MOST_L_PER_M2 };
    warnings.push({ kind: 'value/carrier-unusual', where, facts });
  }
  return ok(warnings);
}
