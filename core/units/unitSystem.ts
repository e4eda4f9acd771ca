/** The units a person reads and types. Inside, everything is SI. */
export type UnitSystem = 'us' | 'metric';

/** The system a yard is not kept in; where there is room both are shown. */
export function otherUnits(units: UnitSystem): UnitSystem {
  return units === 'us' ? 'metric' : 'us';
}
