/** The units a person reads and types. Inside, everything is SI. */
export type UnitSystem = 'us' | 'metric';
