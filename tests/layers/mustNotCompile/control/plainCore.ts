import { regionAreaM2 } from '../../../../core/kernel/index.ts';
import { metres } from '../../../../core/units/index.ts';

// Allowed, every line of it: were this refused, the cases beside it would prove nothing.
export const areaM2 = regionAreaM2({ outer: [], holes: [] });
export const lengthM = metres(Math.sqrt(areaM2));
