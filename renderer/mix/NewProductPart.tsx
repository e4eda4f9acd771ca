import { makeEdit, putRow } from '../../core/edits/index.ts';
import { parseRate, rateFigure } from '../../core/units/index.ts';
import type { Product } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { parseName } from '../shared/parseName.ts';
import { withFirstJob } from './firstJob.ts';
import { NewRow } from './NewRow.tsx';

/** A product that is not on this yard's shelf yet. */
export function NewProductPart({ makeId }: { readonly makeId: () => string }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const { unit } = rateFigure(0, units);
  const fields = [
    { key: 'product-name', label: 'name', unit: '', example: 'as on the label', parse: parseName },
    {
      key: 'product-rate',
      label: 'label rate',
      unit,
      example: units === 'us' ? '3' : '95',
      parse: (typed: string) => parseRate(typed, 'label rate', unit),
    },
  ];

  function add(typed: Readonly<Record<string, string>>): void {
    const name = parseName(typed['product-name'] ?? '');
    const rate = parseRate(typed['product-rate'] ?? '', 'label rate', unit);
    if (!name.ok || !rate.ok) return;
    const product: Product = {
      id: makeId(),
      name: name.value,
      use: 'other',
      rateLPerM2: rate.value,
      mostRateLPerM2: null,
      leastCarrierLPerM2: null,
    };
    session.edit(
      makeEdit(
        `add ${product.name}`,
        putRow(yard, 'products', product),
        ...withFirstJob(yard, { product }, makeId),
      ),
    );
  }

  return (
    <PagePart title="A product" aside="liquid, by its label">
      <NewRow fields={fields} units={units} addWords="add this product" onAdd={add} />
    </PagePart>
  );
}
