import { makeEdit, putRow, removeRow } from '../../core/edits/index.ts';
import { AMOUNTS_BY_WORDS, elevationFacts, readAnew } from '../../core/slope/index.ts';
import { formatLength, formatNumber, type UnitSystem } from '../../core/units/index.ts';
import type { Elevation, YardDetails } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { PagePart } from '../shared/PageHead.tsx';

type AmountsBy = YardDetails['amountsBy'];

const CHOICES = Object.entries(AMOUNTS_BY_WORDS) as [AmountsBy, string][];

/** Which area amounts are worked out from, once for the yard, and the elevation grids zones may slope by. */
export function SlopeGroundPart() {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const { details, elevations } = yard;
  return (
    <PagePart title="Slope" aside="of each zone: on the Outlines page">
      <ChoiceField<AmountsBy>
        label="amounts are worked out from"
        value={details.amountsBy}
        choices={CHOICES}
        onChoose={(amountsBy) =>
          session.edit(
            makeEdit(
              `amounts from ${AMOUNTS_BY_WORDS[amountsBy]}`,
              putRow(yard, 'details', { ...details, amountsBy }),
            ),
          )
        }
      />
      <p className="said">
        On a 20% slope the surface is 2% larger than the map shows it; on level ground both are the same.
      </p>
      {elevations.map((elevation) => (
        <ElevationLines key={elevation.id} elevation={elevation} />
      ))}
    </PagePart>
  );
}

function ElevationLines({ elevation }: { readonly elevation: Elevation }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const { name } = elevation;

  /** Zones that slope by it become level in the same go, so that one undo brings back both. */
  function takeAway(): void {
    const remove = removeRow(yard, 'elevations', elevation.id);
    if (!remove) return;
    const levelled = yard.outlines
      .filter(({ slope }) => slope?.kind === 'elevation' && slope.elevationId === elevation.id)
      .map((outline) => putRow(yard, 'outlines', { ...outline, slope: null }));
    session.edit(makeEdit(`take away ${name}`, remove, ...levelled));
  }

  function meant(unit: 'feet' | 'metres'): void {
    const change = putRow(yard, 'elevations', readAnew(elevation, unit));
    session.edit(makeEdit(`${name}: heights in ${unit}`, change));
  }

  return (
    <>
      <div className="line">
        <span>{name}</span>
        <span className="note">{gridWords(elevation, yard.details.unitSystem)}</span>
      </div>
      <div className="do-row">
        <button type="button" className="do" onClick={() => meant('feet')}>
          its heights are feet, not metres
        </button>
        <button type="button" className="do" onClick={() => meant('metres')}>
          metres, not feet
        </button>
        <button type="button" className="do" onClick={takeAway}>
          take it away
        </button>
      </div>
    </>
  );
}

function gridWords(elevation: Elevation, units: UnitSystem): string {
  const { spacingM, lowestM, highestM } = elevationFacts(elevation);
  const count = formatNumber(elevation.columns * elevation.rows, 0);
  const shown = (lengthM: number): string => formatLength(lengthM, units);
  return `${count} heights, ${shown(spacingM)} apart, ${shown(lowestM)} to ${shown(highestM)}`;
}
