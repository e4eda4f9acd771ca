import { type FillFigures, sectionsOfFill, type SheetFigures } from '../../core/sheet/index.ts';
import { areaFigure, formatDial, volumeFigure } from '../../core/units/index.ts';
import type { Applicator, UnitSystem } from '../../core/yard.ts';
import { useBook, useViewState } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { VolumeCell } from '../shared/VolumeCell.tsx';
import { PagePart } from '../shared/PageHead.tsx';

interface MixLedgerProps {
  readonly figures: SheetFigures;
  readonly applicator: Applicator;
  readonly units: UnitSystem;
}

/** What goes into each load, and the sums; the same rounded figures as on the sheet, so the two never differ. */
export function MixLedger({ figures, applicator, units }: MixLedgerProps) {
  const { view } = useBook();
  const { selection } = useViewState();
  const selectedId = selection?.kind === 'section' ? selection.id : null;
  const { productUnit, carrierUnit, fills } = figures;
  const carrierHead = applicator.kind === 'tank' ? 'water' : 'water through the hose';
  const dial = fills[0]?.dialRatio ?? null;
  return (
    <PagePart
      title="Loads"
      aside={dial === null ? 'product and water in the tank' : `dial at ${formatDial(dial, units)}`}
    >
      <Ledger
        caption="Product and water for each load"
        columns={[
          { head: 'load', align: 'left' },
          { head: 'sections', align: 'left' },
          {
            head: `${figures.isMixedBySurface ? 'surface' : 'treated'} ${areaFigure(0, units).unit}`,
            align: 'right',
          },
          { head: `product ${productUnit}`, align: 'right' },
          { head: `${carrierHead} ${carrierUnit}`, align: 'right' },
        ]}
        rows={fills.map((load) => ({
          key: `${load.number}`,
          selected: load.parts.some(({ section }) => section.id === selectedId),
          onSelect: () => view.select({ kind: 'section', id: nextOf(load, selectedId) }),
          cells: [
            `${load.number}`,
            sectionsOfFill(load),
            areaFigure(load.mixedM2, units).text,
            <VolumeCell
              key="product"
              volumeL={load.productL}
              sigmaL={load.productSigmaL}
              units={units}
              unit={productUnit}
            />,
            volumeFigure(load.carrierL, units, carrierUnit).text,
          ],
        }))}
        sum={[
          'all',
          '',
          areaFigure(figures.zoneSum.amountsM2, units).text,
          volumeFigure(figures.productTotalL, units, productUnit).text,
          volumeFigure(figures.carrierTotalL, units, carrierUnit).text,
        ]}
      />
    </PagePart>
  );
}

/** Choosing a load again goes on to the next section it is for. */
function nextOf({ parts }: FillFigures, selectedId: string | null): string {
  const place = parts.findIndex(({ section }) => section.id === selectedId);
  return parts[(place + 1) % parts.length]?.section.id ?? '';
}
