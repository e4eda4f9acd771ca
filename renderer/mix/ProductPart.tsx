import { makeEdit, putRow } from '../../core/edits/index.ts';
import { ok } from '../../core/result.ts';
import { carrierFigure, parseCarrier, parseRate, rateFigure } from '../../core/units/index.ts';
import type { Product } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { parseName } from '../shared/parseName.ts';

const USES = [
  ['fertilizer', 'fertilizer'],
  ['pesticide', 'pesticide'],
  ['other', 'other'],
] as const;

/** What the label of the product in hand says. Every figure is copied from the label by the person. */
export function ProductPart({ product }: { readonly product: Product }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const put = (label: string, part: Partial<Product>): void =>
    session.edit(makeEdit(label, putRow(yard, 'products', { ...product, ...part })));
  const rate = rateFigure(product.rateLPerM2, units);
  const most = product.mostRateLPerM2 === null ? null : rateFigure(product.mostRateLPerM2, units);
  const least = product.leastCarrierLPerM2 === null ? null : carrierFigure(product.leastCarrierLPerM2, units);
  const carrierUnit = carrierFigure(0, units).unit;

  return (
    <PagePart title="Product" aside="copied from its label, which governs">
      <FigureField
        label="name"
        size="wide"
        shown={product.name}
        units={units}
        parse={parseName}
        onCommit={(name) => put(`rename ${product.name}`, { name })}
      />
      <ChoiceField
        label="use"
        value={product.use}
        choices={USES}
        onChoose={(use) => put(`change the use of ${product.name}`, { use })}
      />
      <FigureField
        label="rate"
        shown={rate.text}
        unit={rate.unit}
        units={units}
        parse={(typed) => parseRate(typed, 'rate', rate.unit)}
        onCommit={(rateLPerM2) => put(`change the rate of ${product.name}`, { rateLPerM2 })}
      />
      <FigureField
        label="most the label allows"
        shown={most?.text ?? ''}
        unit={rate.unit}
        note={most === null ? 'none stated' : undefined}
        units={units}
        parse={(typed) =>
          typed.trim() === '' ? ok<number | null>(null) : parseRate(typed, 'most the label allows', rate.unit)
        }
        onCommit={(mostRateLPerM2) => put(`change the limit of ${product.name}`, { mostRateLPerM2 })}
      />
      <FigureField
        label="least carrier the label asks for"
        shown={least?.text ?? ''}
        unit={carrierUnit}
        note={least === null ? 'none stated' : undefined}
        units={units}
        parse={(typed) =>
          typed.trim() === '' ? ok<number | null>(null) : parseCarrier(typed, 'least carrier', carrierUnit)
        }
        onCommit={(leastCarrierLPerM2) =>
          put(`change the carrier of ${product.name}`, { leastCarrierLPerM2 })
        }
      />
    </PagePart>
  );
}
