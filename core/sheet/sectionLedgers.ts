import {
  formatAngle,
  formatArea,
  formatDial,
  formatLength,
  formatTime,
  formatVolume,
  otherUnits,
} from '../units/index.ts';
import { type Ledger, type LedgerRow, withoutColumns } from './ledger.ts';
import type { SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

/** The one line of figures at the head of a section's page. */
export function figuresLedger(context: SheetContext, load: LoadFigures): Ledger {
  const { units, applicator, figures, plan, isPoured } = context;
  const own = plan.ground.sectionFigures.find((entry) => entry.sectionId === load.section.id);
  const hoseEnd = applicator.kind === 'hose-end';
  const others = figures.loads.filter((other) => other.load === load.load && other !== load);
  const isShared = others.length > 0;
  const row: LedgerRow = [
    isShared ? { entry: String(load.load), soft: sharedWords(others) } : String(load.load),
    { entry: formatArea(load.areaM2, units), soft: formatArea(load.otherAreaM2, otherUnits(units)) },
    formatVolume(load.productL, units, figures.productUnit),
    formatVolume(load.carrierL, units, figures.carrierUnit),
    ...(hoseEnd ? [formatDial(load.dialRatio ?? 0, units)] : []),
    own === undefined ? '' : formatAngle(own.headingDeg),
    own === undefined ? '' : String(own.passes),
    own === undefined ? '' : formatLength(own.onLengthM, units),
    own === undefined ? '' : formatTime(own.timeS),
  ];
  const ledger: Ledger = {
    columns: [
      { title: 'load', share: isShared ? 1.1 : 0.6, align: 'left' },
      { title: 'treats', share: 1.9, align: 'right' },
      {
        title: isShared ? 'product of it' : hoseEnd ? 'in the bottle' : 'product',
        share: 1.1,
        align: 'right',
      },
      {
        title: hoseEnd ? 'through the hose' : isShared ? 'carrier of it' : 'carrier',
        share: 1.15,
        align: 'right',
      },
      ...(hoseEnd ? [{ title: 'dial', share: 1.1, align: 'right' } as const] : []),
      { title: 'lanes run', share: 0.85, align: 'right' },
      { title: 'passes', share: 0.7, align: 'right' },
      { title: 'spraying', share: 1.05, align: 'right' },
      { title: 'time', share: 0.8, align: 'right' },
    ],
    rows: [row],
    sum: null,
  };
  return isPoured ? ledger : withoutColumns(ledger, hoseEnd ? [2, 3, 4] : [2, 3]);
}

/** "with C1": whose ground the same load does. */
function sharedWords(others: readonly LoadFigures[]): string {
  const [first] = others;
  const more = others.length > 1 ? `, +${others.length - 1}` : '';
  return `with ${first?.section.id ?? ''}${more}`;
}
