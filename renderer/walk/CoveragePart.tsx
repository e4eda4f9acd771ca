import type { JobPlan } from '../../core/plan/index.ts';
import { formatArea, formatPercent } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { PagePart } from '../shared/PageHead.tsx';

/** How the swaths cover the ground, measured on the plan and not assumed. */
export function CoveragePart({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  const { coverage } = plan.ground;
  const rows = [
    ['once', coverage.onceM2],
    ['twice or more', coverage.twiceM2],
    ['missed', coverage.missedM2],
    ['thrown outside', coverage.outsideM2],
  ] as const;
  return (
    <PagePart title="Ground covered" aside="measured on the plan">
      {rows.map(([words, areaM2]) => (
        <div className="line" key={words}>
          <span>{words}</span>
          <span className="line-value">
            <span className="note">{formatArea(areaM2, units)}</span>
            <span className="share">{formatPercent(areaM2 / coverage.treatedM2)}</span>
          </span>
        </div>
      ))}
    </PagePart>
  );
}
