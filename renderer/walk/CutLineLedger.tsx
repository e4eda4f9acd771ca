import { distanceM } from '../../core/kernel/index.ts';
import type { JobPlan } from '../../core/plan/index.ts';
import { type FlagTape, findFlagTapes } from '../../core/sheet/index.ts';
import { formatTape } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useOpenYard } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';

/** A bar between two ids that never parts them: a line may break after a bar even before a fixed space. */
const UNBROKEN_BAR = '\u00a0|\u2060\u00a0';

/** The lines to flag before spraying: where to lay the tape for each end. */
export function CutLineLedger({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  const { yard } = useOpenYard();
  const { cutLines } = plan.ground;
  return (
    <PagePart title="Flags" aside="by tape, along the edge">
      <Ledger
        caption="Where to flag the cut lines"
        columns={[
          { head: 'line', align: 'left' },
          { head: 'one end', align: 'left' },
          { head: 'other end', align: 'left' },
          { head: 'length', align: 'right' },
        ]}
        rows={cutLines.map((line) => {
          const [from, to] = findFlagTapes(yard, line, cutLines);
          return {
            key: `${line.between.join()} ${line.from.xM} ${line.from.yM}`,
            cells: [
              line.between.join(UNBROKEN_BAR),
              tapeWords(from, units),
              tapeWords(to, units),
              formatTape(distanceM(line.from, line.to), units),
            ],
          };
        })}
      />
    </PagePart>
  );
}

/** "6 ft 2 in from NW corner, back lawn"; an end that meets nothing straight is read off the sketch. */
function tapeWords(tape: FlagTape | undefined, units: UnitSystem): string {
  if (tape === undefined) return 'see the sketch';
  const corner = tape.outline === null ? tape.cornerName : `${tape.cornerName}, ${tape.outline.name}`;
  return `${formatTape(tape.alongM, units)} from ${corner}`;
}
