import { tracedRegion, tracedRing } from '../../core/curves/index.ts';
import { makeEdit, putRow } from '../../core/edits/index.ts';
import { regionsAreaM2, ringPerimeterM } from '../../core/kernel/index.ts';
import { formatAreaBoth, formatLength } from '../../core/units/index.ts';
import { OUTLINE_KINDS, type Outline, type OutlineKind } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { OUTLINE_WORDS } from '../drawing/index.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { parseName } from '../shared/parseName.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { HoseCrossing } from './HoseCrossing.tsx';
import { KeepOffPart } from './KeepOffPart.tsx';
import { PlacingPart } from './PlacingPart.tsx';
import { TakeAway } from './TakeAway.tsx';

/** The outline in hand: its name, its kind, its size, and taking it away. */
export function SelectedOutline({ outline }: { readonly outline: Outline }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const put = (label: string, part: Partial<Outline>): void =>
    session.edit(makeEdit(label, putRow(yard, 'outlines', { ...outline, ...part })));

  return (
    <PagePart
      title="In hand"
      aside={
        outline.outer.kind === 'corners' ? `${outline.outer.corners.length} corners` : outline.outer.kind
      }
    >
      <FigureField
        label="name"
        size="wide"
        shown={outline.name}
        units={units}
        parse={parseName}
        onCommit={(name) => put(`rename ${outline.name}`, { name })}
      />
      <ChoiceField<OutlineKind>
        label="kind"
        value={outline.kind}
        choices={OUTLINE_KINDS.map((kind) => [kind, OUTLINE_WORDS[kind]] as const)}
        onChoose={(kind) => put(`make ${outline.name} a ${OUTLINE_WORDS[kind]}`, { kind })}
      />
      <div className="line">
        <span>own area, before anything is cut out</span>
        <span>{formatAreaBoth(regionsAreaM2([tracedRegion(outline)]), units)}</span>
      </div>
      <div className="line">
        <span>round its edge</span>
        <span>{formatLength(ringPerimeterM(tracedRing(outline.outer)), units)}</span>
      </div>
      <PlacingPart outline={outline} />
      <KeepOffPart outline={outline} />
      <HoseCrossing outline={outline} />
      <TakeAway part="outlines" id={outline.id} name={outline.name} />
    </PagePart>
  );
}
