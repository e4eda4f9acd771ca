import {
  formatNumber,
  formatSignificant,
  lengthFigure,
  lengthUnitM,
  type UnitSystem,
} from '../units/index.ts';
import type { YardFrame } from '../yard.ts';
import type { RingWorking } from './ringWorking.ts';

export interface FramedRings {
  readonly frame: YardFrame;
  readonly units: UnitSystem;
  readonly rings: readonly RingWorking[];
}

/** Equatorial radius and first eccentricity squared of WGS 84. Source: EPSG ellipsoid 7030. */
const WGS84 = { radiusM: 6_378_137, eccentricity2: 0.006_694_379_990_14 };

/** Where the corners' numbers are, and what the map's own scale there does to an area. */
export function frameWords({ frame, units, rings }: FramedRings): string {
  if (frame.kind === 'loose') return 'the sketch’s own origin; the yard is not placed on earth';
  const { latDeg, lonDeg } = frame.origin;
  const unitM = lengthUnitM(units);
  const far = rings
    .flatMap(({ corners }) => corners)
    .reduce((most, { east }) => Math.max(most, Math.abs(east)), 0);
  const partsText = formatSignificant(mostEnlarged(far * unitM, latDeg) * 1e12, 2);
  return `transverse Mercator on WGS 84 about latitude ${formatNumber(latDeg, 6)}°, longitude ${formatNumber(lonDeg, 6)}°, scale 1; an area ${formatNumber(far, 1)} ${lengthFigure(0, units).unit} east or west of there, the furthest here, is ${partsText} parts in 10¹² larger on the map`;
}

/**
 * By what part of itself the frame enlarges an area so far east or west of its origin.
 *
 * With k = 1 + x²/(2R²) the scale, k² - 1 = x²/R² to first order; R² = MN, the radii of curvature at the origin.
 * Accuracy: first order; the next term is x²/R² times smaller
 * Source: point scale of the transverse Mercator (Snyder 1987, Map Projections, eq. 8-11, from memory)
 */
export function mostEnlarged(eastM: number, latDeg: number): number {
  const sin = Math.sin((latDeg * Math.PI) / 180);
  const w2 = 1 - WGS84.eccentricity2 * sin ** 2;
  // MN = a²(1 - e²) / (1 - e² sin²φ)²
  return (eastM * w2) ** 2 / (WGS84.radiusM ** 2 * (1 - WGS84.eccentricity2));
}
