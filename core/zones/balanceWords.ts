import { areaFigure, type UnitSystem } from '../units/index.ts';
import type { PrintedSum } from './printedZones.ts';

/**
 * The balance over all zones in shown figures, which add up to their last digit: "zones as drawn 12,345 − in more
 * than one 123 = ground 12,222 ft² = turf 10,000 + cut out 2,222".
 */
export function balanceWords(all: PrintedSum, units: UnitSystem): string {
  const figure = (areaM2: number): string => areaFigure(areaM2, units).text;
  const { unit } = areaFigure(0, units);
  const ground = `ground ${figure(all.groundM2)} ${unit}`;
  const parts = `turf ${figure(all.turfM2)} + cut out ${figure(all.cutOutM2)}`;
  if (all.ownedByOtherM2 === 0) return `${ground} = ${parts}`;
  return `zones as drawn ${figure(all.grossM2)} − in more than one ${figure(all.ownedByOtherM2)} = ${ground} = ${parts}`;
}
