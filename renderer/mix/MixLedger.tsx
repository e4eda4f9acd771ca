import type { SheetFigures } from '../../core/sheet/index.ts';
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
  const { productUnit, carrierUnit, loads } = figures;
  const carrierHead = applicator.kind === 'tank' ? 'water' : 'water through the hose';
  const dial = loads[0]?.dialRatio ?? null;
  return (
    <PagePart
      title="Loads"
      aside={dial === null ? 'product and water in the tank' : `dial at ${formatDial(dial, units)}`}
    >
      <Ledger
        caption="Product and water for each load"
        columns={[
          { head: 'load', align: 'left' },
          { head: 'section', align: 'left' },
          {
            head: `${figures.isMixedBySurface ? 'surface' : 'treated'} ${areaFigure(0, units).unit}`,
            align: 'right',
          },
          { head: `product ${productUnit}`, align: 'right' },
          { head: `${carrierHead} ${carrierUnit}`, align: 'right' },
        ]}
        rows={loads.map((load) => ({
          key: load.section.id,
          selected: selection?.kind === 'section' && selection.id === load.section.id,
          onSelect: () => view.select({ kind: 'section', id: load.section.id }),
          cells: [
            `${load.load}`,
            load.section.id,
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
