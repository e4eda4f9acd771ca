import { useMemo } from 'react';
import type { JobPlan } from '../../core/plan/index.ts';
import {
  cutTable,
  sectionShownWords,
  sectionSlopeWords,
  sectionSumWords,
  sectionText,
  sectionWorking,
} from '../../core/sections/index.ts';
import { sheetFigures } from '../../core/sheet/index.ts';
import { edgeName } from '../../core/zones/index.ts';
import { useOpenYard, useViewState } from '../app/context.ts';
import { FormulaLines } from '../shared/EdgeLedgers.tsx';
import { RingLedgers } from '../shared/RingLedgers.tsx';
import { TextLedger } from '../shared/TextLedger.tsx';
import { WorkingFold } from '../shared/WorkingFold.tsx';

/** How the area of the section in hand comes about: its corners, and which of its edges are cut lines. */
export function SectionWorkingPart({ plan }: { readonly plan: JobPlan }) {
  const { selection } = useViewState();
  const { details } = useOpenYard().yard;
  const id = selection?.kind === 'section' ? selection.id : null;
  const worked = useMemo(() => {
    const section = plan.ground.sections.find((row) => row.id === id);
    if (section === undefined) return null;
    const { resolved, cutLines } = plan.ground;
    const zone = resolved.zones.find(({ zoneId }) => zoneId === section.zoneId);
    const working = sectionWorking(section, cutLines, details, zone?.amountFactor ?? 1);
    const load = sheetFigures(plan, details.unitSystem).loads.find((row) => row.section.id === id);
    return { working, shownM2: load?.areaM2 ?? section.areaM2 };
  }, [plan, id, details]);
  if (worked === null) return <p className="said">Choose a section to see how its area comes about.</p>;
  const { working, shownM2 } = worked;
  return (
    <WorkingFold
      aside={`how the area of ${working.id} comes about`}
      of={working}
      text={() => sectionText(working, shownM2)}
    >
      {() => (
        <>
          <FormulaLines working={working} />
          {working.rings.map((ring, i) => (
            <RingLedgers
              // biome-ignore lint/suspicious/noArrayIndexKey: rings have no name but their place
              key={i}
              ring={ring}
              units={working.units}
              name={edgeName(i)}
            />
          ))}
          <p className="said">
            {sectionSumWords(working)}, {sectionShownWords(working, shownM2)}
          </p>
          {sectionSlopeWords(working).map((words) => (
            <p key={words} className="said">
              {words}
            </p>
          ))}
          <TextLedger caption="Cut lines along its edge" table={cutTable(working)} />
        </>
      )}
    </WorkingFold>
  );
}
