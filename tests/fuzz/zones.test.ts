import { expect, test } from 'vitest';
import { findCrossing, regionsAreaM2, ringPerimeterM, unionRegions } from '../../core/kernel/index.ts';
import type { Ring } from '../../core/spaces.ts';
import type { Outline, OverlapRule } from '../../core/yard.ts';
import { printedOverlaps, printedSum, printedZones, resolveZones } from '../../core/zones/index.ts';
import { AWKWARD } from '../support/awkwardYards.ts';
import { groundOf, outline, region } from '../support/builders.ts';
import { overlappingYard } from '../support/overlappingYard.ts';
import { pick, type Random, seededRandom } from '../support/randomYards.ts';

/** FUZZ_SEED replays one run; FUZZ_YARDS makes it longer. */
const SEED = Number(process.env.FUZZ_SEED ?? Date.now() % 1_000_000);
const YARDS = Number(process.env.FUZZ_YARDS ?? 150);
/** Room for a machine that is busy with other things. */
const TIMEOUT_MS = 120_000 + 200 * YARDS;

test(
  `zones that overlap keep their balances on ${YARDS} yards from seed ${SEED}`,
  () => {
    console.log(`fuzz: FUZZ_SEED=${SEED}`);
    let stood = 0;
    for (let i = 0; i < YARDS; i++) {
      const { outlines, rule } = mixed(seededRandom(SEED + i));
      if (resolveZones(groundOf(outlines)).ok) stood++;
      const fault = faultOf(outlines, rule);
      if (fault === undefined) continue;
      const small = shrunk(outlines, rule);
      expect.fail(`seed ${SEED + i}: ${fault}; shrunk to ${JSON.stringify({ rule, outlines: small })}`);
    }
    expect(stood).toBeGreaterThan(YARDS / 2); // what is refused by name keeps no balance
  },
  TIMEOUT_MS,
);

/** Overlapping zones with strips, and among them a yard of an awkward family, its lawn and beds. */
function mixed(random: Random): { readonly outlines: readonly Outline[]; readonly rule: OverlapRule } {
  const { outlines, rule } = overlappingYard(random);
  const awkward = pick(random, Object.values(AWKWARD))(random);
  const stands = (ring: Ring) => findCrossing(ring) === undefined;
  const more = [
    ...(stands(awkward.zone) ? [outline('zone', 'awkward', awkward.zone)] : []),
    ...awkward.beds.filter(stands).map((bed, i) => outline('bed', `awkward ${i}`, bed)),
  ];
  return { outlines: [...outlines, ...more], rule };
}

/** What is wrong, in words; undefined when every law holds. */
function faultOf(outlines: readonly Outline[], overlapRule: OverlapRule): string | undefined {
  const ground = groundOf(outlines, 0.05);
  try {
    const answer = resolveZones({ ...ground, details: { ...ground.details, overlapRule } });
    if (!answer.ok) return undefined;
    const { zones } = answer.value;
    const rings = outlines.flatMap(({ kind, outer }) =>
      kind === 'zone' && outer.kind === 'corners' ? [outer.corners] : [],
    );
    const slackM2 = 1e-6 * rings.reduce((sum, ring) => sum + ringPerimeterM(ring), 0); // a grid step along edges
    const groundM2 = zones.reduce((sum, zone) => sum + zone.grossAreaM2 - zone.ownedByOtherAreaM2, 0);
    const unionM2 = regionsAreaM2(unionRegions(rings.map((ring) => region(ring))));
    if (!(Math.abs(groundM2 - unionM2) <= slackM2))
      return `zones hold ${groundM2} m², their union ${unionM2}`;
    for (const { name, grossAreaM2, ownedByOtherAreaM2, cutOutAreaM2, turfAreaM2, treatedAreaM2 } of zones) {
      const partsM2 = turfAreaM2 + cutOutAreaM2 + ownedByOtherAreaM2;
      if (!(Math.abs(partsM2 - grossAreaM2) <= 1e-8))
        return `${name} is ${grossAreaM2} m², its parts ${partsM2}`;
      if (!(treatedAreaM2 <= turfAreaM2 + slackM2))
        return `${name} is treated on ${treatedAreaM2} m² of ${turfAreaM2}`;
    }
    for (const units of ['us', 'metric'] as const) {
      const printed = printedZones(answer.value, units);
      printedOverlaps(answer.value, printed, units);
      if (!Number.isFinite(printedSum(printed).groundM2)) return 'no sum is shown';
    }
    return undefined;
  } catch (thrown) {
    return String(thrown);
  }
}

/** Fewer outlines as long as something is still wrong. */
function shrunk(outlines: readonly Outline[], rule: OverlapRule): readonly Outline[] {
  for (const one of outlines) {
    const fewer = outlines.filter((other) => other !== one);
    if (faultOf(fewer, rule) !== undefined) return shrunk(fewer, rule);
  }
  return outlines;
}
