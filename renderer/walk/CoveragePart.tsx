import type { GroundCoverage } from '../../core/passes/index.ts';
import { type JobPlan, loadUses } from '../../core/plan/index.ts';
import {
  coverageFigures,
  depthFigures,
  depthWords,
  loadUseWords,
  outsideWords,
  sheetFigures,
} from '../../core/sheet/index.ts';
import { areaFigure, formatArea, formatPercent } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useBook, useViewState } from '../app/context.ts';
import { CoverSwatch } from '../map/index.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';

/** In the order of the ledger: what goes as it should first. */
const DEPTH_ROWS = [1, 2, 3, 0] as const;

/**
 * How the swaths cover the ground, the whole of it and the section in hand; the same rounded figures as on the sheet.
 * Drawn on the sketch, its rows are the key to the ink.
 */
export function CoveragePart({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  const { view } = useBook();
  const { selection, coverShown } = useViewState();
  const { coverage, request } = plan.ground;
  const shown = sheetFigures(plan, units);
  const all = groundOf('all', coverage, shown.zoneSum.treatedM2, units);
  const id = selection?.kind === 'section' ? selection.id : null;
  const load = shown.loads.find(({ section }) => section.id === id);
  const own = coverage.sections.find(({ sectionId }) => sectionId === id);
  const grounds = load && own ? [all, groundOf(load.section.id, own, load.areaM2, units)] : [all];
  const words = depthWords(request.rounds);
  const use = loadUseWords(loadUses(plan.ground), units);
  return (
    <PagePart title="Ground covered" aside="measured on the plan">
      <div className="do-row">
        <label className="tick">
          <input
            type="checkbox"
            checked={coverShown}
            onChange={(event) => view.showCover(event.target.checked)}
          />
          drawn on the sketch: the more often, the more ink
        </label>
      </div>
      <Ledger
        caption="How the swaths cover the ground"
        columns={[
          { head: 'covered', align: 'left' },
          ...grounds.flatMap(({ name }) => [
            { head: `${name} ${areaFigure(0, units).unit}`, align: 'right' } as const,
            { head: `of ${name}`, align: 'right' } as const,
          ]),
        ]}
        rows={DEPTH_ROWS.map((depth) => ({
          key: `${depth}`,
          cells: [
            <span key="words" className="cover-words">
              {coverShown && <CoverSwatch of={depth} />}
              {words[depth]}
            </span>,
            ...grounds.flatMap(({ depths }) => [
              areaFigure(depths[depth].areaM2, units).text,
              formatPercent(depths[depth].share),
            ]),
          ],
        }))}
        sum={[
          'treated',
          ...grounds.flatMap(({ treatedM2 }) => [areaFigure(treatedM2, units).text, formatPercent(1)]),
        ]}
      />
      {grounds.map(({ name, figures }) => (
        <div className="line" key={name}>
          <span className="cover-words">
            {coverShown && <CoverSwatch of="outside" />}
            {name === 'all' ? 'thrown outside' : `thrown outside by ${name}`}
          </span>
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

/** @param treatedM2 as shown, which the parts add up to */
function groundOf(name: string, coverage: GroundCoverage, treatedM2: number, units: UnitSystem) {
  const figures = coverageFigures(coverage, treatedM2, units);
  return { name, treatedM2, figures, depths: depthFigures(coverage, figures, units) };
}
