import { kilograms, litres, totalL } from '../../../core/units/index.ts';

// TS2322: a mass does not add up with a volume
totalL([litres(1), kilograms(1)]);
