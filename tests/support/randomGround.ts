import { regionsAreaM2, subtractRegions } from '../../core/kernel/index.ts';
import type { Region } from '../../core/spaces.ts';
import type { ResolvedYard } from '../../core/zones/index.ts';
import { region, LEVEL, spreadOf } from './builders.ts';
import { randomYard, seededRandom } from './randomYards.ts';

/** Treated ground of a seeded random yard: what its beds leave of its zone, in as many pieces as that is. */
export function randomGround(seed: number, corners: number, beds: number): Region[] {
  const yard = randomYard(seededRandom(seed), corners, beds);
  return subtractRegions(
    [region(yard.zone)],
    yard.beds.map((bed) => region(bed)),
  );
}

/** Resolved zones that are turf and treated all over, named as given. */
export function resolvedOf(zones: Readonly<Record<string, readonly Region[]>>): ResolvedYard {
  return {
    zones: Object.entries(zones).map(([name, treated]) => {
      const areaM2 = regionsAreaM2(treated);
      return {
        zoneId: name,
        name,
        grossAreaM2: areaM2,
        cutOutAreaM2: 0,
        ownedByOtherAreaM2: 0,
        turfAreaM2: areaM2,
        treatedAreaM2: areaM2,
        sigmaM2: null,
        spread: spreadOf(name, null),
        ...LEVEL,
        turf: treated,
        treated,
      };
    }),
    overlaps: [],
    strips: [],
    untreated: [],
    warnings: [],
  };
}
