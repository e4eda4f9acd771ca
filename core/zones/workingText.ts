import { areaFigure, formatNumber, lengthFigure } from '../units/index.ts';
import { SQUARE_FOOT_M2, type UnitSystem } from '../units/index.ts';
import type { AreaWorking, BalanceItem, TakenWorking } from './areaWorking.ts';
import { sigmaTable, sigmaWords, tightenWords } from './sigmaText.ts';
import type { RingWorking } from './ringWorking.ts';

/** What each line of the balance is, for screen and copy alike. */
export const BALANCE_WORDS: Readonly<Record<BalanceItem, string>> = {
  gross: 'gross, inside the edge',
  owned: 'less: owned by another zone',
  'cut out': 'less: cut out',
  turf: 'turf',
  'left out': 'less: keep-offs, strips and check plots',
  treated: 'treated',
};

/** Where the corners' numbers are. */
export function frameWords({ frame }: AreaWorking): string {
  return frame.kind === 'loose'
    ? 'east and north of the sketch’s own origin; the yard is not placed on earth'
    : `transverse Mercator on WGS 84 about latitude ${formatNumber(frame.origin.latDeg, 6)}°, longitude ${formatNumber(frame.origin.lonDeg, 6)}°, scale 1; east and north of that point`;
}

/** An area of the working, to its last digit. */
export function workedText(area: number, units: UnitSystem): string {
  return formatNumber(area, units === 'us' ? 2 : 3);
}

/** An area as screen and sheet show it. */
export function shownText(area: number, units: UnitSystem): string {
  return areaFigure(units === 'us' ? area * SQUARE_FOOT_M2 : area, units).text;
}

/** Where rounding made a shown figure other than the nearest; empty where it did not. */
export function roundingWords({ balance, units }: AreaWorking): readonly string[] {
  return balance
    .filter(({ stepOff }) => stepOff)
    .map(
      ({ item, worked, shown }) =>
        `${item} is shown as ${shownText(shown, units)}, not the nearest to ${workedText(worked, units)}: figures are rounded together (largest remainder), so that rows and columns add up`,
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
    'Formula: A = 1/2 Σ (x_i y_{i+1} - x_{i+1} y_i), x east, y north; after the last corner comes the first',
    ...working.rings.flatMap((ring, i) => ['', i === 0 ? 'Edge' : `Hole ${i}`, ...ringText(ring, units)]),
    ...takenText('Owned by another zone', working.owned, units),
    ...takenText('Cut out', working.cutOut, units),
    ...takenText('Keep-offs, strips and check plots', working.leftOut, units),
    '',
    ...table([['Balance', `worked ${area}`, `shown ${area}`], ...rows]),
    ...roundingWords(working),
    '',
    ...table(sigmaTable(working.sigma, units)),
    ...sigmaWords(working.sigma, units),
    ...(working.sigma.tightener === null ? [] : [tightenWords(working.sigma.tightener, units)]),
    '',
  ].join('\n');
}

function ringText(ring: RingWorking, units: UnitSystem): readonly string[] {
  const { cornerDecimals, productDecimals } = ring;
  const unit = lengthFigure(0, units).unit;
  const product = (value: number): string => formatNumber(value, productDecimals);
  return [
    ...table([
      ['corner', `x ${unit}`, `y ${unit}`, 'x_i y_{i+1}', 'x_{i+1} y_i'],
      ...ring.corners.map((corner, i) => [
        `${i + 1}`,
        formatNumber(corner.east, cornerDecimals),
        formatNumber(corner.north, cornerDecimals),
        product(corner.eastByNextNorth),
        product(corner.nextEastByNorth),
      ]),
      ['sum', '', '', product(ring.eastByNextNorthSum), product(ring.nextEastByNorthSum)],
    ]),
    ringSumWords(ring, units),
  ];
}

/** "1/2 × (480.00 - 0.00) = 240.00 ft²", the difference taken so that it is not negative. */
export function ringSumWords(ring: RingWorking, units: UnitSystem): string {
  const sums = [ring.eastByNextNorthSum, ring.nextEastByNorthSum].sort((a, b) => b - a);
  const [more = 0, less = 0] = sums;
  const minus =
    less < 0
      ? `+ ${formatNumber(-less, ring.productDecimals)}`
      : `- ${formatNumber(less, ring.productDecimals)}`;
  // Half of the last digit needs one digit more.
  const area = formatNumber(ring.area, ring.productDecimals + 1);
  return `1/2 × (${formatNumber(more, ring.productDecimals)} ${minus}) = ${area} ${areaFigure(0, units).unit}`;
}

function takenText(title: string, taken: TakenWorking, units: UnitSystem): readonly string[] {
  if (taken.shapes.length === 0) return [];
  const unit = areaFigure(0, units).unit;
  const twice = taken.countedTwice;
  return [
    '',
    ...table([
      [title, `own area ${unit}`, `takes ${unit}`],
      ...taken.shapes.map(({ name, ownArea, takes }) => [
        name,
        workedText(ownArea, units),
        workedText(takes, units),
      ]),
      ...(twice === 0 ? [] : [[TWICE_WORDS, '', workedText(-twice, units)]]),
      ['together', '', workedText(taken.together, units)],
    ]),
  ];
}

/** The line between what each takes and what they take together. */
export const TWICE_WORDS = 'ground under two of them, and rounding';

/** The first column left, the others right, two spaces between. */
function table(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  return rows.map((row) =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join('  ')
      .trimEnd(),
  );
}
