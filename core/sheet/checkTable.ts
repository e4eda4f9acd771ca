import { type CheckedDistance, fieldCheck, verdictWords } from '../fieldCheck/index.ts';
import { fineLengthFigure } from '../units/index.ts';
import type { UnitSystem, Yard } from '../yard.ts';
import type { LedgerRow } from './ledger.ts';
import type { FlowItem } from './pageFlow.ts';

/** The distances that were taped on the ground, held against the map; nothing when none was. */
export function checkTables(yard: Yard, units: UnitSystem): readonly FlowItem[] {
  if (yard.checks.length === 0) return [];
  const { unit } = fineLengthFigure(0, units);
  return [
    {
      kind: 'ledger',
      title: 'Checked by tape',
      note: 'inside: not more than twice the ± apart; ± is one standard deviation',
      ledger: {
        columns: [
          { title: 'from, to', share: 34, align: 'left' },
          { title: `map ${unit}`, share: 14, align: 'right' },
          { title: `taped ${unit}`, share: 14, align: 'right' },
          { title: 'taped − map', share: 20, align: 'right' },
          { title: 'stands', share: 18, align: 'left' },
        ],
        rows: yard.checks.map((check) => rowOf(fieldCheck(yard, check), units)),
        sum: null,
      },
    },
  ];
}

function rowOf(checked: CheckedDistance, units: UnitSystem): LedgerRow {
  const figure = (lengthM: number): string => fineLengthFigure(lengthM, units).text;
  const { check, mapM, differenceM, sigmaM } = checked;
  return [
    check.name,
    figure(mapM),
    figure(check.tapedM),
    { entry: signed(figure(differenceM)), soft: sigmaM === null ? '' : `± ${figure(sigmaM)}` },
    verdictWords(checked),
  ];
}

/** As on the screen: a tape that reads longer than the map is marked as such. */
function signed(figure: string): string {
  return figure.startsWith('-') || !/[1-9]/.test(figure) ? figure : `+${figure}`;
}
