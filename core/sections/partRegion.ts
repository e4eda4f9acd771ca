import { regionAreaM2 } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import type { Chord } from './chords.ts';
import { type CutDirection, cutDirections } from './cutDirections.ts';
import { type CutProposal, chordCuts, wholeLineCuts } from './cutProposals.ts';
import { type Divide, dividesOf } from './divides.ts';
import { cornersOf, type Facing, faceAlong } from './facing.ts';
import { loadCount, type Share } from './share.ts';
import { splitRegion } from './splitRegion.ts';
import type { TapeSides } from './TapeSides.ts';
import { FACING_WORK, isSpent, SPLIT_WORK, spend, type Work, withPart } from './work.ts';

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

/** How many partings of a share are looked for, and how widely. */
export interface Search {
  /** Directions of cuts besides the lanes' and the edges' own. */
  readonly fan: number;
  /** Partings kept. */
  readonly partings: number;
  /** Whether runs of chords that are only a part of their line are looked for even where whole lines do. */
  readonly runs: boolean;
  /** Whether the first directions that yield any partings will do. */
  readonly hasty: boolean;
}

/** One way to part a share in two. */
export interface Parting {
  readonly direction: CutDirection;
  readonly chords: readonly Chord[];
  readonly divide: Divide;
  /** Below the cut and above it. */
  readonly shares: readonly [Share, Share];
  /** Of the cut alone. */
  readonly costM: number;
  /** With what both sides will cost to cut further, as such ground usually does. */
  readonly guessM: number;
}

/** With so few whole lines that do, runs of chords are looked for too. */
const FEW_PARTINGS = 3;
const WIDE_FAN = 48;
/** Of the work that is left, what looking for runs may take: the rest is for trying them, and for cutting further. */
const LOOKING_PART = 0.25;
/** How far off, relative to the share, a part's area may be before the cut is thrown away. */
const AREA_SLACK = 1e-9;
/** Fitted to ground of many shapes: 1.1, 1.3, 1.5 and 1.6 times (k - 1) sqrt(A / k) for k = 2, 4, 7 and 12. */
const [CUT_A_SECTION, CUT_ROOT] = [2.08, 2.2];

/** Length of the cuts that ground usually needs: a compact piece of n sections has their edges less half its own. */
export function usualCutM(share: Pick<Share, 'loads' | 'rests'>, areaM2: number): number {
  const sections = loadCount(share);
  const aSide = Math.sqrt(areaM2 / sections);
  return Math.max(0, CUT_A_SECTION * sections - CUT_ROOT * Math.sqrt(sections)) * aSide;
}

/**
 * The best ways to part a share into two connected shares by one straight cut, those first that promise the least
 * cutting in all.
 */
export function partRegion(share: Share, lay: Lay, search: Search, work: Work): Parting[] {
  const divides = dividesOf(share);
  const faced = faceAll(share.region, cutDirections(share.region, lay.laneRad, search.fan), work);
  const whole = faced.flatMap(({ facing, direction }) =>
    wholeLineCuts(facing, direction, divides, lay.swathM, work),
  );
  const partings = realise(share, whole, divides, search, work);
  if (partings.length >= FEW_PARTINGS && !search.runs) return partings;
  const bestM = partings[0]?.costM ?? Infinity;
  const runsOf = (views: typeof faced, mostM: number): CutProposal[] =>
    withPart(work, LOOKING_PART, (own) =>
      views.flatMap(({ facing, direction }) => chordCuts(facing, direction, divides, lay.swathM, mostM, own)),
    );
  if (search.hasty) {
    for (const view of faced) {
      if (partings.length >= FEW_PARTINGS) break;
      partings.push(...realise(share, runsOf([view], Infinity), divides, search, work));
    }
    if (partings.length > 0) return partings.sort((a, b) => a.guessM - b.guessM);
  }
  const both = realise(share, [...whole, ...runsOf(faced, 1.5 * bestM)], divides, search, work);
  if (both.length > 0) return both;
  const wide = faceAll(share.region, cutDirections(share.region, lay.laneRad, WIDE_FAN), work);
  return realise(share, runsOf(wide, Infinity), divides, search, work);
}

export function cornersIn({ holes, outer }: Region): number {
  return holes.reduce((sum, hole) => sum + hole.length, outer.length);
}

/** The region facing along every direction, its corners prepared once. */
function faceAll(
  region: Region,
  directions: readonly CutDirection[],
  work: Work,
): { facing: Facing; direction: CutDirection }[] {
  const corners = cornersOf(region);
  spend(work, FACING_WORK * directions.length * cornersIn(region));
  return directions.map((direction) => ({ facing: faceAlong(corners, direction.normal), direction }));
}

function realise(
  share: Share,
  proposals: readonly CutProposal[],
  divides: readonly Divide[],
  search: Search,
  work: Work,
): Parting[] {
  const splitWork = SPLIT_WORK * cornersIn(share.region);
  const wholeM2 = regionAreaM2(share.region);
  const partings: Parting[] = [];
  const inOrder = proposals
    .map((proposal) => {
      const divide = divides[proposal.target.name] as Divide;
      const furtherM =
        usualCutM(divide.below, divide.belowM2) + usualCutM(divide.above, wholeM2 - divide.belowM2);
      return { proposal, divide, guessM: proposal.costM + furtherM };
    })
    .sort((a, b) => a.guessM - b.guessM);
  for (const { proposal, divide, guessM } of inOrder) {
    if (isSpent(work)) break;
    spend(work, splitWork);
    const { facing, chords, direction, costM } = proposal;
    const shares = sharesOf(share, facing, chords, divide);
    if (shares === undefined) continue;
    partings.push({ direction, chords, divide, shares, costM, guessM });
    if (partings.length === search.partings) break;
  }
  return partings;
}

/** The two sides of a cut, if it parts the ground into two connected sides of the sizes it should. */
export function sharesOf(
  { region }: Pick<Share, 'region'>,
  facing: Facing,
  chords: readonly Chord[],
  { below, above, belowM2 }: Divide,
): Parting['shares'] | undefined {
  const halves = splitRegion(facing, chords);
  if (halves === undefined) return undefined;
  const wholeM2 = regionAreaM2(region);
  const isOff =
    Math.abs(regionAreaM2(halves.below) - belowM2) > AREA_SLACK * wholeM2 ||
    Math.abs(regionAreaM2(halves.above) - (wholeM2 - belowM2)) > AREA_SLACK * wholeM2;
  if (isOff) return undefined;
  return [
    { region: halves.below, ...below },
    { region: halves.above, ...above },
  ];
}
