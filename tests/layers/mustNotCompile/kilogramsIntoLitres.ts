import { kilograms, type Litres } from '../../../core/units/index.ts';

// TS2322: a mass does not stand for a volume
export const mixL: Litres = kilograms(1);
