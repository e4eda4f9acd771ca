import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  intersectRegions,
  offsetRegions,
  regionsAreaM2,
  ringPerimeterM,
  signedAreaM2,
  subtractRegions,
  unionRegions,
} from '../../core/kernel/index.ts';
import type { Region, Ring } from '../../core/spaces.ts';
import { AWKWARD } from '../support/awkwardYards.ts';
import { region } from '../support/builders.ts';
import { pick, type Random, type RandomYard, randomYard, seededRandom } from '../support/randomYards.ts';

/** FUZZ_SEED replays one run; FUZZ_YARDS makes it longer. */
const SEED = Number(process.env.FUZZ_SEED ?? Date.now() % 1_000_000);
const YARDS = Number(process.env.FUZZ_YARDS ?? 250);
const GRID_M = 1e-6;
/** Room for a machine that is busy with other things. */
const TIMEOUT_MS = 120_000 + 200 * YARDS;
/** No yard here takes a healthy kernel a tenth of this. */
const TOO_SLOW_MS = 5000;

test(
  `the kernel keeps its laws on ${YARDS} yards from seed ${SEED}`,
  () => {
    console.log(`fuzz: FUZZ_SEED=${SEED}`);
    for (let i = 0; i < YARDS; i++) {
      const yard = mixed(seededRandom(SEED + i));
      const fault = faultOf(yard);
      if (fault !== undefined) {
        const small = shrunk(yard);
        const path = save(small, SEED + i);
        expect.fail(`seed ${SEED + i}: ${fault}; shrunk to ${small.beds.length} beds in ${path}`);
      }
    }
  },
  TIMEOUT_MS,
);

/** Beds of two families in one yard, sometimes with whole rings of rubbish. */
function mixed(random: Random): RandomYard {
  const families = [...Object.values(AWKWARD), (r: Random) => randomYard(r, 5 + Math.floor(r() * 200), 3)];
  const first = pick(random, families)(random);
  const second = pick(random, families)(random);
  const rubbish: Ring[] = random() < 0.3 ? [[], [{ xM: 1, yM: 1 }], first.zone.slice(0, 2)] : [];
  return { zone: first.zone, beds: [...first.beds, ...second.beds.slice(0, 5), ...rubbish] };
}

/** What is wrong, in words; undefined when every law holds. */
function faultOf({ zone, beds }: RandomYard): string | undefined {
  const lawn = [region(zone)];
  const taken = beds.map((bed) => region(bed));
  const before = performance.now();
  try {
    const left = subtractRegions(lawn, taken);
    const inside = intersectRegions(lawn, taken);
    const all = unionRegions([...lawn, ...taken]);
    const grown = offsetRegions(left, 0.5);
    const shrunken = offsetRegions(left, -0.5);
    if (performance.now() - before > TOO_SLOW_MS) return `took ${performance.now() - before} ms`;
    const slackM2 = GRID_M * (edgesM([...lawn, ...taken]) + 1);
    const [wholeM2, leftM2] = [regionsAreaM2(unionRegions(lawn)), regionsAreaM2(left)];
    if (Math.abs(leftM2 + regionsAreaM2(inside) - wholeM2) > slackM2)
      return 'ground lost between the two parts';
    const besideM2 = regionsAreaM2(subtractRegions(taken, lawn));
    if (Math.abs(regionsAreaM2(all) - wholeM2 - besideM2) > slackM2) return 'a union is not its parts';
    if (regionsAreaM2(grown) < leftM2 - slackM2) return 'growing made it smaller';
    if (regionsAreaM2(shrunken) > leftM2 + slackM2) return 'shrinking made it larger';
    const everything = [...left, ...inside, ...all, ...grown, ...shrunken];
    if (
      everything.some(
        ({ outer, holes }) => signedAreaM2(outer) <= 0 || holes.some((hole) => signedAreaM2(hole) >= 0),
      )
    ) {
      return 'a ring runs the wrong way';
    }
    if (regionsAreaM2(subtractRegions(left, taken)) < leftM2 - 2 * slackM2)
      return 'taking away twice takes more';
    if (regionsAreaM2(intersectRegions(left, taken)) > 2 * slackM2) return 'what was taken is still there';
  } catch (thrown) {
    return `threw ${String(thrown)}`;
  }
  return undefined;
}

function edgesM(regions: readonly Region[]): number {
  return regions.reduce((sum, { outer }) => sum + ringPerimeterM(outer), 0);
}

/** Beds and corners are left out as long as something stays wrong. */
function shrunk(yard: RandomYard): RandomYard {
  for (let i = 0; i < yard.beds.length; i++) {
    const fewer = { ...yard, beds: yard.beds.filter((_, k) => k !== i) };
    if (faultOf(fewer) !== undefined) return shrunk(fewer);
  }
  for (let b = 0; b < yard.beds.length; b++) {
    for (let i = 0; i < (yard.beds[b]?.length ?? 0); i++) {
      const beds = yard.beds.map((bed, k) => (k === b ? bed.filter((_, at) => at !== i) : bed));
      if (faultOf({ ...yard, beds }) !== undefined) return shrunk({ ...yard, beds });
    }
  }
  for (let i = 0; i < yard.zone.length; i++) {
    const fewer = { ...yard, zone: yard.zone.filter((_, k) => k !== i) };
    if (faultOf(fewer) !== undefined) return shrunk(fewer);
  }
  return yard;
}

/** A fixture ready to be named for its cause and committed. */
function save(yard: RandomYard, seed: number): string {
  const folder = join(import.meta.dirname, '../../test-results/fuzz');
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `kernel-${seed}.json`);
  writeFileSync(path, `${JSON.stringify({ story: `kernel fuzz, seed ${seed}`, ...yard }, null, 1)}\n`);
  return path;
}
