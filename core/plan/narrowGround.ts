import { offsetRegions, regionAreaM2, subtractRegions } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import type { Region } from '../spaces.ts';
import type { ResolvedYard } from '../zones/index.ts';

/** On ground narrower than this part of a swath, more of a pass falls beside it than on it. */
const LEAST_WIDTH = 0.5;
/** Less narrow ground in one place than this part of a swath square is a corner, not a way. */
const LEAST_PLACE = 0.5;
/** What shrinking and growing back again may be off at rounded corners, in metres. */
const ROUND_M = 0.005;

/**
 * Ground too narrow to walk, in m²: necks and tongues no wider than half a swath. What is left when the ground is
 * shrunk by a quarter of a swath and grown back is wide enough; corners, which that rounds, do not count.
 */
export function narrowGroundM2(ground: readonly Region[], swathM: number): number {
  const insetM = (LEAST_WIDTH * swathM) / 2;
  const wide = offsetRegions(offsetRegions(ground, -insetM), insetM + ROUND_M);
  return subtractRegions(ground, wide)
    .map(regionAreaM2)
    .filter((areaM2) => areaM2 >= LEAST_PLACE * swathM * swathM)
    .reduce((sum, areaM2) => sum + areaM2, 0);
}

/** Zones with ground too narrow to walk, so that the person treats it by hand; those no pass fits in are said elsewhere. */
export function narrowWays(
  { zones }: Pick<ResolvedYard, 'zones'>,
  swathM: number,
  without: ReadonlySet<string>,
): Problem[] {
  return zones.flatMap(({ name, treated }): Problem[] => {
    const areaM2 = without.has(name) ? 0 : narrowGroundM2(treated, swathM);
    if (areaM2 === 0) return [];
    const facts = { areaM2, widthM: LEAST_WIDTH * swathM };
    return [{ kind: 'plan/too-narrow-to-walk', where: { thing: name }, facts }];
  });
}
