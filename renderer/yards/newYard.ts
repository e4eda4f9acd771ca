import { emptyYard } from '../../core/edits/index.ts';
import type { UnitSystem, Yard } from '../../core/yard.ts';

/**
 * A yard with nothing drawn. It is loose: without a map under it, nothing says where on earth it is.
 *
 * @param groundDate ISO date of the state of the ground, today for a new yard
 */
export function newYard(name: string, groundDate: string, unitSystem: UnitSystem): Yard {
  return emptyYard(name, { kind: 'loose' }, unitSystem, groundDate);
}
