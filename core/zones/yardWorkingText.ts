import type { Yard } from '../yard.ts';
import { areaWorking } from './areaWorking.ts';
import { outlineText, outlineWorking } from './outlineWorking.ts';
import type { ResolvedYard } from './resolved.ts';
import { workingText } from './workingText.ts';

/**
 * The working of every area of a yard as plain text: the zones, each down to what is treated, then every other
 * outline's own area; the same texts as the window copies.
 *
 * @param resolved of this very yard
 */
export function yardWorkingText(resolved: ResolvedYard, yard: Yard): string {
  const zones = resolved.zones.flatMap(({ zoneId }) => {
    const working = areaWorking(resolved, yard, zoneId);
    return working === undefined ? [] : [workingText(working)];
  });
  const others = yard.outlines
    .filter(({ kind }) => kind !== 'zone')
    .map((outline) => outlineText(outlineWorking(outline, yard.details)));
  return [...zones, ...others].join('\n');
}
