import { cautionsFor } from '../../core/products/index.ts';
import type { Applicator, Product } from '../../core/yard.ts';
import { useOpenYard } from '../app/context.ts';
import { PagePart } from '../shared/PageHead.tsx';

interface CautionsPartProps {
  readonly product: Product;
  readonly applicator: Applicator;
}

/** The cautions that apply to this product, this sprayer and this yard, each with where it comes from. */
export function CautionsPart({ product, applicator }: CautionsPartProps) {
  const { yard } = useOpenYard();
  return (
    <PagePart title="Before you begin" aside="the label governs">
      <ul className="cautions">
        {cautionsFor(product, applicator, yard).map((caution) => (
          <li key={caution.id}>
            {caution.text} <span className="note">{caution.source}</span>
          </li>
        ))}
      </ul>
    </PagePart>
  );
}
