import type { Pass } from '../passes/index.ts';
import { formatTime, lengthFigure, sum, volumeFigure, volumeUnitFor } from '../units/index.ts';
import { type Ledger, type LedgerRow, withoutColumns } from './ledger.ts';
import type { SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

/**
 * The passes of one load in walking order, with what should be left in the bottle or tank after each, so that a
 * drift shows on the third pass and not at an empty bottle. When there are more passes than rows, every second,
 * third, … is listed and always the last. Where sections share the load, what is for those walked later stays in.
 *
 * @param groups how many tables stand side by side
 */
export function passTables(
  context: SheetContext,
  load: LoadFigures,
  passes: readonly Pass[],
  rowsEach: number,
  groups: number,
): Ledger[] {
  const rows = thinOut(passRows(context, load, passes), rowsEach * groups);
  const perGroup = Math.min(rowsEach, Math.max(4, Math.ceil(rows.length / groups)));
  const { units } = context;
  const tables: Ledger[] = [];
  for (let start = 0; start < rows.length; start += perGroup) {
    const table: Ledger = {
      columns: [
        { title: 'pass', share: 1.2, align: 'left' },
        { title: units === 'us' ? 'ft' : 'm', share: 1.05, align: 'right' },
        { title: 'time', share: 0.9, align: 'right' },
        { title: `left, ${levelUnit(context, load)}`, share: 1.15, align: 'right' },
      ],
      rows: rows.slice(start, start + perGroup),
      sum: null,
    };
    tables.push(context.isPoured ? table : withoutColumns(table, [3]));
  }
  return tables;
}

/** A hose-end bottle holds product alone; a tank the whole mix. */
function filledL(
  { applicator }: SheetContext,
  { productL, carrierL }: Pick<LoadFigures, 'productL' | 'carrierL'>,
): number {
  return applicator.kind === 'hose-end' ? productL : productL + carrierL;
}

/** What of the load is for the sections walked after this one. */
function keptL(context: SheetContext, load: LoadFigures): number {
  const parts = context.figures.fills.find(({ number }) => number === load.load)?.parts ?? [];
  return sum(parts.slice(parts.indexOf(load) + 1).map((later) => filledL(context, later)));
}

function levelUnit(context: SheetContext, load: LoadFigures) {
  return context.applicator.kind === 'hose-end'
    ? context.figures.productUnit
    : volumeUnitFor(filledL(context, load) + keptL(context, load), context.units);
}

function passRows(context: SheetContext, load: LoadFigures, passes: readonly Pass[]): LedgerRow[] {
  const { units, plan } = context;
  const totalM = passes.reduce((sum, pass) => sum + pass.lengthM, 0);
  const unit = levelUnit(context, load);
  const [ownL, laterL] = [filledL(context, load), keptL(context, load)];
  let walkedM = 0;
  return passes.map((pass, i) => {
    walkedM += pass.lengthM;
    const leftL = laterL + (i === passes.length - 1 ? 0 : ownL * (1 - walkedM / totalM));
    return [
      { entry: String(pass.order), soft: pass.kind === 'perimeter' ? 'edge' : 'lane' },
      lengthFigure(pass.lengthM, units).text,
      formatTime(pass.lengthM / plan.ground.request.paceMPerS),
      volumeFigure(leftL, units, unit).text,
    ];
  });
}

function thinOut(rows: readonly LedgerRow[], most: number): LedgerRow[] {
  const every = Math.ceil(rows.length / Math.max(1, most));
  return rows.filter((_, i) => (i + 1) % every === 0 || i === rows.length - 1).slice(-most);
}
