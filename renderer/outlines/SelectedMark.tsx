import { makeEdit, putRow } from '../../core/edits/index.ts';
import { formatLength } from '../../core/units/index.ts';
import type { Mark } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { MARK_WORDS } from '../drawing/index.ts';
import { FigureField } from '../shared/FigureField.tsx';
import { parseName } from '../shared/parseName.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { TakeAway } from './TakeAway.tsx';

/** The spigot or landmark in hand. */
export function SelectedMark({ mark }: { readonly mark: Mark }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const put = (label: string, part: Partial<Mark>): void =>
    session.edit(makeEdit(label, putRow(yard, 'marks', { ...mark, ...part })));

  return (
    <PagePart title="In hand" aside={MARK_WORDS[mark.kind]}>
      <FigureField
        label="name"
        size="wide"
        shown={mark.name}
        units={units}
        parse={parseName}
        onCommit={(name) => put(`rename ${mark.name}`, { name })}
      />
      <div className="line">
        <span>east and north of the origin</span>
        <span>
          {formatLength(mark.at.xM, units)}, {formatLength(mark.at.yM, units)}
        </span>
      </div>
      <TakeAway part="marks" id={mark.id} name={mark.name} />
    </PagePart>
  );
}
