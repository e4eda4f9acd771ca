import { useMemo } from 'react';
import type { UnitSystem } from '../../core/yard.ts';
import {
  type SigmaWorking,
  sigmaTable,
  sigmaWords,
  sigmaWorking,
  tightenWords,
} from '../../core/zones/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';

/** What would tighten the zone's ± most; takes the outline in hand that holds it. */
export function TightenLine({ zoneId }: { readonly zoneId: string }) {
  const { view } = useBook();
  const { yard, resolved } = useOpenYard();
  const zone = resolved?.zones.find((row) => row.zoneId === zoneId);
  const sigma = useMemo(() => zone && sigmaWorking(zone, yard), [zone, yard]);
  if (sigma === undefined) return null;
  const { tightener, unstated } = sigma;
  const units = yard.details.unitSystem;
  if (tightener === null) {
    if (unstated.length === 0) return null;
    return <p className="said">{sigmaWords(sigma, units)[0]}.</p>;
  }
  const words = tightenWords(tightener, units);
  const elsewhere = tightener.kind !== 'scale' && tightener.outlineId !== zoneId ? tightener : undefined;
  return (
    <p className="said">
      {words}
      {elsewhere && (
        <button
          type="button"
          className="do"
          onClick={() => view.select({ kind: 'outline', id: elsewhere.outlineId })}
        >
          take {elsewhere.name} in hand
        </button>
      )}
    </p>
  );
}

/** How the ± comes about, part by part. */
export function SigmaLedger({ sigma, units }: { readonly sigma: SigmaWorking; readonly units: UnitSystem }) {
  const [heads, ...rows] = sigmaTable(sigma, units);
  const sum = rows.pop();
  return (
    <>
      {heads && sum && (
        <Ledger
          caption="What the ± comes from"
          columns={heads.map((head, i) => ({ head, align: i === 0 ? 'left' : 'right' }))}
          rows={rows.map((cells, i) => ({ key: `${i}`, cells }))}
          sum={sum}
        />
      )}
      {sigmaWords(sigma, units).map((words) => (
        <p key={words} className="said">
          {words}
        </p>
      ))}
    </>
  );
}
