import { regionAreaM2 } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Chord } from './chords.ts';
import type { CutTree } from './cutTree.ts';
import { dividesOf } from './divides.ts';
import { cornersOf, type Direction, type Facing, faceAlong, type Unturned } from './facing.ts';
import { type Lay, type Lines, type Parting, sharesOf } from './partRegion.ts';
import { middleOf } from './partingRuns.ts';
import { roomM2, type Share, shareAfterSnap } from './share.ts';
import { solveCut } from './solveCut.ts';
import { type SnappedCut, snapCut } from './snapCut.ts';

/** A piece of ground cut to loads, and the lines it was cut along. */
export interface CutPiece {
  /** Each of one load, or of one rest. */
  readonly parts: readonly Share[];
  readonly cuts: Lines;
}

/** Where no marks fit a cut it is turned a little, the least first: degrees. */
const TURNS_DEG = [0, 0.5, -0.5, 1, -1, 2, -2, 4, -4];

/**
 * Cuts a share as a tree of cuts says, each cut moved to tape marks where some fit and every load keeps its room. A
 * cut that was moved leaves its sides a little more or less: the cuts below it slide to where they part that evenly.
 *
 * @param regrown asked for another tree where sliding leads nowhere
 */
export function layCuts(
  tree: CutTree,
  share: Share,
  lay: Lay,
  regrown: (share: Share) => CutTree | undefined,
): CutPiece | undefined {
  const { first, sides } = tree;
  if (first === null || sides === null) return { parts: [share], cuts: [] };
  const laid = layFirst(first, share, lay);
  if (laid === undefined) {
    const other = regrown(share);
    return other && layCuts(other, share, lay, () => undefined);
  }
  const below = layCuts(sides[0], laid.shares[0], lay, regrown);
  const above = below && layCuts(sides[1], laid.shares[1], lay, regrown);
  if (below === undefined || above === undefined) return undefined;
  return {
    parts: [...below.parts, ...above.parts],
    cuts: [...laid.cuts, ...below.cuts, ...above.cuts],
  };
}

interface Laid {
  readonly shares: Parting['shares'];
  readonly cuts: Lines;
}

function layFirst(first: Parting, share: Share, lay: Lay): Laid | undefined {
  const divide = dividesOf(share)[first.divide.name];
  if (divide === undefined) return undefined;
  const unturned = cornersOf(share.region);
  const through = middleOf(first.chords);
  const straight = slid(unturned, first.direction.normal, through, divide.belowM2);
  if (lay.markM !== null) {
    for (const turnDeg of TURNS_DEG) {
      const cut =
        turnDeg === 0
          ? straight
          : slid(unturned, turned(first.direction.normal, turnDeg), through, divide.belowM2);
      const snapped = cut && snap(cut.facing, cut.chords, divide, regionAreaM2(share.region), lay, lay.markM);
      if (snapped === undefined) continue;
      const { below, above } = snapped.halves;
      return {
        shares: [
          shareAfterSnap(below, divide.below, lay.loadAreaM2),
          shareAfterSnap(above, divide.above, lay.loadAreaM2),
        ],
        cuts: linesOf(snapped.chords),
      };
    }
  }
  const shares = straight && sharesOf(share, straight.facing, straight.chords, divide);
  return shares && { shares, cuts: linesOf(straight.chords) };
}

function slid(
  unturned: Unturned,
  normal: Direction,
  through: YardPoint,
  belowM2: number,
): { facing: Facing; chords: Chord[] } | undefined {
  const facing = faceAlong(unturned, normal);
  const chords = solveCut(facing, through, belowM2);
  return chords && { facing, chords };
}

/** The cut on tape marks, if there is one that leaves no load more than it treats. */
function snap(
  facing: Facing,
  chords: readonly Chord[],
  { belowM2, below, above }: Parting['divide'],
  wholeM2: number,
  { loadAreaM2, tapeSides }: Lay,
  markM: number,
): SnappedCut | undefined {
  const mostBelowM2 = roomM2(below, loadAreaM2);
  const room = { belowM2, leastBelowM2: wholeM2 - roomM2(above, loadAreaM2), mostBelowM2 };
  return snapCut(facing, chords, room, markM, tapeSides);
}

function turned({ x, y }: Direction, byDeg: number): Direction {
  const [cos, sin] = [Math.cos((byDeg * Math.PI) / 180), Math.sin((byDeg * Math.PI) / 180)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

function linesOf(chords: readonly Chord[]): Lines {
  return chords.map(({ start, end }) => [start.at, end.at] as const);
}
