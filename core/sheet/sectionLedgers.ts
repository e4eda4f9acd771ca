import type { CutLine, Section } from '../sections/index.ts';
import {
  formatAngle,
  formatArea,
  formatDial,
  formatLength,
  formatTape,
  formatTime,
  formatVolume,
  otherUnits,
} from '../units/index.ts';
import { type FlagTape, findFlagTapes } from './flagTape.ts';
import { type Ledger, type LedgerRow, withoutColumns } from './ledger.ts';
import type { SheetContext } from './sheetContext.ts';
import type { LoadFigures } from './sheetFigures.ts';

/** The one line of figures at the head of a section's page. */
export function figuresLedger(context: SheetContext, load: LoadFigures): Ledger {
  const { units, applicator, figures, plan, isPoured } = context;
  const own = plan.ground.sectionFigures.find((entry) => entry.sectionId === load.section.id);
  const hoseEnd = applicator.kind === 'hose-end';
  const row: LedgerRow = [
    String(load.load),
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
      { title: 'load', share: 0.6, align: 'left' },
      { title: 'treats', share: 1.9, align: 'right' },
      { title: hoseEnd ? 'in the bottle' : 'product', share: 1.1, align: 'right' },
      { title: hoseEnd ? 'through the hose' : 'carrier', share: 1.15, align: 'right' },
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

/** Each cut line of the section: its neighbour, its length, and the tape distance of both ends. */
export function flagsLedger(
  { yard, units, plan }: SheetContext,
  section: Section,
  cutLines: readonly CutLine[],
): Ledger | null {
  if (cutLines.length === 0) return null;
  const rows = cutLines.flatMap((cutLine) => {
    const neighbour = cutLine.between.find((id) => id !== section.id) ?? section.id;
    const lengthM = Math.hypot(cutLine.to.xM - cutLine.from.xM, cutLine.to.yM - cutLine.from.yM);
    return findFlagTapes(yard, cutLine, plan.ground.cutLines).map(
      (tape, i): LedgerRow => [
        i === 0 ? `to ${neighbour}` : '',
        i === 0 ? formatTape(lengthM, units) : '',
        tape === undefined ? '' : formatTape(tape.alongM, units),
        tape === undefined ? 'see the map' : cornerWords(tape, section),
      ],
    );
  });
  return {
    columns: [
      { title: 'line', share: 1, align: 'left' },
      { title: 'long', share: 1.55, align: 'right' },
      { title: 'flag at', share: 1.5, align: 'right' },
      { title: 'from the', share: 3.2, align: 'left' },
    ],
    rows,
    sum: null,
  };
}

/** The outline is named where it is not the section's own zone. */
function cornerWords({ cornerName, outline }: FlagTape, section: Section): string {
  return outline === null || outline.id === section.zoneId ? cornerName : `${cornerName}, ${outline.name}`;
}
