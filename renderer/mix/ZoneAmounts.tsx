import type { SheetFigures } from '../../core/sheet/index.ts';
import { areaFigure, volumeFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useBook, useViewState } from '../app/context.ts';
import { AreaCell } from '../shared/AreaCell.tsx';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { loadsOfZone } from './loadsOfZone.ts';

/** Product per zone: the sum of its loads as shown, so that zones, loads and job agree to the last digit. */
export function ZoneAmounts({
  figures,
  units,
}: {
  readonly figures: SheetFigures;
  readonly units: UnitSystem;
}) {
  const { view } = useBook();
  const { selection } = useViewState();
  return (
    <PagePart title="Zones">
      <Ledger
        caption="Treated area, loads and product for each zone"
        columns={[
          { head: 'zone', align: 'left' },
          { head: `treated ${areaFigure(0, units).unit}`, align: 'right' },
          { head: 'loads', align: 'right' },
          { head: `product ${figures.productUnit}`, align: 'right' },
        ]}
        rows={figures.zones.map((zone) => ({
          key: zone.zoneId,
          selected: selection?.kind === 'outline' && selection.id === zone.zoneId,
          onSelect: () => view.select({ kind: 'outline', id: zone.zoneId }),
          cells: [
            zone.name,
            <AreaCell key="area" areaM2={zone.treatedM2} sigmaM2={zone.sigmaM2} units={units} />,
            `${loadsOfZone(figures, zone.zoneId).loads}`,
            volumeFigure(loadsOfZone(figures, zone.zoneId).productL, units, figures.productUnit).text,
          ],
        }))}
        sum={[
          'all',
          <AreaCell
            key="area"
            areaM2={figures.zoneSum.treatedM2}
            sigmaM2={figures.zoneSum.sigmaM2}
            units={units}
          />,
          `${figures.loads.length}`,
          volumeFigure(figures.productTotalL, units, figures.productUnit).text,
        ]}
      />
    </PagePart>
  );
}
