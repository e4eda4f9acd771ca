import { makeEdit, putRow } from '../../core/edits/index.ts';
import type { Job } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { PagePart } from '../shared/PageHead.tsx';

/** Which zones the job takes in, and with which of the yard's products and sprayers. */
export function JobPart({ job }: { readonly job: Job }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const zones = yard.outlines.filter((outline) => outline.kind === 'zone');
  const put = (label: string, part: Partial<Job>): void =>
    session.edit(makeEdit(label, putRow(yard, 'jobs', { ...job, ...part })));

  function turn(zoneId: string): void {
    const now = job.zoneIds ?? zones.map((zone) => zone.id);
    const next = now.includes(zoneId) ? now.filter((id) => id !== zoneId) : [...now, zoneId];
    put('choose zones', { zoneIds: next.length === zones.length ? null : next });
  }

  return (
    <PagePart title="Job" aside="what is done in one go">
      {yard.products.length > 1 && (
        <ChoiceField
          label="product"
          value={job.productId}
          choices={yard.products.map((product) => [product.id, product.name] as const)}
          onChoose={(productId) => put('choose product', { productId })}
        />
      )}
      {yard.applicators.length > 1 && (
        <ChoiceField
          label="sprayer"
          value={job.applicatorId}
          choices={yard.applicators.map((applicator) => [applicator.id, applicator.name] as const)}
          onChoose={(applicatorId) => put('choose sprayer', { applicatorId })}
        />
      )}
      <fieldset className="do-row">
        <legend className="unseen">zones of this job</legend>
        <span aria-hidden="true">zones</span>
        {zones.map((zone) => (
          <label key={zone.id} className="tick">
            <input
              type="checkbox"
              checked={job.zoneIds === null || job.zoneIds.includes(zone.id)}
              onChange={() => turn(zone.id)}
            />
            {zone.name}
          </label>
        ))}
        {zones.length === 0 && <span>none drawn yet</span>}
      </fieldset>
    </PagePart>
  );
}
