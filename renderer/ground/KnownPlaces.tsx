import { placeByPointsEdit } from '../../core/edits/index.ts';
import { formatPlace, scaleMisfit } from '../../core/earth/index.ts';
import { formatLength } from '../../core/units/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import type { PlaceYardState } from '../drawing/index.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';

/** The points pointed out so far with their places, and how well the yard fits them. */
export function KnownPlaces({ drawing }: { readonly drawing: PlaceYardState }) {
  const { view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const { known } = drawing;
  if (known.length === 0) {
    return (
      <p className="said">Click a corner or mark on the sketch, then type its latitude and longitude.</p>
    );
  }
  const placed = known.length < 2 ? null : placeByPointsEdit(yard, known);
  const misfit = placed?.ok ? scaleMisfit(placed.value.ratio, 'the typed places') : undefined;
  const problems = placed?.ok === false ? placed.problems : misfit ? [misfit] : [];
  return (
    <>
      <Ledger
        caption="Points with known places"
        columns={[
          { head: '', align: 'left' },
          { head: 'place', align: 'left' },
          { head: 'off by', align: 'right' },
          { head: 'again', align: 'right' },
        ]}
        rows={known.map(({ at, place }, i) => ({
          key: `${at.xM} ${at.yM}`,
          cells: [
            `${i + 1}`,
            formatPlace(place),
            placed?.ok ? formatLength(placed.value.residualsM[i] ?? 0, units) : '',
            <button
              key="again"
              type="button"
              className="do"
              aria-label={`type the place of point ${i + 1} again`}
              onClick={() => view.input({ kind: 'click', at, reachM: 0, free: true })}
            >
              retype
            </button>,
          ],
        }))}
      />
      <ProblemLines problems={problems} units={units} />
      <div className="do-row">
        <button
          type="button"
          className="do"
          disabled={!placed?.ok}
          onClick={() => view.input({ kind: 'typed', text: '' })}
        >
          place the yard by these
        </button>
      </div>
    </>
  );
}
