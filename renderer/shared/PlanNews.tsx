import { formatNumber } from '../../core/units/index.ts';
import { useOpenYard, usePlanState } from '../app/context.ts';
import { jobInHand } from './jobInHand.ts';
import { ProblemLines } from './ProblemLines.tsx';

/** One line on how the plan stands: what it lacks, what is wrong, or that a newer one is being worked out. */
export function PlanNews() {
  const { yard } = useOpenYard();
  const { plan, problems, stale, progress } = usePlanState();
  const units = yard.details.unitSystem;
  if (!jobInHand(yard)) {
    return (
      <p className="said">
        The plan comes of itself as soon as there is a product and a sprayer on the Mix page.
      </p>
    );
  }
  const told = stale ? [] : [...problems, ...(plan?.ground.warnings ?? [])];
  return (
    <div aria-live="polite">
      <ProblemLines problems={told} units={units} />
      {stale && (
        <p className="said">
          {plan === null
            ? 'Working out the plan'
            : 'The ground has changed; these figures are the last plan’s'}
          {progress !== null && progress > 0 && `, ${formatNumber(100 * progress, 0)} %`}
        </p>
      )}
    </div>
  );
}
