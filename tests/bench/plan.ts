/**
 * Prints how good whole plans of seeded ground are and what processor time they take. Run: `npm run bench:plan`, with
 * `--quick` for few lawns and one round each, with names of parts for those alone: `-- lawns effort`. Numbers inform,
 * they do not gate.
 */
import { printBound } from './plan/boundTable.ts';
import { printEffort } from './plan/effortTable.ts';
import { printGrowth } from './plan/growthTable.ts';
import { printLawns } from './plan/lawnTable.ts';
import { printShapes } from './plan/shapeTable.ts';

const isQuick = process.argv.includes('--quick');
const [lawnCount, rounds] = isQuick ? [10, 1] : [60, 5];

const PARTS: Readonly<Record<string, () => void>> = {
  lawns: () => printLawns(lawnCount),
  shapes: () => printShapes(rounds),
  growth: () => printGrowth(rounds),
  effort: () => printEffort(Math.ceil(lawnCount / 2)),
  bound: printBound,
};

const asked = process.argv.slice(2).filter((word) => PARTS[word] !== undefined);
console.log(
  'cut = cut length / ((sections - 1) √(area / sections)); on, walk, wet = metres / (area / swath); ' +
    'CPU ms = user and system time of the process, collector included, not wall clock.\n',
);
for (const part of asked.length > 0 ? asked : Object.keys(PARTS)) PARTS[part]?.();
