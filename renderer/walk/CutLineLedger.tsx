import type { JobPlan } from '../../core/plan/index.ts';
import { checkWords, type PrintedFlag, settingSteps, stakingTable } from '../../core/staking/index.ts';
import { counted } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useBook, useOpenYard, useViewState } from '../app/context.ts';
import { Folded } from '../shared/Folded.tsx';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { stakingOf } from '../shared/stakingOf.ts';

/** A bar between two ids that never parts them: a line may break after a bar even before a fixed space. */
const UNBROKEN_BAR = '\u00a0|\u2060\u00a0';
/** Longer tables are folded: the plan in whole is on the sheet. */
const MOST_OPEN = 12;

/** The flags to set before spraying, each from those above it, and the lines between them with what shows a slip. */
export function CutLineLedger({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  const { view } = useBook();
  const { selection } = useViewState();
  const { yard } = useOpenYard();
  const staking = stakingOf(yard, plan.ground);
  const { flags, lines } = stakingTable(staking, units);
  const aside = `${counted(flags.length, 'flag')}, set in this order`;
  const tables = (
    <>
      <Ledger
        caption="How each flag is set"
        columns={[
          { head: 'flag', align: 'left' },
          { head: 'tape', align: 'right' },
          { head: 'laid', align: 'left' },
        ]}
        rows={flags.map((flag) => ({
          key: flag.letter,
          selected: selection?.kind === 'flag' && selection.id === flag.letter,
          onSelect: () => view.select({ kind: 'flag', id: flag.letter }),
          cells: [flag.letter, unbroken(settingSteps(flag)[0]?.tape ?? ''), laidWords(flag)],
        }))}
      />
      <Ledger
        caption="The lines between the flags, and a check of each"
        columns={[
          { head: 'line', align: 'left' },
          { head: 'parts', align: 'left' },
          { head: 'long', align: 'right' },
          { head: 'check', align: 'left' },
        ]}
        rows={lines.map(({ from, to, between, length, checks }, i) => ({
          key: `${from} ${to} ${i}`,
          cells: [
            `${from}–${to}`,
            between.join(UNBROKEN_BAR),
            unbroken(length),
            checks.map(checkWords).join('; '),
          ],
        }))}
      />
    </>
  );
  return flags.length > MOST_OPEN ? (
    <Folded title="Flags" aside={aside}>
      {tables}
    </Folded>
  ) : (
    <PagePart title="Flags" aside={aside}>
      {tables}
    </PagePart>
  );
}

/** A reading is not parted at the end of a line. */
function unbroken(reading: string): string {
  return reading.replaceAll(' ', '\u00a0');
}

/** "from NE corner of lawn towards NW corner, then 1 ft 0 in square in from that edge". */
function laidWords(flag: PrintedFlag): string {
  const [first, ...more] = settingSteps(flag);
  const then = more.map(({ tape, words }) => `${unbroken(tape)} ${words}`);
  return [first?.words, ...then].join(', then ');
}
