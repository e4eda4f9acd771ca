import { type HoseGround, type HosePlan, type SectionHose, snagsOf } from '../../core/hose/index.ts';
import { formatEnough, formatLength } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useBook, useViewState } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';

interface HoseLedgerProps {
  readonly asked: HoseGround;
  readonly hose: HosePlan;
  readonly units: UnitSystem;
}

/** What hose each section takes, from where; the shortest that does it all, and what lies over wet turf. */
export function HoseLedger({ asked, hose, units }: HoseLedgerProps) {
  const { view } = useBook();
  const { selection } = useViewState();
  const names = new Map(asked.spigots.map(({ id, name }) => [id, name]));
  const snags = snagsOf(hose);
  return (
    <>
      <Ledger
        caption="Hose of each section, in walking order"
        columns={[
          { head: 'section', align: 'left' },
          { head: 'from', align: 'left' },
          { head: 'round', align: 'left' },
          { head: 'hose', align: 'right' },
          { head: 'short by', align: 'right' },
        ]}
        rows={hose.sections.map((section) => ({
          key: section.sectionId,
          selected: selection?.kind === 'section' && selection.id === section.sectionId,
          onSelect: () => view.select({ kind: 'section', id: section.sectionId }),
          cells: [
            section.sectionId,
            names.get(section.spigotId ?? '') ?? '—',
            roundWords(section),
            neededWords(section, units),
            section.isBeyond && section.neededM !== null
              ? formatEnough(section.neededM - asked.lengthM, units)
              : '',
          ],
        }))}
      />
      <div className="line">
        <span>shortest hose that does it all</span>
        <span>{hose.shortestHoseM === null ? 'none does' : formatEnough(hose.shortestHoseM, units)}</span>
      </div>
      <div className="line">
        <span>lies over turf treated before</span>
        <span>{hose.overWetM === 0 ? 'nowhere' : formatLength(hose.overWetM, units)}</span>
      </div>
      <p className="said">
        Measured without slack on the ground as drawn: a hose on a slope or with slack takes a little more.
        {snags.length > 0 && ` It may catch at ${snags.join(' and ')}: set a stake there to guide it.`}
      </p>
    </>
  );
}

function roundWords({ neededM, bends }: SectionHose): string {
  if (neededM === null) return '—';
  return [...new Set(bends.map(({ name }) => name))].join(', ') || 'straight';
}

function neededWords({ neededM }: SectionHose, units: UnitSystem): string {
  return neededM === null ? 'no way' : formatEnough(neededM, units);
}
