import { AMOUNTS_BY_WORDS } from '../../core/slope/index.ts';
import type { SheetFigures } from '../../core/sheet/index.ts';
import { areaFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { unstatedWords } from '../../core/zones/index.ts';
import { useBook, useViewState } from '../app/context.ts';
import { AreaCell } from '../shared/AreaCell.tsx';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { VolumeCell } from '../shared/VolumeCell.tsx';
import { loadsOfZone } from './loadsOfZone.ts';

/** Product per zone: the sum of its sections as shown, so that zones, loads and job agree to the last digit. */
export function ZoneAmounts({
  figures,
  units,
}: {
  readonly figures: SheetFigures;
  readonly units: UnitSystem;
}) {
  const { view } = useBook();
  const { selection } = useViewState();
  const unstated = unstatedWords(figures.zones);
  return (
    <PagePart title="Zones" aside={figures.isMixedBySurface && `amounts from ${AMOUNTS_BY_WORDS.surface}`}>
      <Ledger
        caption="Treated area, loads and product for each zone"
        columns={[
          { head: 'zone', align: 'left' },
          {
            head: `${figures.isMixedBySurface ? 'surface' : 'treated'} ${areaFigure(0, units).unit}`,
            align: 'right',
          },
          { head: 'loads', align: 'right' },
          { head: `product ${figures.productUnit}`, align: 'right' },
        ]}
        rows={figures.zones.map((zone) => ({
          key: zone.zoneId,
          selected: selection?.kind === 'outline' && selection.id === zone.zoneId,
          onSelect: () => view.select({ kind: 'outline', id: zone.zoneId }),
          cells: [
            zone.name,
            <AreaCell key="area" areaM2={zone.amountsM2} sigmaM2={zone.amountsSigmaM2} units={units} />,
            `${loadsOfZone(figures, zone.zoneId).loads}`,
            <VolumeCell
              key="product"
              volumeL={loadsOfZone(figures, zone.zoneId).productL}
              sigmaL={zone.productSigmaL}
              units={units}
              unit={figures.productUnit}
            />,
          ],
        }))}
        sum={[
          'all',
          <AreaCell
            key="area"
            areaM2={figures.zoneSum.amountsM2}
            sigmaM2={figures.zoneSum.amountsSigmaM2}
            units={units}
          />,
          `${figures.fills.length}`,
          <VolumeCell
            key="product"
            volumeL={figures.productTotalL}
            sigmaL={figures.zoneSum.productSigmaL}
            units={units}
            unit={figures.productUnit}
          />,
        ]}
      />
      {unstated !== undefined && <p className="said">{unstated}: no area is exact.</p>}
    </PagePart>
  );
}
