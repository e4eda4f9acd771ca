import { regionAreaM2 } from '../../../core/kernel/index.ts';
import type { Region } from '../../../core/spaces.ts';
import { LAWNS_MADE, lawns } from './lawns.ts';
import { MARK_M, type PlanQuality, planQuality, ROOMY } from './planQuality.ts';
import { printTable, quantile } from './table.ts';

export const LAWN_SEED = 2026;
const SECTIONS = [1, 2, 4, 7, 12];
const SWATH_M = 3;

/** Title, figure, digits, and the part of the lawns that lie below what is shown beside the median. */
const FIGURES: readonly (readonly [string, keyof PlanQuality, number, number?])[] = [
  ['cut', 'cut', 3],
  ['covered %', 'coveredPercent', 2, 0.1],
  ['twice %', 'twicePercent', 2],
  ['outside %', 'outsidePercent', 2],
  ['on', 'on', 3],
  ['walk', 'walk', 3],
  ['wet', 'wet', 3],
  ['CPU ms', 'cpuMs', 0],
];

/** Whole plans of the seeded lawns, for several numbers of sections. */
export function printLawns(count: number): void {
  const made = lawns(LAWN_SEED, count);
  console.log(`${count} lawns, seed ${LAWN_SEED}. ${LAWNS_MADE}.`);
  console.log(
    `Swath ${SWATH_M} m, loads of an equal share and ${Math.round(100 * (ROOMY - 1))} %, marks of ${MARK_M} m. ` +
      'Median, and what nine in ten lawns are no worse than.\n',
  );
  planQuality(made.slice(0, 1), { loadAreaM2: 3000, swathM: SWATH_M }); // To warm up.
  const rows = SECTIONS.map((k) => rowOf(k, made));
  printTable(['sections', ...FIGURES.map(([title]) => title), 'cuts on marks', 'lawns not planned'], rows);
}

function rowOf(k: number, made: readonly Region[]): string[] {
  const plans = made.map((lawn) =>
    planQuality([lawn], { loadAreaM2: (ROOMY * regionAreaM2(lawn)) / k, swathM: SWATH_M }),
  );
  const good = plans.filter((plan) => typeof plan !== 'string');
  const cells = FIGURES.map(([, figure, digits, tail = 0.9]) => {
    const values = good.map((plan) => plan[figure]);
    if (values.some(Number.isNaN)) return '';
    return `${quantile(values, 0.5).toFixed(digits)}, ${quantile(values, tail).toFixed(digits)}`;
  });
  const [cuts, marked] = [sumOf(good, 'cuts'), sumOf(good, 'markedCuts')];
  return [
    `${k}`,
    ...cells,
    cuts === 0 ? '' : `${((100 * marked) / cuts).toFixed(1)} %`,
    `${plans.length - good.length}`,
  ];
}

function sumOf(plans: readonly PlanQuality[], figure: keyof PlanQuality): number {
  return plans.reduce((sum, plan) => sum + plan[figure], 0);
}
