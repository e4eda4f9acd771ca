import { fitScale, type LengthFit } from '../../core/frame/index.ts';
import { formatLength, formatNumber } from '../../core/units/index.ts';
import type { KnownLength, Picture, UnitSystem } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { rescaleEdit } from '../drawing/index.ts';
import { Ledger } from '../shared/Ledger.tsx';

interface KnownLengthsProps {
  readonly picture: Picture;
  readonly lengths: readonly KnownLength[];
}

/** The lengths a picture is scaled by, what it makes of each, and the one the others speak against. */
export function KnownLengths({ picture, lengths }: KnownLengthsProps) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const fit = fitScale(lengths, picture.cornerSigmaM);
  if (!fit.ok) return null;

  function takeAway(at: number): void {
    const left = lengths.filter((_, i) => i !== at);
    const edit = rescaleEdit(yard, picture, left, `take a length off ${picture.name}`);
    if (!edit.ok) return;
    session.edit(edit.value);
    // The foot line may still speak of the length that is gone.
    view.input({ kind: 'take', tool: { kind: 'select' } });
  }

  return (
    <Ledger
      caption={`Known lengths of ${picture.name}`}
      columns={[
        { head: 'known length', align: 'left' },
        { head: 'on the picture', align: 'right' },
        { head: 'off by', align: 'right' },
        { head: '', align: 'right' },
      ]}
      rows={fit.value.lengths.map((length, i) => ({
        key: `${i}`,
        cells: [
          <>
            {formatLength(length.lengthM, units)}
            {i === fit.value.worst && <strong className="needs-you"> worst</strong>}
          </>,
          formatLength(length.onPictureM, units),
          offBy(length, units),
          <button
            key="away"
            type="button"
            className="do"
            aria-label={`take away the length of ${formatLength(length.lengthM, units)}`}
            onClick={() => takeAway(i)}
          >
            take away
          </button>,
        ],
      }))}
    />
  );
}

/** "+0.42 ft, +1.7%": above zero where the picture makes it too long. */
function offBy({ residualM, relative }: LengthFit, units: UnitSystem): string {
  return `${signed(formatLength(residualM, units))}, ${signed(`${formatNumber(relative * 100, 1)}%`)}`;
}

function signed(text: string): string {
  return /^[−-]/.test(text) || !/[1-9]/.test(text) ? text : `+${text}`;
}
