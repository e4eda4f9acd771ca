import type { JobPlan } from '../../core/plan/index.ts';
import { sheetFigures, walkFigures, walkText, wetWords } from '../../core/sheet/index.ts';
import { AMOUNTS_BY_WORDS } from '../../core/slope/index.ts';
import { areaFigure, formatTime, lengthFigure, volumeFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useBook, useViewState } from '../app/context.ts';
import { AreaCell } from '../shared/AreaCell.tsx';
import { Ledger } from '../shared/Ledger.tsx';

/** Every section in walking order: its ground, its passes, how far and how long, and its product. */
export function SectionLedger({ plan, units }: { readonly plan: JobPlan; readonly units: UnitSystem }) {
  const { view } = useBook();
  const { selection } = useViewState();
  const figures = sheetFigures(plan, units);
  const bySection = new Map(plan.ground.sectionFigures.map((row) => [row.sectionId, row]));
  const isShared = figures.fills.length < figures.loads.length;
  const walks = walkFigures(plan.ground, units);
  return (
    <>
      <Ledger
        caption="Sections in walking order"
        columns={[
          { head: 'section', align: 'left' },
          ...(isShared ? [{ head: 'load', align: 'right' } as const] : []),
          { head: `treated ${areaFigure(0, units).unit}`, align: 'right' },
          { head: 'passes', align: 'right' },
          { head: `walk ${lengthFigure(0, units).unit}`, align: 'right' },
          { head: 'time', align: 'right' },
          { head: figures.productUnit, align: 'right' },
        ]}
        rows={figures.loads.map(({ section, load, areaM2, areaSigmaM2, productL }) => {
          const row = bySection.get(section.id);
          return {
            key: section.id,
            selected: selection?.kind === 'section' && selection.id === section.id,
            onSelect: () => view.select({ kind: 'section', id: section.id }),
            cells: [
              section.id,
              ...(isShared ? [`${load}`] : []),
              <AreaCell key="area" areaM2={areaM2} sigmaM2={areaSigmaM2} units={units} />,
              `${row?.passes ?? 0}`,
              walkText(walks.bySection.get(section.id)?.walkM ?? 0, units),
              row ? formatTime(row.timeS) : '',
              volumeFigure(productL, units, figures.productUnit).text,
            ],
          };
        })}
        sum={[
          'all',
          ...(isShared ? [`${figures.fills.length}`] : []),
          <AreaCell
            key="area"
            areaM2={figures.zoneSum.treatedM2}
            sigmaM2={figures.zoneSum.sigmaM2}
            units={units}
          />,
          `${plan.ground.passes.length}`,
          walkText(walks.all.walkM, units),
          formatTime(plan.ground.timeS),
          volumeFigure(figures.productTotalL, units, figures.productUnit).text,
        ]}
      />
      <p className="said">{wetWords(walks, units)}</p>
      {figures.isMixedBySurface && (
        <p className="said">
          Product is worked out from {AMOUNTS_BY_WORDS.surface}, which is larger than the map’s area.
        </p>
      )}
    </>
  );
}
