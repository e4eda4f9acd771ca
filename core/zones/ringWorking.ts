import type { Ring } from '../spaces.ts';
import { lengthUnitM, type UnitSystem } from '../units/index.ts';

/** One corner of a ring in the person's length unit, and its two products with the next corner. */
export interface CornerWorking {
  readonly east: number;
  readonly north: number;
  /** x_i y_{i+1}: this corner's east by the next one's north. */
  readonly eastByNextNorth: number;
  /** x_{i+1} y_i: the next corner's east by this one's north. */
  readonly nextEastByNorth: number;
}

/**
 * A ring's area as a person with a calculator finds it. Every number is as it is shown: the products are those of
 * the shown corners, the sums those of the shown products.
 */
export interface RingWorking {
  readonly corners: readonly CornerWorking[];
  readonly cornerDecimals: number;
  readonly productDecimals: number;
  readonly eastByNextNorthSum: number;
  readonly nextEastByNorthSum: number;
  /** Half the difference of the sums, without its sign; in the square of the length unit. */
  readonly area: number;
}

/** A millionth of a metre or of a foot: no coarser than the kernel's grid. */
const MOST_DECIMALS = 6;
const LEAST_DECIMALS = 2;

/**
 * The coordinate formula A = 1/2 Σ (x_i y_{i+1} - x_{i+1} y_i), corner by corner. Corners are shown to as many
 * decimals as they were placed with, at most six.
 *
 * @param ring as drawn, either direction
 * @returns lengths and areas in feet and square feet, or metres and square metres
 * Accuracy: perimeter times half a millionth of the unit, and half a millionth of a square unit a corner
 * Source: coordinate (shoelace) formula as two columns of products, as J. Mahun, Open Access Surveying,
 * Traverse Computations ch. G, lays it out
 */
export function ringWorking(ring: Ring, units: UnitSystem): RingWorking {
  const unitM = lengthUnitM(units);
  const placed = ring.map(({ xM, yM }) => ({ east: xM / unitM, north: yM / unitM }));
  const cornerDecimals = decimalsOf(placed.flatMap(({ east, north }) => [east, north]));
  const productDecimals = Math.min(MOST_DECIMALS, 2 * cornerDecimals);
  const shown = placed.map(({ east, north }) => ({
    east: rounded(east, cornerDecimals),
    north: rounded(north, cornerDecimals),
  }));
  const corners = shown.map(({ east, north }, i) => {
    const next = shown[(i + 1) % shown.length] as (typeof shown)[number];
    const eastByNextNorth = rounded(east * next.north, productDecimals);
    const nextEastByNorth = rounded(next.east * north, productDecimals);
    return { east, north, eastByNextNorth, nextEastByNorth };
  });
  const sumOf = (product: (corner: CornerWorking) => number): number =>
    rounded(
      corners.reduce((sum, corner) => sum + product(corner), 0),
      productDecimals,
    );
  const eastByNextNorthSum = sumOf((corner) => corner.eastByNextNorth);
  const nextEastByNorthSum = sumOf((corner) => corner.nextEastByNorth);
  const area = Math.abs(eastByNextNorthSum - nextEastByNorthSum) / 2;
  return { corners, cornerDecimals, productDecimals, eastByNextNorthSum, nextEastByNorthSum, area };
}

/** The fewest decimals that show every value to the last one allowed. */
function decimalsOf(values: readonly number[]): number {
  for (let decimals = LEAST_DECIMALS; decimals < MOST_DECIMALS; decimals++) {
    const exact = values.every((value) => rounded(value, decimals) === rounded(value, MOST_DECIMALS));
    if (exact) return decimals;
  }
  return MOST_DECIMALS;
}

function rounded(value: number, decimals: number): number {
  const per = 10 ** decimals;
  // Never -0, which would be another number to a reader than the 0 that is shown.
  return Math.round(value * per) / per + 0;
}
