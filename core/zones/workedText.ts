import { areaFigure, areaUnitM2, formatNumber, type UnitSystem } from '../units/index.ts';

/** An area of a working, in the person's unit, to the working's last digit. */
export function workedText(area: number, units: UnitSystem): string {
  return formatNumber(area, units === 'us' ? 2 : 3);
}

/** An area of a working as screen and sheet show it. */
export function shownText(area: number, units: UnitSystem): string {
  return areaFigure(area * areaUnitM2(units), units).text;
}
