import { counted } from '../units/index.ts';
import { SOFT_INK, text } from './drawing.ts';
import { flagsLedger, linesLedger } from './flagLedgers.ts';
import { wrapText } from './measureText.ts';
import { type FlowItem, flowOverPages } from './pageFlow.ts';
import type { UnitSystem } from '../yard.ts';
import { paperPlan } from './paper.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';

const SIZE_MM = 3.2;
const LEADING_MM = 4.5;

/** How the table is used, and what to do before a stake goes into the ground. */
const HOW_TO: Readonly<Record<UnitSystem, string>> = { us: howTo('2 in'), metric: howTo('2 cm') };

function howTo(two: string): string {
  return `Set the flags in the order of their letters; a later one may be taped from an earlier one. Then tape each line and its check: more than ${two} off is a slip of the tape. NE corner 2 is the second of several on that side, as the map numbers them. A wire flag is enough; before driving stakes, have buried lines marked (811 in the US).`;
}

/** The whole table of flags and lines: with it and a tape the cut lines are set on the ground. None without cuts. */
export function stakingPages(context: SheetContext): DraftPage[] {
  const { staking, units } = context;
  if (staking.lines.length === 0) return [];
  const paper = paperPlan(context.paper, 'portrait');
  const { widthMm } = paper.body;
  const words = wrapText(HOW_TO[units], SIZE_MM, 'regular', widthMm);
  const items: FlowItem[] = [
    {
      kind: 'block',
      heightMm: words.length * LEADING_MM + 3,
      draw: (box) =>
        words.map((line, i) =>
          text(box.xMm, box.yMm + 3.6 + i * LEADING_MM, line, {
            sizeMm: SIZE_MM,
            face: 'regular',
            colour: SOFT_INK,
          }),
        ),
    },
    {
      kind: 'ledger',
      title: 'Flags',
      note: 'each set from those above it',
      ledger: flagsLedger(staking.flags, units, widthMm),
    },
    {
      kind: 'ledger',
      title: 'Lines',
      note: 'length and check, as the tape reads',
      ledger: linesLedger(staking.lines, units, widthMm),
    },
  ];
  return flowOverPages(paper.body, items).map((marks) => ({
    paper,
    title: 'Flags',
    subtitle: [counted(staking.flags.length, 'flag'), counted(staking.lines.length, 'line')].join(', '),
    scaleWords: '',
    marks,
  }));
}
