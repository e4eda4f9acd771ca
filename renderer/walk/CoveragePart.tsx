import type { JobPlan } from '../../core/plan/index.ts';
import { coverageFigures, sheetFigures } from '../../core/sheet/index.ts';
import { formatArea, formatPercent } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { PagePart } from '../shared/PageHead.tsx';

/** How the swaths cover the ground, measured on the plan and not assumed; the same rounded figures as on the sheet. */
export function CoveragePart({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  const figures = coverageFigures(plan, sheetFigures(plan, units).zoneSum.treatedM2, units);
  const rows = [
    ['once', figures.once],
    ['twice or more', figures.twice],
    ['missed', figures.missed],
    ['thrown outside', figures.outside],
  ] as const;
  return (
    <PagePart title="Ground covered" aside="measured on the plan">
      {rows.map(([words, { areaM2, share }]) => (
        <div className="line" key={words}>
          <span>{words}</span>
          <span className="line-value">
            <span className="note">{formatArea(areaM2, units)}</span>
            <span className="share">{formatPercent(share)}</span>
          </span>
        </div>
      ))}
    </PagePart>
  );
}
