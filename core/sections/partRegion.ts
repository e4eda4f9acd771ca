import { regionAreaM2 } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { type CutDirection, cutDirections } from './cutDirections.ts';
import { type CutProposal, type CutTarget, chordCuts, wholeLineCuts } from './cutProposals.ts';
import { cornersOf, type Facing, faceAlong } from './facing.ts';
import { splitRegion } from './splitRegion.ts';

/** Ground still to be cut: `loads` sections of `unitM2`, and one smaller one of `restM2` when that is not 0. */
export interface Share {
  readonly region: Region;
  readonly loads: number;
  readonly restM2: number;
}

/** How the ground will be walked: direction of the lanes, counter-clockwise from east, and the swath. */
export interface Lay {
  readonly laneRad: number;
  readonly swathM: number;
}

/** One way to part a share in two. */
export interface Parting {
  readonly shares: readonly [Share, Share];
  readonly cuts: readonly (readonly [YardPoint, YardPoint])[];
  readonly costM: number;
}

/** Partings kept for one share. */
const MOST_PARTINGS = 8;
/** Above this many loads only near-even partings are tried: single loads nibbled off leave ragged ground. */
const MANY_LOADS = 8;
/** Of cuts about as short the more even one: what is nibbled off in strips leaves strips. */
const UNEVEN_PART = 0.1;
/** With so many whole lines that do, single chords hardly ever give a shorter cut, and are not looked for. */
const ENOUGH_PARTINGS = 3;
const FAN = 12;
const WIDE_FAN = 48;
/** How far off, relative to the share, a part's area may be before the cut is thrown away. */
const AREA_SLACK = 1e-9;

/**
 * The best ways to part a share into two connected shares by one straight cut, shortest first. Whole lines are
 * tried first; single chords when those give little to choose from.
 */
export function partRegion(share: Share, { laneRad, swathM }: Lay): Parting[] {
  const wholeM2 = regionAreaM2(share.region);
  const targets = targetsFor(share, wholeM2);
  const faced = faceAll(share.region, cutDirections(share.region, laneRad, FAN));
  const whole = faced.flatMap(({ facing, direction }) => wholeLineCuts(facing, direction, targets, swathM));
  const partings = realise(whole, targets, wholeM2);
  if (partings.length >= ENOUGH_PARTINGS) return partings;
  const bestM = partings[0]?.costM ?? Infinity;
  const chords = faced.flatMap(({ facing, direction }) =>
    chordCuts(facing, direction, targets, swathM, 1.5 * bestM),
  );
  const both = realise([...whole, ...chords], targets, wholeM2);
  if (both.length > 0) return both;
  const wide = faceAll(share.region, cutDirections(share.region, laneRad, WIDE_FAN));
  return realise(
    wide.flatMap(({ facing, direction }) => chordCuts(facing, direction, targets, swathM, Infinity)),
    targets,
    wholeM2,
  );
}

/** The region facing along every direction, its corners prepared once. */
function faceAll(
  region: Region,
  directions: readonly CutDirection[],
): { facing: Facing; direction: CutDirection }[] {
  const corners = cornersOf(region);
  return directions.map((direction) => ({ facing: faceAlong(corners, direction.normal), direction }));
}

interface Divide extends CutTarget {
  /** What an uneven parting costs, as a factor on its cut: 1 when even. */
  readonly factor: number;
  readonly below: Omit<Share, 'region'>;
  readonly above: Omit<Share, 'region'>;
}

/** Every way to divide the loads: j below and the others above, the smaller rest on either side. */
function targetsFor({ loads, restM2 }: Share, wholeM2: number): Divide[] {
  const unitM2 = (wholeM2 - restM2) / loads;
  const divides: Divide[] = [];
  const half = loads / 2;
  for (let j = restM2 > 0 ? 0 : 1; j <= loads; j++) {
    if (loads > MANY_LOADS && Math.abs(j - half) > 2) continue;
    const rests = restM2 > 0 ? [0, restM2] : [0];
    for (const below of rests) {
      const above = restM2 - below;
      if ((j === 0 && below === 0) || (j === loads && above === 0)) continue;
      divides.push({
        name: divides.length,
        factor: 1 + (UNEVEN_PART * Math.abs(j - half)) / loads,
        belowM2: j * unitM2 + below,
        below: { loads: j, restM2: below },
        above: { loads: loads - j, restM2: above },
      });
    }
  }
  return divides;
}

function realise(proposals: readonly CutProposal[], divides: readonly Divide[], wholeM2: number): Parting[] {
  const partings: Parting[] = [];
  const factored = (proposal: CutProposal): number =>
    proposal.costM * (divides[proposal.target.name] as Divide).factor;
  const inOrder = proposals.toSorted((a, b) => factored(a) - factored(b));
  for (const proposal of inOrder) {
    const halves = splitRegion(proposal.facing, proposal.chords);
    if (halves === undefined) continue;
    const { belowM2, below, above } = divides[proposal.target.name] as Divide;
    const isOff =
      Math.abs(regionAreaM2(halves.below) - belowM2) > AREA_SLACK * wholeM2 ||
      Math.abs(regionAreaM2(halves.above) - (wholeM2 - belowM2)) > AREA_SLACK * wholeM2;
    if (isOff) continue;
    partings.push({
      shares: [
        { region: halves.below, ...below },
        { region: halves.above, ...above },
      ],
      cuts: proposal.chords.map(({ start, end }) => [start.at, end.at] as const),
      costM: factored(proposal),
    });
    if (partings.length === MOST_PARTINGS) break;
  }
  return partings;
}
