import { regionAreaM2 } from '../kernel/index.ts';
import { sum } from '../units/index.ts';
import type { CutTarget } from './cutProposals.ts';
import { loadCount, type Loads, type Rest, type Share } from './share.ts';

/** A way to divide the loads of a share between the two sides of one cut. */
export interface Divide extends CutTarget {
  readonly below: Loads;
  readonly above: Loads;
}

/** Above this many loads only near-even divides are tried: single loads nibbled off leave ragged ground. */
const MANY_LOADS = 8;

/** Every way to divide the loads: j below and the others above, each smaller rest on either side. */
export function dividesOf({ region, loads, rests }: Share): Divide[] {
  const unitM2 = loads === 0 ? 0 : (regionAreaM2(region) - areaOf(rests)) / loads;
  const divides: Divide[] = [];
  for (let j = 0; j <= loads; j++) {
    if (loads > MANY_LOADS && Math.abs(j - loads / 2) > 2) continue;
    for (const belowRests of subsetsOf(rests)) {
      const below = { loads: j, rests: belowRests };
      const above = { loads: loads - j, rests: rests.filter((rest) => !belowRests.includes(rest)) };
      if (loadCount(below) === 0 || loadCount(above) === 0) continue;
      divides.push({ name: divides.length, belowM2: j * unitM2 + areaOf(belowRests), below, above });
    }
  }
  return divides;
}

function areaOf(rests: readonly Rest[]): number {
  return sum(rests.map((rest) => rest.areaM2));
}

function subsetsOf([first, ...others]: readonly Rest[]): Rest[][] {
  if (first === undefined) return [[]];
  return subsetsOf(others).flatMap((set) => [set, [first, ...set]]);
}
