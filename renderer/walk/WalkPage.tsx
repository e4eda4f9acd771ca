import { useOpenYard, usePlanState } from '../app/context.ts';
import { jobInHand } from '../shared/jobInHand.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { YardHead } from '../shared/YardHead.tsx';
import { PlanNews } from '../shared/PlanNews.tsx';
import { CoveragePart } from './CoveragePart.tsx';
import { CutsPart } from './CutsPart.tsx';
import { CutLineLedger } from './CutLineLedger.tsx';
import { HosePart } from './HosePart.tsx';
import { LanesPart } from './LanesPart.tsx';
import { PolicyPart } from './PolicyPart.tsx';
import { PassLedger } from './PassLedger.tsx';
import { SectionLedger } from './SectionLedger.tsx';
import { StartPart } from './StartPart.tsx';
import { SectionWorkingPart } from './SectionWorkingPart.tsx';

/** Where to walk: sections, the lines to flag, the lanes, and how well they cover the ground. */
export function WalkPage() {
  const { yard } = useOpenYard();
  const { plan } = usePlanState();
  const units = yard.details.unitSystem;
  const job = jobInHand(yard);
  const applicator = yard.applicators.find(({ id }) => id === job?.applicatorId);

  return (
    <>
      <YardHead title="Walk" about={job?.name} />
      <PlanNews />
      {job && <PolicyPart job={job} ground={plan?.ground ?? null} />}
      {job && <LanesPart job={job} ground={plan?.ground ?? null} />}
      {job && <StartPart job={job} />}
      {job && <HosePart job={job} ground={plan?.ground ?? null} />}
      {plan && (
        <PagePart title="Sections" aside="in walking order">
          <SectionLedger plan={plan} units={units} />
          <SectionWorkingPart plan={plan} />
        </PagePart>
      )}
      {job && <CutsPart job={job} ground={plan?.ground ?? null} />}
      {plan && plan.ground.cutLines.length > 0 && <CutLineLedger plan={plan} units={units} />}
      {plan && applicator && <PassLedger plan={plan} kind={applicator.kind} units={units} />}
      {plan && <CoveragePart plan={plan} units={units} />}
    </>
  );
}
