import { formatNumber } from '../../core/units/index.ts';
import { useBook, useOpenYard, usePlanState } from '../app/context.ts';
import type { PlanState } from '../planning/Planner.ts';
import { jobInHand } from './jobInHand.ts';
import { ProblemLines } from './ProblemLines.tsx';

/** How the plan stands: what it lacks, what is wrong, or that it is old or quickly made and a newer one is looked for. */
export function PlanNews() {
  const { planner } = useBook();
  const { yard } = useOpenYard();
  const state = usePlanState();
  const units = yard.details.unitSystem;
  if (!jobInHand(yard)) {
    return (
      <p className="said">
        The plan comes of itself as soon as there is a product and a sprayer on the Mix page.
      </p>
    );
  }
  const { plan, problems, stale, isFirst, progress } = state;
  const told = stale ? [] : [...problems, ...(plan?.ground.warnings ?? [])];
  const isUnderWay = progress !== null;
  return (
    <>
      <div aria-live="polite">
        <ProblemLines problems={told} units={units} />
      </div>
      {(stale || problems.length === 0) && (
        <p className="said plan-standing">
          <span aria-live="polite">{standingWords(state)}</span>
          {isUnderWay && progress > 0 && <span>{formatNumber(100 * progress, 0)} %</span>}
          {(stale || isFirst) && (
            <button type="button" className="do" onClick={isUnderWay ? planner.stop : planner.goOn}>
              {isUnderWay ? 'stop' : 'go on'}
            </button>
          )}
        </p>
      )}
    </>
  );
}

/** The line is always there, so that the figures under it do not jump with every change. */
function standingWords({ plan, stale, isFirst, progress }: PlanState): string {
  if (isFirst) {
    return progress === null
      ? 'First plan; a better one was not looked for'
      : 'First plan, still looking for a better one';
  }
  if (!stale) return 'Up to date with the ground and the job';
  const old = plan === null ? '' : 'From before the change; ';
  return progress === null ? `${old}the new plan was stopped` : `${old}working out the new plan`;
}
