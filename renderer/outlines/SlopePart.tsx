import { makeEdit, putRow } from '../../core/edits/index.ts';
import { AMOUNTS_BY_WORDS, degreesOfGrade, formatGrade, parseGrade } from '../../core/slope/index.ts';
import { ok, type Result } from '../../core/result.ts';
import { areaFigure, formatAngle, formatNumber, formatPercent } from '../../core/units/index.ts';
import type { Outline, Slope } from '../../core/yard.ts';
import { printedZones, type ResolvedZone } from '../../core/zones/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { AreaCell } from '../shared/AreaCell.tsx';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { PagePart } from '../shared/PageHead.tsx';

/** How the zone in hand slopes, and what that makes of its area. */
export function SlopePart({ outline }: { readonly outline: Outline }) {
  const { session } = useBook();
  const { yard, resolved } = useOpenYard();
  const units = yard.details.unitSystem;
  const { slope } = outline;
  const zone = resolved?.zones.find((row) => row.zoneId === outline.id);
  const put = (next: Slope | null): void =>
    session.edit(makeEdit(`slope of ${outline.name}`, putRow(yard, 'outlines', { ...outline, slope: next })));

  return (
    <PagePart title="Slope" aside={slope === null ? 'taken as level' : undefined}>
      {yard.elevations.length > 0 && (
        <ChoiceField<string>
          label="it slopes"
          value={slope?.kind === 'elevation' ? slope.elevationId : ''}
          choices={[
            ['', 'as stated here'],
            ...yard.elevations.map(({ id, name }) => [id, `by the heights of ${name}`] as const),
          ]}
          onChoose={(elevationId) => put(elevationId === '' ? null : { kind: 'elevation', elevationId })}
        />
      )}
      {slope?.kind !== 'elevation' && (
        <FigureField<Slope | null>
          label="rise in run"
          shown={slope === null ? '' : formatPercent(slope.grade)}
          note={
            slope === null ? 'such as 8 ft in 40 ft, 20% or 11.3°' : formatAngle(degreesOfGrade(slope.grade))
          }
          units={units}
          parse={readSlope}
          onCommit={put}
        />
      )}
      {slope !== null && zone && <SlopeFigures zone={zone} />}
    </PagePart>
  );
}

/** Map and surface side by side, and which of the two amounts are from. */
function SlopeFigures({ zone }: { readonly zone: ResolvedZone }) {
  const { yard, resolved } = useOpenYard();
  const { unitSystem: units, amountsBy } = yard.details;
  const shown = resolved && printedZones(resolved, units).find((row) => row.zoneId === zone.zoneId);
  if (!shown || zone.slope === null) return null;
  const { unit } = areaFigure(0, units);
  const { meanGrade, steepestGrade } = zone.slope;
  const isUneven = steepestGrade - meanGrade > 0.0005;
  return (
    <>
      {isUneven && (
        <div className="line">
          <span>on the whole, and at its steepest</span>
          <span>
            {formatGrade(meanGrade)}, {formatGrade(steepestGrade)}
          </span>
        </div>
      )}
      <div className="line">
        <span>treated, on the map</span>
        <span>
          <AreaCell areaM2={shown.treatedM2} sigmaM2={shown.sigmaM2} units={units} /> {unit}
        </span>
      </div>
      <div className="line">
        <span>treated, as it slopes</span>
        <span>
          <span className="note">× {formatNumber(zone.surfaceFactor, 4)} = </span>
          <AreaCell
            areaM2={shown.surfaceM2}
            sigmaM2={shown.sigmaM2 === null ? null : shown.sigmaM2 * zone.surfaceFactor}
            units={units}
          />{' '}
          {unit}
        </span>
      </div>
      <p className="said">
        Amounts are worked out from {AMOUNTS_BY_WORDS[amountsBy]}; the Ground page says which, for all zones.
      </p>
    </>
  );
}

/** Nothing typed is a slope not stated. */
function readSlope(typed: string): Result<Slope | null> {
  if (typed.trim() === '') return ok(null);
  const read = parseGrade(typed, 'slope');
  return read.ok ? ok({ kind: 'grade', grade: read.value }) : read;
}
