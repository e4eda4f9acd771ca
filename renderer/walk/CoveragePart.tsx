import { type JobPlan, loadUses } from '../../core/plan/index.ts';
import {
  type CoverageFigures,
  coveredWords,
  coverageFigures,
  loadUseWords,
  outsideWords,
  sheetFigures,
} from '../../core/sheet/index.ts';
import { areaFigure, formatArea, formatPercent } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useViewState } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';

/** How the swaths cover the ground, the whole of it and the section in hand; the same rounded figures as on the sheet. */
export function CoveragePart({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  const { selection } = useViewState();
  const { coverage, request } = plan.ground;
  const shown = sheetFigures(plan, units);
  const all = {
    name: 'all',
    treatedM2: shown.zoneSum.treatedM2,
    figures: coverageFigures(coverage, shown.zoneSum.treatedM2, units),
  };
  const id = selection?.kind === 'section' ? selection.id : null;
  const load = shown.loads.find(({ section }) => section.id === id);
  const own = coverage.sections.find(({ sectionId }) => sectionId === id);
  const inHand = load &&
    own && {
      name: load.section.id,
      treatedM2: load.areaM2,
      figures: coverageFigures(own, load.areaM2, units),
    };
  const grounds = inHand ? [all, inHand] : [all];
  const use = loadUseWords(loadUses(plan.ground), units);
  return (
    <PagePart title="Ground covered" aside="measured on the plan">
      <Ledger
        caption="How the swaths cover the ground"
        columns={[
          { head: 'covered', align: 'left' },
          ...grounds.flatMap(({ name }) => [
            { head: `${name} ${areaFigure(0, units).unit}`, align: 'right' } as const,
            { head: `of ${name}`, align: 'right' } as const,
          ]),
        ]}
        rows={rowsOf(
          grounds.map(({ figures }) => figures),
          request.rounds,
          units,
        )}
        sum={[
          'treated',
          ...grounds.flatMap(({ treatedM2 }) => [areaFigure(treatedM2, units).text, formatPercent(1)]),
        ]}
      />
      {grounds.map(({ name, figures }) => (
        <div className="line" key={name}>
          <span>{name === 'all' ? 'thrown outside' : `thrown outside by ${name}`}</span>
          <span className="line-value">
            <span className="note">
              {outsideWords(figures, units) || formatArea(figures.outside.areaM2, units)}
            </span>
            <span className="share">{formatPercent(figures.outside.share)}</span>
          </span>
        </div>
      ))}
      {request.rounds === 2 && (
        <p className="said">
          {coverage.rounds
            .map(({ twiceM2, missedM2 }, round) => {
              const share = (areaM2: number): string => formatPercent(areaM2 / coverage.treatedM2);
              return `Round ${round + 1} alone covers ${share(twiceM2)} twice and misses ${share(missedM2)}.`;
            })
            .join(' ')}
        </p>
      )}
      {use !== null && <p className={use.warns ? 'wrong' : 'said'}>{use.text}</p>}
    </PagePart>
  );
}

function rowsOf(all: readonly CoverageFigures[], rounds: 1 | 2, units: UnitSystem) {
  const words = coveredWords(rounds);
  return (['once', 'short', 'twice', 'missed'] as const).flatMap((part) => {
    const grounds = all.flatMap((figures) => figures[part] ?? []);
    if (grounds.length === 0) return [];
    const cells = grounds.flatMap(({ areaM2, share }) => [
      areaFigure(areaM2, units).text,
      formatPercent(share),
    ]);
    return [{ key: part, cells: [words[part], ...cells] }];
  });
}
