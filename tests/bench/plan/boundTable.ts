import { planSections } from '../../../core/sections/index.ts';
import { moved, rect, region } from '../../support/builders.ts';
import { bestSquareCutM, leastCutM, usualCutM } from '../../support/cutBound.ts';
import { lengthM } from './planQuality.ts';
import { printTable } from './table.ts';

const ELONGATIONS = [1, 1.5, 2, 3, 5];
const SECTIONS = [2, 4, 7, 12];
const SIDE_M = 100;
/** Off the compass, so that no direction tried is right by chance. */
const TURN_RAD = 0.3;
/** Cuts hoped for, in the usual measure. */
const HOPED = [
  [4, 1.15],
  [7, 1.25],
] as const;

/** How near to the least that can be our cuts of plain rectangles come. */
export function printBound(): void {
  console.log(
    'Rectangles of 1 ha without holes, equal sections, no marks. Cut: what no straight cuts can beat (derived in ' +
      'tests/support/cutBound.ts) / ours / best by cuts square to the sides.\n',
  );
  const rows = ELONGATIONS.map((elongation) => [
    `${elongation} : 1`,
    ...SECTIONS.map((k) =>
      [leastCutM(k, elongation), ourCutM(k, elongation), bestSquareCutM(k, elongation)]
        .map((cutM) => (cutM / usualCutM(k)).toFixed(3))
        .join(' / '),
    ),
  ]);
  printTable(['sides', ...SECTIONS.map((k) => `${k} sections`)], rows);
  for (const [k, ratio] of HOPED) {
    // Strips: (k - 1) / √e, over the usual (k - 1) / √k.
    const needed = k / ratio ** 2;
    console.log(
      `${ratio} in ${k} sections by strips takes ground ${needed.toFixed(2)} times as long as wide.`,
    );
  }
  console.log();
}

function ourCutM(k: number, elongation: number): number {
  const root = Math.sqrt(elongation);
  const ground = region(moved(rect(0, 0, SIDE_M * root, SIDE_M / root), TURN_RAD, 0, 0));
  const cut = planSections(
    { zoneId: 'z', zoneName: 'Z', letter: 'A', treated: [ground] },
    {
      loadAreaM2: (SIDE_M ** 2 / k) * (1 + 1e-9),
      policy: 'even',
      headingDeg: null,
      swathM: 3,
      markM: null,
    },
  );
  if (!cut.ok) return Number.NaN;
  return cut.value.cuts.reduce((sum, line) => sum + lengthM(line), 0) / SIDE_M;
}
