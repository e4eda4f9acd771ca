import { useState } from 'react';
import { formatNumber, lengthFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { type RingWorking, ringSumWords } from '../../core/zones/index.ts';
import { Ledger, type LedgerRow } from './Ledger.tsx';
import { MOST_CORNERS_SHOWN, type NumberedCorner, shownCorners } from './shownCorners.ts';

interface RingProps {
  readonly ring: RingWorking;
  readonly units: UnitSystem;
  readonly name: string;
  /** A ring of more corners is folded. */
  readonly most?: number;
}

/** A ring corner by corner, in two narrow ledgers rather than one that is wider than the page. */
export function RingLedgers({ ring, units, name, most = MOST_CORNERS_SHOWN }: RingProps) {
  const [all, setAll] = useState(false);
  const length = lengthFigure(0, units).unit;
  const corner = (value: number): string => formatNumber(value, ring.cornerDecimals);
  const product = (value: number): string => formatNumber(value, ring.productDecimals);
  const count = ring.corners.length;
  const rows = shownCorners(ring, all ? Infinity : most);
  return (
    <>
      <Ledger
        caption={`Corners of the ${name}`}
        columns={[
          { head: `${name}: corner`, align: 'left' },
          { head: `x east ${length}`, align: 'right' },
          { head: `y north ${length}`, align: 'right' },
        ]}
        rows={withGap(rows, ({ east, north }) => [corner(east), corner(north)])}
      />
      <Ledger
        caption={`Products of the ${name}`}
        columns={[
          { head: 'i', align: 'left' },
          { head: 'xᵢ yᵢ₊₁', align: 'right' },
          { head: 'xᵢ₊₁ yᵢ', align: 'right' },
        ]}
        rows={withGap(rows, ({ eastByNextNorth, nextEastByNorth }) => [
          product(eastByNextNorth),
          product(nextEastByNorth),
        ])}
        sum={['Σ', product(ring.eastByNextNorthSum), product(ring.nextEastByNorthSum)]}
      />
      {count > most && (
        <div className="do-row">
          <button type="button" className="do" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? 'fold the corners' : `show all ${formatNumber(count, 0)} corners`}
          </button>
          {!all && (
            <span className="note">
              {formatNumber(count - rows.length, 0)} folded away; the sums and the copy have them all
            </span>
          )}
        </div>
      )}
      <p className="said">{ringSumWords(ring, units)}</p>
    </>
  );
}

/** The corners as rows, with a row of dots where some are folded away. */
function withGap(
  corners: readonly NumberedCorner[],
  cells: (corner: NumberedCorner) => readonly string[],
): readonly LedgerRow[] {
  return corners.flatMap((corner, i) => {
    const row = { key: `${corner.number}`, cells: [corner.number, ...cells(corner)] };
    const before = corners[i - 1]?.number ?? 0;
    return before + 1 === corner.number ? [row] : [{ key: 'gap', cells: ['⋮', '⋮', '⋮'] }, row];
  });
}
