import { areaFigure, formatNumber, lengthFigure, type UnitSystem } from '../units/index.ts';
import type { RingWorking } from './ringWorking.ts';
import { textTable } from './textTable.ts';

/** The formula that every ring is worked by, for a copy in plain text. */
export const RING_FORMULA =
  'Formula: A = 1/2 Σ (x_i y_{i+1} - x_{i+1} y_i), x east, y north; after the last corner comes the first';

/** A ring's corners and products as a table, its sums and its area. */
export function ringText(ring: RingWorking, units: UnitSystem): readonly string[] {
  const { cornerDecimals, productDecimals } = ring;
  const unit = lengthFigure(0, units).unit;
  const product = (value: number): string => formatNumber(value, productDecimals);
  return [
    ...textTable([
      ['corner', `x ${unit}`, `y ${unit}`, 'x_i y_{i+1}', 'x_{i+1} y_i'],
      ...ring.corners.map((corner, i) => [
        `${i + 1}`,
        formatNumber(corner.east, cornerDecimals),
        formatNumber(corner.north, cornerDecimals),
        product(corner.eastByNextNorth),
        product(corner.nextEastByNorth),
      ]),
      ['sum', '', '', product(ring.eastByNextNorthSum), product(ring.nextEastByNorthSum)],
    ]),
    ringSumWords(ring, units),
  ];
}

/** "1/2 × (480.00 - 0.00) = 240.00 ft²", the difference taken so that it is not negative. */
export function ringSumWords(ring: RingWorking, units: UnitSystem): string {
  const sums = [ring.eastByNextNorthSum, ring.nextEastByNorthSum].sort((a, b) => b - a);
  const [more = 0, less = 0] = sums;
  const minus =
    less < 0
      ? `+ ${formatNumber(-less, ring.productDecimals)}`
      : `- ${formatNumber(less, ring.productDecimals)}`;
  // Half of the last digit needs one digit more.
  const area = formatNumber(ring.area, ring.productDecimals + 1);
  return `1/2 × (${formatNumber(more, ring.productDecimals)} ${minus}) = ${area} ${areaFigure(0, units).unit}`;
}
