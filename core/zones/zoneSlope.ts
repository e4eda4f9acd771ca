import { regionsAreaM2 } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { type SlopedGround, STEEP_GRADE, surfaceByFacets, surfaceFactor } from '../slope/index.ts';
import type { Region } from '../spaces.ts';
import type { Elevation, Outline } from '../yard.ts';
import type { ResolvedZone } from './resolved.ts';

/** Less of a zone than this without a height, or too steep, comes from a grid's edge or one rough cell. */
const TOLD_SLOPE_M2 = 1;

/** What a zone's slope makes of its treated ground. */
export type ZoneSlope = Pick<ResolvedZone, 'slope' | 'surfaceFactor' | 'amountFactor'>;

/** Shared by all level zones. */
const LEVEL: ZoneSlope = { slope: null, surfaceFactor: 1, amountFactor: 1 };

/** The last grid laid over some ground; regions that did not change are the same list as before. */
const latest = new WeakMap<
  readonly Region[],
  { readonly elevation: Elevation; readonly ground: SlopedGround }
>();

/**
 * A zone's slope over its treated ground.
 *
 * @param amountsBy which area amounts are taken from; decides `amountFactor`
 * Cost: nothing for one grade; for an elevation grid that of `surfaceByFacets`, and nothing while neither the
 * ground nor the grid changed
 */
export function zoneSlope(
  outline: Outline,
  treated: readonly Region[],
  elevations: readonly Elevation[],
  amountsBy: 'plan' | 'surface',
): ZoneSlope {
  if (outline.slope === null) return LEVEL;
  const slope =
    outline.slope.kind === 'grade'
      ? evenGround(treated, outline.slope.grade)
      : gridGround(treated, outline.slope.elevationId, elevations);
  const factor =
    outline.slope.kind === 'grade'
      ? surfaceFactor(outline.slope.grade)
      : slope.planM2 > 0
        ? slope.surfaceM2 / slope.planM2
        : 1;
  return { slope, surfaceFactor: factor, amountFactor: amountsBy === 'surface' ? factor : 1 };
}

/** Warnings for zones too steep to walk with a sprayer, and for those whose heights are not all known. */
export function slopeWarnings(zones: readonly ResolvedZone[]): Problem[] {
  return zones.flatMap(({ zoneId, name, slope }): Problem[] => {
    if (slope === null) return [];
    const where = { outlineId: zoneId, name };
    const { planM2, coveredM2, steepM2, steepestGrade } = slope;
    const missingM2 = planM2 - coveredM2;
    return [
      ...(steepM2 >= TOLD_SLOPE_M2
        ? [{ kind: 'shape/steep', where, facts: { steepM2, steepestGrade } } as const]
        : []),
      ...(missingM2 >= TOLD_SLOPE_M2
        ? [{ kind: 'shape/heights-missing', where, facts: { missingM2 } } as const]
        : []),
    ];
  });
}

function evenGround(treated: readonly Region[], grade: number): SlopedGround {
  const planM2 = regionsAreaM2(treated);
  return {
    planM2,
    surfaceM2: planM2 * surfaceFactor(grade),
    coveredM2: planM2,
    steepM2: grade > STEEP_GRADE ? planM2 : 0,
    steepestGrade: grade,
    meanGrade: grade,
  };
}

function gridGround(
  treated: readonly Region[],
  elevationId: string,
  elevations: readonly Elevation[],
): SlopedGround {
  const elevation = elevations.find((row) => row.id === elevationId);
  // The grid was taken away after the zone was given to it: level, and told as having no heights.
  if (elevation === undefined) return { ...evenGround(treated, 0), coveredM2: 0 };
  const known = latest.get(treated);
  if (known?.elevation === elevation) return known.ground;
  const ground = surfaceByFacets(treated, elevation);
  latest.set(treated, { elevation, ground });
  return ground;
}
