import type { ShownVolumeUnit } from './formatAmounts.ts';
import type { AreaUnit, LengthUnit, RateUnit, SpeedUnit } from './unitTables.ts';
import type { UnitSystem } from './unitSystem.ts';

/** The unit a bare number is in, for each kind of field: the same in which the formatters print it. */
export interface UsualUnits {
  readonly length: LengthUnit;
  readonly area: AreaUnit;
  readonly speed: SpeedUnit;
  readonly rate: RateUnit;
  readonly carrier: RateUnit;
  /** Bottles and product. */
  readonly product: ShownVolumeUnit;
  /** Tanks and carrier. */
  readonly tank: ShownVolumeUnit;
}

export const USUAL_UNITS: Readonly<Record<UnitSystem, UsualUnits>> = {
  us: {
    length: 'ft',
    area: 'ft²',
    speed: 'ft/s',
    rate: 'fl oz per 1,000 ft²',
    carrier: 'gal per 1,000 ft²',
    product: 'fl oz',
    tank: 'gal',
  },
  metric: {
    length: 'm',
    area: 'm²',
    speed: 'm/s',
    rate: 'mL per 100 m²',
    carrier: 'L per 100 m²',
    product: 'mL',
    tank: 'L',
  },
};
