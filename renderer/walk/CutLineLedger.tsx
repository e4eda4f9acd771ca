import type { JobPlan } from '../../core/plan/index.ts';
import { formatTape } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';

/** The lines to flag before spraying. */
export function CutLineLedger({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  return (
    <PagePart title="Flags" aside="a flag at each end of each line">
      <Ledger
        caption="Cut lines between sections"
        columns={[
          { head: 'line', align: 'left' },
          { head: 'length', align: 'right' },
        ]}
        rows={plan.ground.cutLines.map((line) => ({
          key: `${line.between.join()} ${line.from.xM} ${line.from.yM}`,
          cells: [
            line.between.join(' | '),
            formatTape(Math.hypot(line.to.xM - line.from.xM, line.to.yM - line.from.yM), units),
          ],
        }))}
      />
    </PagePart>
  );
}
