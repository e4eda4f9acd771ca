import { areaFigure, formatNumber, formatSignificant, type UnitSystem } from '../units/index.ts';
import type { Outline } from '../yard.ts';
import type { ResolvedZone } from './resolved.ts';
import { workedText } from './workedText.ts';

/** How much larger a zone's ground is than its map. Areas in the person's unit. */
export interface SlopeWorking {
  /** Rise over run where the zone has one grade; null where an elevation grid says. */
  readonly grade: number | null;
  readonly factor: number;
  readonly mapArea: number;
  readonly surfaceArea: number;
  /** Whether amounts are taken from the surface. */
  readonly isUsed: boolean;
}

/**
 * @param mapArea the treated ground as worked, in the person's unit
 * @returns null for ground that is level
 * Source: `core/slope`; surface = map × √(1 + g²), facet by facet where there is a grid
 */
export function slopeWorking(zone: ResolvedZone, { slope }: Outline, mapArea: number): SlopeWorking | null {
  const factor = zone.surfaceFactor;
  if (factor === 1) return null;
  return {
    grade: slope?.kind === 'grade' ? slope.grade : null,
    factor,
    mapArea,
    surfaceArea: mapArea * factor,
    isUsed: zone.amountFactor !== 1,
  };
}

/** The factor, where it comes from, and map × factor = surface, in lines. */
export function slopeWords(slope: SlopeWorking, units: UnitSystem): readonly string[] {
  const { grade, factor, mapArea, surfaceArea, isUsed } = slope;
  const factorText = formatNumber(factor, 6);
  const from =
    grade === null
      ? `surface over map, facet by facet of the elevation grid: ${factorText}`
      : `surface over map at a grade of ${formatSignificant(grade, 6)}: √(1 + ${formatSignificant(grade, 6)}²) = ${factorText}`;
  const unit = areaFigure(0, units).unit;
  return [
    from,
    `treated on the map ${workedText(mapArea, units)} × ${factorText} = ${workedText(surfaceArea, units)} ${unit} of surface; amounts are taken from the ${isUsed ? 'surface' : 'map'}`,
  ];
}
