import { areaFigure } from '../../core/units/index.ts';
import {
  balanceWords,
  type PrintedAreas,
  printedSum,
  printedZones,
  unstatedWords,
} from '../../core/zones/index.ts';
import { useBook, useOpenYard, useViewState } from '../app/context.ts';
import { AreaCell } from '../shared/AreaCell.tsx';
import { Ledger } from '../shared/Ledger.tsx';

/** Every zone's balance: gross less what is cut out or another zone’s is turf; turf less what is left untreated is treated. */
export function ZoneLedger() {
  const { view } = useBook();
  const { selection } = useViewState();
  const { yard, resolved } = useOpenYard();
  const units = yard.details.unitSystem;
  const unit = areaFigure(0, units).unit;
  const zones = resolved ? printedZones(resolved, units) : [];
  const all = zones.length > 0 ? printedSum(zones) : null;
  const unstated = unstatedWords(zones);
  const isShared = all !== null && all.ownedByOtherM2 > 0;
  const figures = (area: PrintedAreas) => [
    areaFigure(area.grossM2, units).text,
    areaFigure(area.cutOutM2, units).text,
    ...(isShared ? [areaFigure(area.ownedByOtherM2, units).text] : []),
    areaFigure(area.turfM2, units).text,
    <AreaCell key="treated" areaM2={area.treatedM2} sigmaM2={area.sigmaM2} units={units} />,
  ];
  return (
    <>
      <Ledger
        caption={`Zones and their areas in ${unit}`}
        columns={[
          { head: 'zone', align: 'left' },
          { head: `gross ${unit}`, align: 'right' },
          { head: 'cut out', align: 'right' },
          ...(isShared ? [{ head: 'elsewhere', align: 'right' } as const] : []),
          { head: 'turf', align: 'right' },
          { head: 'treated', align: 'right' },
        ]}
        rows={zones.map((zone) => ({
          key: zone.zoneId,
          selected: selection?.kind === 'outline' && selection.id === zone.zoneId,
          onSelect: () => view.select({ kind: 'outline', id: zone.zoneId }),
          cells: [zone.name, ...figures(zone)],
        }))}
        sum={all ? ['all', ...figures(all)] : undefined}
      />
      {all && <p className="said">{balanceWords(all, units)}</p>}
      {unstated !== undefined && <p className="said">{unstated}: no area is exact.</p>}
    </>
  );
}
