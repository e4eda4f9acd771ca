import type { Section } from '../sections/index.ts';
import {
  checkWords,
  type Flag,
  printedFlag,
  printedLine,
  settingSteps,
  type StakedLine,
} from '../staking/index.ts';
import type { UnitSystem } from '../yard.ts';
import type { Ledger, LedgerRow } from './ledger.ts';
import { wrapText } from './measureText.ts';
import type { SheetContext } from './sheetContext.ts';

/** As ledgers are set: a row of words too long for its column goes on in the next row, and is never shortened. */
const SIZE_MM = 3.1;
const PAD_MM = 3;

/** How each flag is set, one tape a row, in the order they are set in. */
export function flagsLedger(flags: readonly Flag[], units: UnitSystem, widthMm: number): Ledger {
  const shares = [0.85, 1.9, 6.1] as const;
  const wordsMm = columnMm(shares, 2, widthMm);
  return {
    columns: [
      { title: 'flag', share: shares[0], align: 'left' },
      { title: 'tape', share: shares[1], align: 'right' },
      { title: 'laid', share: shares[2], align: 'left' },
    ],
    rows: flags.flatMap((flag) =>
      settingSteps(printedFlag(flag, units)).flatMap(({ tape, words }, step) =>
        wrapText(words, SIZE_MM, 'condensed', wordsMm).map(
          (part, i): LedgerRow => [step === 0 && i === 0 ? flag.letter : '', i === 0 ? tape : '', part],
        ),
      ),
    ),
    sum: null,
  };
}

/** Each line by its two flags: what it parts, how long it is, and one more tape that shows a slip. */
export function linesLedger(lines: readonly StakedLine[], units: UnitSystem, widthMm: number): Ledger {
  const shares = [1, 1.3, 1.9, 4.6] as const;
  const wordsMm = columnMm(shares, 3, widthMm);
  return {
    columns: [
      { title: 'line', share: shares[0], align: 'left' },
      { title: 'parts', share: shares[1], align: 'left' },
      { title: 'long', share: shares[2], align: 'right' },
      { title: 'check', share: shares[3], align: 'left' },
    ],
    rows: lines.flatMap((line) => {
      const { from, to, between, length, checks } = printedLine(line, units);
      const words = checks.flatMap((check) => wrapText(checkWords(check), SIZE_MM, 'condensed', wordsMm));
      const parts = words.length > 0 ? words : [''];
      return parts.map(
        (part, i): LedgerRow =>
          i === 0 ? [`${from}–${to}`, between.join(' | '), length, part] : ['', '', '', part],
      );
    }),
    sum: null,
  };
}

function columnMm(shares: readonly number[], column: number, widthMm: number): number {
  const all = shares.reduce((sum, share) => sum + share, 0);
  return ((shares[column] ?? 0) / all) * widthMm - PAD_MM;
}

/** The lines of some sections, and the flags at their ends in the order they are set in. */
export function stakesOf(
  { staking }: Pick<SheetContext, 'staking'>,
  sections: readonly Pick<Section, 'id'>[] | null,
): { readonly flags: readonly Flag[]; readonly lines: readonly StakedLine[] } {
  if (sections === null) return staking;
  const ids = sections.map(({ id }) => id);
  const lines = staking.lines.filter(({ cutLine }) => cutLine.between.some((id) => ids.includes(id)));
  const own = new Set(lines.flatMap(({ flags }) => flags));
  return { lines, flags: staking.flags.filter((flag) => own.has(flag)) };
}
