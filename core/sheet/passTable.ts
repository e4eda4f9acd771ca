import { formatNumber, formatTime, lengthFigure, volumeFigure } from '../units/index.ts';
import { type Ledger, type LedgerRow, withoutColumns } from './ledger.ts';
import { type LoadCounts, passCounts } from './passCounts.ts';
import type { SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

/** A narrower table has no room for a column of steps. */
const STEPS_FROM_MM = 58;

/**
 * The passes of one section in walking order, with its steps and what should be left in the bottle or tank after each,
 * so that a drift shows on the third pass and not at an empty bottle. When there are more passes than rows, every
 * second, third, … is listed and always the last.
 *
 * @param load what of a load goes on the section
 * @param groups how many tables stand side by side, each `widthMm` wide; steps are listed where that is wide enough
 */
export function passTables(
  context: SheetContext,
  load: LoadFigures,
  rowsEach: number,
  groups: number,
  widthMm: number,
): Ledger[] {
  const { units, plan, figures, applicator } = context;
  const counts = passCounts(plan, figures, applicator.kind, load.load, units);
  const own = counts.passes.filter(({ pass }) => pass.sectionId === load.section.id);
  const rows = thinOut(passRows(context, { ...counts, passes: own }), rowsEach * groups);
  const perGroup = Math.min(rowsEach, Math.max(4, Math.ceil(rows.length / groups)));
  const tables: Ledger[] = [];
  for (let start = 0; start < rows.length; start += perGroup) {
    const table: Ledger = {
      columns: [
        { title: 'pass', share: 1.25, align: 'left' },
        { title: units === 'us' ? 'ft' : 'm', share: 0.85, align: 'right' },
        { title: 'steps', share: 0.85, align: 'right' },
        { title: 'time', share: 0.85, align: 'right' },
        { title: `left, ${counts.unit}`, share: 1.2, align: 'right' },
      ],
      rows: rows.slice(start, start + perGroup),
      sum: null,
    };
    const left = [...(widthMm < STEPS_FROM_MM ? [2] : []), ...(context.isPoured ? [] : [4])];
    tables.push(withoutColumns(table, left));
  }
  return tables;
}

function passRows({ units }: SheetContext, { passes, unit }: LoadCounts): LedgerRow[] {
  return passes.map(({ pass, timeS, steps, leftL }) => [
    { entry: String(pass.order), soft: pass.kind === 'perimeter' ? 'edge' : 'lane' },
    lengthFigure(pass.lengthM, units).text,
    formatNumber(steps, 0),
    formatTime(timeS),
    volumeFigure(leftL, units, unit).text,
  ]);
}

function thinOut(rows: readonly LedgerRow[], most: number): LedgerRow[] {
  const every = Math.ceil(rows.length / Math.max(1, most));
  return rows.filter((_, i) => (i + 1) % every === 0 || i === rows.length - 1).slice(-most);
}
