import { areaFigure, type UnitSystem } from '../units/index.ts';
import type { AreaWorking, BalanceItem, TakenWorking } from './areaWorking.ts';
import { sigmaTable, sigmaWords, tightenWords } from './sigmaText.ts';
import { frameWords } from './frameWords.ts';
import { RING_FORMULA } from './ringText.ts';
import { slopeWords } from './slopeWorking.ts';
import { textTable } from './textTable.ts';
import { edgesText } from './tracedWorking.ts';
import { shownText, workedText } from './workedText.ts';

/** What each line of the balance is, for screen and copy alike. */
export const BALANCE_WORDS: Readonly<Record<BalanceItem, string>> = {
  gross: 'gross, inside the edge',
  owned: 'less: owned by another zone',
  'cut out': 'less: cut out',
  turf: 'turf',
  'left out': 'less: keep-offs, strips and check plots',
  treated: 'treated',
};

/** Where rounding made a shown figure other than the nearest; empty where it did not. */
export function roundingWords({ balance, units }: AreaWorking): readonly string[] {
  return balance
    .filter(({ stepOff }) => stepOff)
    .map(
      ({ item, worked, shown }) =>
        `${item} ${workedText(worked, units)} is shown as ${shownText(shown, units)}, not the nearest: all zones’ figures are rounded together (largest remainder), so that rows and columns add up`,
    );
}

/**
 * The working as plain text to paste anywhere: tables with columns in line, numbers in the one fixed format.
 */
export function workingText(working: AreaWorking): string {
  const { units } = working;
  const area = areaFigure(0, units).unit;
  const rows = working.balance.map(({ item, worked, shown }) => [
    BALANCE_WORDS[item],
    workedText(worked, units),
    shownText(shown, units),
  ]);
  return [
    `Working of ${working.name}`,
    '',
    `Frame: ${frameWords(working)}`,
    RING_FORMULA,
    ...edgesText(working.rings, units),
    ...takenText('Owned by another zone', working.owned, units),
    ...takenText('Cut out', working.cutOut, units),
    ...takenText('Keep-offs, strips and check plots', working.leftOut, units),
    '',
    ...textTable([['Balance', `worked ${area}`, `shown ${area}`], ...rows]),
    ...roundingWords(working),
    ...(working.slope === null ? [] : ['', ...slopeWords(working.slope, units)]),
    '',
    ...textTable(sigmaTable(working.sigma, units)),
    ...sigmaWords(working.sigma, units),
    ...(working.sigma.tightener === null ? [] : [tightenWords(working.sigma.tightener, units)]),
    '',
  ].join('\n');
}

function takenText(title: string, taken: TakenWorking, units: UnitSystem): readonly string[] {
  if (taken.shapes.length === 0) return [];
  const unit = areaFigure(0, units).unit;
  const twice = taken.countedTwice;
  return [
    '',
    ...textTable([
      [title, `own area ${unit}`, `takes ${unit}`],
      ...taken.shapes.map(({ name, ownArea, takes }) => [
        name,
        workedText(ownArea, units),
        workedText(takes, units),
      ]),
      ...(twice === 0 ? [] : [[twiceWords(taken, units), '', workedText(-twice, units)]]),
      ['together', '', workedText(taken.together, units)],
    ]),
  ];
}

/** The line between what each takes and what they take together: shared ground, or only their last digits. */
export function twiceWords({ shapes, countedTwice }: TakenWorking, units: UnitSystem): string {
  const lastDigit = units === 'us' ? 0.01 : 0.001;
  // Each row, and the line together, may be half a last digit off.
  const isRounding = Math.abs(countedTwice) <= ((shapes.length + 1) / 2) * lastDigit + lastDigit / 10;
  return isRounding ? 'rounding of the rows above' : 'ground under two of them, counted once';
}
