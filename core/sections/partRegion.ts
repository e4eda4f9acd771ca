import { regionAreaM2 } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import { sum } from '../units/index.ts';
import { type CutDirection, cutDirections } from './cutDirections.ts';
import { type CutProposal, type CutTarget, chordCuts, wholeLineCuts } from './cutProposals.ts';
import { cornersOf, type Facing, faceAlong, type Unturned } from './facing.ts';
import { type SnappedCut, snapCut } from './snapCut.ts';
import { loadCount, type Loads, type Rest, roomM2, type Share, shareAfterSnap } from './share.ts';
import { splitRegion } from './splitRegion.ts';
import type { TapeSides } from './TapeSides.ts';

/** Straight lines that part ground, each from end to end. */
export type Lines = readonly (readonly [YardPoint, YardPoint])[];

/** How the ground will be walked: direction of the lanes, counter-clockwise from east, and the swath. */
export interface Lay {
  readonly laneRad: number;
  readonly swathM: number;
  /** Cut ends stand on whole multiples of this from a corner where that leaves every load room; null = anywhere. */
  readonly markM: number | null;
  /** What marks are counted along; left out, every edge is counted from its own corners. */
  readonly tapeSides?: TapeSides;
  /** Ground one load treats: no section may have more. */
  readonly loadAreaM2: number;
}

/** How much is tried before ground is given up. */
export interface Search {
  /** Directions of cuts besides the lanes' and the edges' own. */
  readonly fan: number;
  /** Partings kept for one share. */
  readonly partings: number;
  /** States kept at once, however few the loads. */
  readonly leastBeam: number;
}

/** One way to part a share in two. */
export interface Parting {
  readonly shares: readonly [Share, Share];
  readonly cuts: Lines;
  readonly costM: number;
}

/** Above this many loads only near-even partings are tried: single loads nibbled off leave ragged ground. */
const MANY_LOADS = 8;
/** Of cuts about as short the more even one: what is nibbled off in strips leaves strips. */
const UNEVEN_PART = 0.1;
/** With so many whole lines that do, single chords hardly ever give a shorter cut, and are not looked for. */
const ENOUGH_PARTINGS = 3;
const WIDE_FAN = 48;
/** A cut whose ends no tape mark fits is worth this much less. */
const OFF_MARKS_FACTOR = 1.1;
/** How far off, relative to the share, a part's area may be before the cut is thrown away. */
const AREA_SLACK = 1e-9;

/**
 * The best ways to part a share into two connected shares by one straight cut, shortest first. Whole lines are
 * tried first; single chords when those give little to choose from.
 */
export function partRegion(share: Share, lay: Lay, search: Search): Parting[] {
  const { laneRad, swathM } = lay;
  const wholeM2 = regionAreaM2(share.region);
  const targets = targetsFor(share, wholeM2);
  const faced = faceAll(share.region, cutDirections(share.region, laneRad, search.fan));
  const whole = faced.flatMap(({ facing, direction }) => wholeLineCuts(facing, direction, targets, swathM));
  const partings = realise(share, whole, targets, lay, search);
  if (partings.length >= ENOUGH_PARTINGS) return partings;
  const bestM = partings[0]?.costM ?? Infinity;
  const chords = faced.flatMap(({ facing, direction }) =>
    chordCuts(facing, direction, targets, swathM, 1.5 * bestM),
  );
  const both = realise(share, [...whole, ...chords], targets, lay, search);
  if (both.length > 0) return both;
  const wide = faceAll(share.region, cutDirections(share.region, laneRad, WIDE_FAN));
  return realise(
    share,
    wide.flatMap(({ facing, direction }) => chordCuts(facing, direction, targets, swathM, Infinity)),
    targets,
    lay,
    search,
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
  readonly below: Loads;
  readonly above: Loads;
}

/** Every way to divide the loads: j below and the others above, each smaller rest on either side. */
function targetsFor({ loads, rests }: Share, wholeM2: number): Divide[] {
  const unitM2 = loads === 0 ? 0 : (wholeM2 - areaOf(rests)) / loads;
  const divides: Divide[] = [];
  const half = loads / 2;
  for (let j = 0; j <= loads; j++) {
    if (loads > MANY_LOADS && Math.abs(j - half) > 2) continue;
    for (const belowRests of subsetsOf(rests)) {
      const below = { loads: j, rests: belowRests };
      const above = { loads: loads - j, rests: rests.filter((rest) => !belowRests.includes(rest)) };
      if (loadCount(below) === 0 || loadCount(above) === 0) continue;
      divides.push({
        name: divides.length,
        factor: 1 + (UNEVEN_PART * Math.abs(j - half)) / Math.max(1, loads),
        belowM2: j * unitM2 + areaOf(belowRests),
        below,
        above,
      });
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

function realise(
  { region }: Share,
  proposals: readonly CutProposal[],
  divides: readonly Divide[],
  lay: Lay,
  search: Search,
): Parting[] {
  const wholeM2 = regionAreaM2(region);
  const unturned = cornersOf(region);
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
    const snapped = snap(unturned, proposal, divides[proposal.target.name] as Divide, wholeM2, lay);
    const shares: Parting['shares'] =
      snapped === undefined
        ? [
            { region: halves.below, ...below },
            { region: halves.above, ...above },
          ]
        : [
            shareAfterSnap(snapped.halves.below, below, lay.loadAreaM2),
            shareAfterSnap(snapped.halves.above, above, lay.loadAreaM2),
          ];
    partings.push({
      shares,
      cuts: (snapped?.chords ?? proposal.chords).map(({ start, end }) => [start.at, end.at] as const),
      costM: factored(proposal) * (lay.markM !== null && snapped === undefined ? OFF_MARKS_FACTOR : 1),
    });
    if (partings.length === search.partings) break;
  }
  return partings;
}

/** The cut on tape marks, if there is one that leaves no load more than it treats. */
function snap(
  unturned: Unturned,
  { chords }: CutProposal,
  { belowM2, below, above }: Divide,
  wholeM2: number,
  { markM, tapeSides, loadAreaM2 }: Lay,
): SnappedCut | undefined {
  if (markM === null) return undefined;
  const mostBelowM2 = roomM2(below, loadAreaM2);
  const room = { belowM2, leastBelowM2: wholeM2 - roomM2(above, loadAreaM2), mostBelowM2 };
  return snapCut(unturned, chords, room, markM, tapeSides);
}
