import { makeEdit, putRow } from '../../core/edits/index.ts';
import { headingDegOf } from '../../core/plan/index.ts';
import { ok } from '../../core/result.ts';
import { formatAngle, parseAngle } from '../../core/units/index.ts';
import type { Job } from '../../core/yard.ts';
import { useBook, useOpenYard, usePlanState } from '../app/context.ts';
import { FigureField } from '../shared/FigureField.tsx';
import { jobInHand } from '../shared/jobInHand.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { YardHead } from '../shared/YardHead.tsx';
import { PlanNews } from '../shared/PlanNews.tsx';
import { CoveragePart } from './CoveragePart.tsx';
import { CutLineLedger } from './CutLineLedger.tsx';
import { SectionLedger } from './SectionLedger.tsx';
import { SectionWorkingPart } from './SectionWorkingPart.tsx';

/** Where to walk: sections, the lines to flag, the lanes, and how well they cover the ground. */
export function WalkPage() {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const { plan } = usePlanState();
  const units = yard.details.unitSystem;
  const job = jobInHand(yard);
  const headingDeg = job ? headingDegOf(job.heading) : null;
  const put = (row: Job, part: Partial<Job>): void =>
    session.edit(makeEdit('turn the lanes', putRow(yard, 'jobs', { ...row, ...part })));

  return (
    <>
      <YardHead title="Walk" about={job?.name} />
      <PlanNews />
      {plan && <SectionLedger plan={plan} units={units} />}
      {plan && <SectionWorkingPart plan={plan} />}
      {plan && plan.ground.cutLines.length > 0 && <CutLineLedger plan={plan} units={units} />}
      {job && (
        <PagePart title="Lanes" aside="leave empty and the plan picks the bearing">
          <FigureField
            label="lanes run at a bearing of"
            shown={headingDeg === null ? '' : formatAngle(headingDeg)}
            note={headingDeg === null ? 'picked by the plan' : 'from north, clockwise'}
            units={units}
            parse={(typed) =>
              typed.trim() === '' ? ok<number | null>(null) : parseAngle(typed, 'bearing of the lanes')
            }
            onCommit={(deg) =>
              put(job, { heading: deg === null ? { kind: 'best' } : { kind: 'picked', deg } })
            }
          />
        </PagePart>
      )}
      {plan && <CoveragePart plan={plan} units={units} />}
    </>
  );
}
