import { memo } from 'react';
import { formatArea } from '../../core/units/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import type { Mark, Outline, UnitSystem, Yard } from '../../core/yard.ts';
import type { ResolvedYard } from '../../core/zones/index.ts';
import type { Selection } from '../drawing/index.ts';
import { type LabelAsk, LETTER_PX, LINE_PX, outlinePlaces, placeLabels } from './labels.ts';
import type { Lens } from './lens.ts';
import { planBoxes } from './PlanLayer.tsx';
import { shownTreatedM2 } from '../shared/shownArea.ts';

interface NamesProps {
  readonly yard: Yard;
  readonly resolved: ResolvedYard | null;
  readonly lens: Lens;
  readonly units: UnitSystem;
  readonly selection: Selection;
  /** The plan over the sketch: its sections carry letters instead of zones' names, and names keep off its words. */
  readonly plan: GroundPlan | null;
}

interface Name {
  readonly ask: LabelAsk;
  readonly words: string;
  readonly area: string;
  readonly className: string;
}

/** The names of everything drawn, each where it meets no other; the selected first, then zones, then the rest. */
export const Names = memo(function Names(props: NamesProps) {
  const { yard, selection, plan, lens } = props;
  const zoneNames = plan === null;
  const rank = ({ id, kind }: Outline): number => (id === selection?.id ? 0 : kind === 'zone' ? 1 : 2);
  const outlines = yard.outlines
    .filter(({ kind }) => kind !== 'zone' || zoneNames)
    .sort((a, b) => rank(a) - rank(b));
  const names = [
    ...outlines.filter((outline) => rank(outline) < 2).map((outline) => outlineName(outline, props)),
    ...yard.marks.map((mark) => markName(mark, props.lens)),
    ...outlines.filter((outline) => rank(outline) === 2).map((outline) => outlineName(outline, props)),
  ];
  const standing = plan === null ? [] : planBoxes({ plan, lens, selection, yard });
  const placed = placeLabels(
    names.map(({ ask }) => ask),
    standing,
  );
  return (
    <g>
      {names.map(({ ask, words, area, className }) => {
        const at = placed.get(ask.key);
        if (at === undefined) return null;
        return (
          <text
            key={ask.key}
            x={at.x}
            y={at.y}
            className={className}
            textAnchor="middle"
            dominantBaseline="central"
          >
            {area === '' ? (
              words
            ) : (
              <>
                <tspan x={at.x} dy="-0.55em">
                  {words}
                </tspan>
                <tspan x={at.x} dy="1.25em" className="zone-area">
                  {area}
                </tspan>
              </>
            )}
          </text>
        );
      })}
    </g>
  );
});

function outlineName(outline: Outline, { resolved, lens, units, plan }: NamesProps): Name {
  const zone = resolved?.zones.find(({ zoneId }) => zoneId === outline.id);
  const treatedM2 = shownTreatedM2(resolved, units, outline.id);
  const area = treatedM2 === undefined ? '' : formatArea(treatedM2, units);
  const words = shortened(outline.name);
  const widthPx = Math.max(words.length, area.length) * LETTER_PX * (zone ? 1.15 : 1);
  const heightPx = area === '' ? LINE_PX : 2 * LINE_PX;
  // Over a plan a name beside its shape would stand on passes; the hatch tells what it is. A check plot must be found.
  const besideToo = plan === null || outline.kind === 'check-plot';
  const places = outlinePlaces(outline, zone, lens, widthPx, heightPx, besideToo);
  const className = outline.kind === 'zone' ? 'zone-name' : 'thing-name';
  return { ask: { key: outline.id, widthPx, heightPx, places }, words, area, className };
}

/** A whole address as a name would find no place on its lawn; the columns have it in full. */
const MOST_LETTERS = 24;

function shortened(name: string): string {
  return name.length <= MOST_LETTERS ? name : `${name.slice(0, MOST_LETTERS - 1).trimEnd()}…`;
}

/** Beside a mark, on the side of the yard's middle first, where there is paper; then over and under. */
function markName(mark: Mark, lens: Lens): Name {
  const { x, y } = lens.toLayer(mark.at);
  const widthPx = mark.name.length * LETTER_PX;
  const aside = 18 + widthPx / 2;
  const inward = mark.at.xM > 0 ? -aside : aside;
  const places = [
    { x: x + inward, y },
    { x: x - inward, y },
    { x, y: y - 24 },
    { x, y: y + 24 },
  ];
  const ask = { key: mark.id, widthPx, heightPx: LINE_PX, places };
  return { ask, words: mark.name, area: '', className: 'thing-name' };
}
