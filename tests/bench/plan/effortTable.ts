import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { laneHeadings } from '../../../core/passes/index.ts';
import { growTree } from '../../../core/sections/cutTree.ts';
import { layCuts } from '../../../core/sections/layCuts.ts';
import { TapeSides } from '../../../core/sections/TapeSides.ts';
import type { Region } from '../../../core/spaces.ts';
import { lawns } from './lawns.ts';
import { LAWN_SEED } from './lawnTable.ts';
import { lengthM, MARK_M, ROOMY } from './planQuality.ts';
import { cpuClock, printTable, quantile } from './table.ts';

const PARTINGS = [1, 10, 30, 100, 300, 1000];
const SECTIONS = [4, 7, 12];
const SWATH_M = 3;
/** As the planner has it; a search of more partings follows more first cuts. */
const USUAL_FIRST = 8;

/** What more search buys: the planner's own takes some 6,000 partings times corners, 100 partings at most. */
export function printEffort(count: number): void {
  const made = lawns(LAWN_SEED, count);
  console.log(
    `Effort of the search for cuts, the first ${count} of the same lawns: medians of cut and of CPU ms, sections alone.\n`,
  );
  const rows = PARTINGS.map((partings) => [
    `${partings}`,
    ...SECTIONS.flatMap((k) => {
      const runs = made.map((lawn) => cutWith(lawn, k, partings)).filter((run) => run !== undefined);
      const median = (figure: 'cut' | 'cpuMs'): number =>
        quantile(
          runs.map((run) => run[figure]),
          0.5,
        );
      const lost = runs.length < made.length ? ` (${made.length - runs.length} not cut)` : '';
      return [`${median('cut').toFixed(3)}${lost}`, median('cpuMs').toFixed(0)];
    }),
  ]);
  printTable(['partings', ...SECTIONS.flatMap((k) => [`cut, ${k} sections`, 'CPU ms'])], rows);
}

function cutWith(lawn: Region, k: number, partings: number): { cut: number; cpuMs: number } | undefined {
  const areaM2 = regionAreaM2(lawn);
  const loadAreaM2 = (ROOMY * areaM2) / k;
  const [laneRad = 0] = laneHeadings([lawn], SWATH_M, 1);
  const lay = { laneRad, swathM: SWATH_M, markM: MARK_M, tapeSides: new TapeSides([]), loadAreaM2 };
  const share = { region: lawn, loads: k, rests: [] };
  const effort = () => ({
    partings,
    mostFirst: Math.max(USUAL_FIRST, partings / USUAL_FIRST),
    hasty: false,
    work: { left: Infinity },
  });
  const cpuMs = cpuClock();
  const grow = (of: typeof share) => growTree(of, lay, effort(), () => false);
  const tree = grow(share);
  const piece = tree && layCuts(tree, share, lay, (other) => growTree(other, lay, effort(), () => false));
  if (piece === undefined) return undefined;
  const cutM = piece.cuts.reduce((sum, [from, to]) => sum + lengthM({ from, to }), 0);
  return { cut: cutM / ((k - 1) * Math.sqrt(areaM2 / k)), cpuMs: cpuMs() };
}
