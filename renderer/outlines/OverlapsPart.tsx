import { makeEdit, putRow } from '../../core/edits/index.ts';
import { OWNED_BY_WORDS } from '../../core/problemText.ts';
import { areaFigure } from '../../core/units/index.ts';
import { OVERLAP_RULES, type OverlapRule } from '../../core/yard.ts';
import { type PrintedOverlap, printedOverlaps, printedZones } from '../../core/zones/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { giveOverlap } from './giveOverlap.ts';

const RULE_CHOICES: readonly (readonly [OverlapRule, string])[] = OVERLAP_RULES.map((rule) => [
  rule,
  rule === 'smaller' || rule === 'larger'
    ? `${OWNED_BY_WORDS[rule]} zone`
    : `the zone ${OWNED_BY_WORDS[rule]}`,
]);

/** Ground in two zones: whose it is, why, and giving it to the other. Nothing where no zones overlap. */
export function OverlapsPart() {
  const { session } = useBook();
  const { yard, resolved } = useOpenYard();
  const units = yard.details.unitSystem;
  if (resolved === null || resolved.overlaps.length === 0) return null;
  const shown = printedOverlaps(resolved, printedZones(resolved, units), units);
  const names = new Map(yard.outlines.map(({ id, name }) => [id, name]));
  const nameOf = (id: string): string => names.get(id) ?? '';

  return (
    <PagePart title="Ground in two zones" aside="counts once, for its owner">
      <ChoiceField<OverlapRule>
        label="it belongs to"
        value={yard.details.overlapRule}
        choices={RULE_CHOICES}
        onChoose={(overlapRule) =>
          session.edit(
            makeEdit(
              'choose who owns shared ground',
              putRow(yard, 'details', { ...yard.details, overlapRule }),
            ),
          )
        }
      />
      <Ledger
        caption="Ground in two zones and who owns it"
        columns={[
          { head: 'owner', align: 'left' },
          { head: 'not for', align: 'left' },
          { head: areaFigure(0, units).unit, align: 'right' },
          { head: 'or', align: 'left' },
        ]}
        rows={shown.map(({ ownerId, otherId, by, shownM2 }: PrintedOverlap) => ({
          key: `${ownerId} ${otherId}`,
          cells: [
            <>
              {nameOf(ownerId)} <span className="note">{OWNED_BY_WORDS[by]}</span>
            </>,
            nameOf(otherId),
            areaFigure(shownM2, units).text,
            <button
              key="give"
              type="button"
              className="do"
              aria-label={`give it over to ${nameOf(otherId)}`}
              onClick={() => session.edit(giveOverlap(yard, otherId, ownerId))}
            >
              give it over
            </button>,
          ],
        }))}
      />
    </PagePart>
  );
}
