import { tracedRegion } from '../../core/curves/index.ts';
import { regionsAreaM2 } from '../../core/kernel/index.ts';
import { areaFigure } from '../../core/units/index.ts';
import { useBook, useOpenYard, useViewState } from '../app/context.ts';
import { MARK_WORDS, OUTLINE_WORDS } from '../drawing/index.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { YardHead } from '../shared/YardHead.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import { DrawPart } from './DrawPart.tsx';
import { EdgePart } from './EdgePart.tsx';
import { FieldCheckPart } from './FieldCheckPart.tsx';
import { OutlineWorkingPart } from './OutlineWorkingPart.tsx';
import { InSight } from './InSight.tsx';
import { MendPart } from './MendPart.tsx';
import { OverlapsPart } from './OverlapsPart.tsx';
import { SelectedMark } from './SelectedMark.tsx';
import { SelectedOutline } from './SelectedOutline.tsx';
import { SlopePart } from './SlopePart.tsx';
import { TapePart } from './TapePart.tsx';
import { WorkingPart } from './WorkingPart.tsx';
import { ZoneLedger } from './ZoneLedger.tsx';

/** What is drawn and how big it is: zones with their balance, the shape in hand, cut-outs and marks. */
export function OutlinesPage() {
  const { view } = useBook();
  const { selection } = useViewState();
  const { yard, problems } = useOpenYard();
  const units = yard.details.unitSystem;
  const outline = yard.outlines.find((row) => selection?.kind === 'outline' && row.id === selection.id);
  const mark = yard.marks.find((row) => selection?.kind === 'mark' && row.id === selection.id);
  const others = yard.outlines.filter((row) => row.kind !== 'zone');

  return (
    <>
      <YardHead title="Outlines" />
      <ZoneLedger />
      {!yard.outlines.some((row) => row.kind === 'zone') && (
        <p className="said">No zone yet. Draw the edge of a piece of lawn to see its area.</p>
      )}
      <ProblemLines problems={problems.filter(({ kind }) => kind !== 'shape/overlaps')} units={units} />
      <MendPart />
      <OverlapsPart />
      <DrawPart />
      {outline && (
        <InSight of={outline.id}>
          <EdgePart key={`edge ${outline.id}`} outline={outline} />
          <SelectedOutline key={outline.id} outline={outline} />
          {outline.kind === 'zone' ? (
            <>
              <SlopePart key={`slope ${outline.id}`} outline={outline} />
              <WorkingPart key={`working ${outline.id}`} zoneId={outline.id} />
            </>
          ) : (
            <OutlineWorkingPart key={`working ${outline.id}`} outline={outline} />
          )}
        </InSight>
      )}
      {mark && (
        <InSight of={mark.id}>
          <SelectedMark key={mark.id} mark={mark} />
        </InSight>
      )}
      {others.length > 0 && (
        <PagePart title="Cut out or left untreated" aside="each with its own whole area">
          <Ledger
            caption="What is cut out of the zones or left untreated"
            columns={[
              { head: 'name', align: 'left' },
              { head: 'kind', align: 'left' },
              { head: areaFigure(0, units).unit, align: 'right' },
            ]}
            rows={others.map((row) => ({
              key: row.id,
              selected: row.id === outline?.id,
              onSelect: () => view.select({ kind: 'outline', id: row.id }),
              cells: [
                row.name,
                OUTLINE_WORDS[row.kind],
                areaFigure(regionsAreaM2([tracedRegion(row)]), units).text,
              ],
            }))}
          />
        </PagePart>
      )}
      {yard.marks.length > 0 && (
        <PagePart title="Marks">
          <Ledger
            caption="Spigots and landmarks"
            columns={[
              { head: 'name', align: 'left' },
              { head: 'kind', align: 'left' },
            ]}
            rows={yard.marks.map((row) => ({
              key: row.id,
              selected: row.id === mark?.id,
              onSelect: () => view.select({ kind: 'mark', id: row.id }),
              cells: [row.name, MARK_WORDS[row.kind]],
            }))}
          />
        </PagePart>
      )}
      <FieldCheckPart />
      <TapePart key={units} />
    </>
  );
}
