import { memo } from 'react';
import type { Pass } from '../../core/passes/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import type { Yard } from '../../core/yard.ts';
import type { Section } from '../../core/sections/index.ts';
import { alongLine, type Selection } from '../drawing/index.ts';
import { CutLines } from './CutLines.tsx';
import { fits, insidePlace, placeLabels } from './labels.ts';
import type { Lens } from './lens.ts';

/** Below these spacings of the lanes on the screen, numbers and arrow heads would only be a smear. */
const NUMBERS_FROM_PX = 18;
const ARROWS_FROM_PX = 8;
/** A shorter pass has no room for its number. */
const NUMBER_LENGTH_PX = 44;

const SECTION_LETTER_PX = 30;

interface PlanLayerProps {
  readonly plan: GroundPlan;
  readonly lens: Lens;
  readonly selection: Selection;
}

/** The ground of the sections, under the beds and buildings. */
export const SectionGround = memo(function SectionGround({ plan, lens, selection }: PlanLayerProps) {
  return (
    <g>
      {plan.sections.map((section) => (
        <path
          key={section.id}
          d={lens.regions([section.region])}
          fillRule="evenodd"
          className={isSelected(section, selection) ? 'section selected' : 'section'}
        />
      ))}
    </g>
  );
});

/** Passes, cut lines and section letters, over everything else that lies on the ground. */
export const PlanLayer = memo(function PlanLayer(props: PlanLayerProps & { readonly yard: Yard }) {
  const { plan, lens, selection, yard } = props;
  const units = yard.details.unitSystem;
  const swathPx = plan.request.swathM / lens.metresPerPx;
  return (
    <g className="plan">
      {plan.passes.map((pass) => (
        <PassLine key={pass.order} pass={pass} lens={lens} swathPx={swathPx} selection={selection} />
      ))}
      <CutLines cutLines={plan.cutLines} yard={yard} lens={lens} units={units} />
      <PassNumbers plan={plan} lens={lens} selection={selection} swathPx={swathPx} />
      {plan.sections.map((section) => (
        <SectionLetters key={section.id} section={section} lens={lens} selection={selection} />
      ))}
    </g>
  );
});

function isSelected(section: Section, selection: Selection): boolean {
  return selection?.kind === 'section' && selection.id === section.id;
}

function SectionLetters({
  section,
  lens,
  selection,
}: {
  section: Section;
  lens: Lens;
  selection: Selection;
}) {
  const place = insidePlace(section.region, SECTION_LETTER_PX * lens.metresPerPx);
  if (!fits(section.region, place, lens, section.id.length * 18, SECTION_LETTER_PX)) return null;
  const { x, y } = lens.toLayer(place);
  const className = isSelected(section, selection) ? 'section-id selected' : 'section-id';
  return (
    <text x={x} y={y} className={className} textAnchor="middle" dominantBaseline="central">
      {section.id}
    </text>
  );
}

interface PassLineProps {
  readonly pass: Pass;
  readonly lens: Lens;
  readonly swathPx: number;
  readonly selection: Selection;
}

/** One walk: a line, an arrow head where it ends, its number in a circle where it starts. */
function PassLine({ pass, lens, swathPx, selection }: PassLineProps) {
  const first = pass.line[0];
  const second = pass.line[1];
  const last = pass.line[pass.line.length - 1];
  const beforeLast = pass.line[pass.line.length - 2];
  if (!first || !second || !last || !beforeLast) return null;
  const faint = selection?.kind === 'section' && selection.id !== pass.sectionId;
  const lengthPx = pass.lengthM / lens.metresPerPx;
  const end = lens.toLayer(last);
  const from = lens.toLayer(beforeLast);
  const turnDeg = (Math.atan2(end.y - from.y, end.x - from.x) * 180) / Math.PI;
  return (
    <g className={faint ? 'pass faint' : 'pass'}>
      <path d={lens.path(pass.line, false)} className={`pass-line pass-${pass.kind}`} />
      {swathPx >= ARROWS_FROM_PX && lengthPx >= 20 && (
        <path
          d="M-15 -7L0 0L-15 7"
          className="pass-head"
          transform={`translate(${end.x.toFixed(1)} ${end.y.toFixed(1)}) rotate(${turnDeg.toFixed(1)}) scale(${Math.min(1, swathPx / 22).toFixed(2)})`}
        />
      )}
    </g>
  );
}

/** How far along a pass its number may stand, in pixels: at its start, or further on where others are. */
const NUMBER_PLACES_PX = [0, 26, 52, 78, 104];

/** The passes' numbers in their circles, each where it meets no other; lanes choose before perimeter passes. */
function PassNumbers({ plan, lens, swathPx, selection }: PlanLayerProps & { readonly swathPx: number }) {
  const radiusPx = Math.min(11, swathPx / 2 - 1);
  const numbered = plan.passes
    .filter(({ lengthM }) => swathPx >= NUMBERS_FROM_PX && lengthM / lens.metresPerPx >= NUMBER_LENGTH_PX)
    .sort((a, b) => Number(a.kind === 'perimeter') - Number(b.kind === 'perimeter'));
  const placed = placeLabels(
    numbered.map(({ order, line }) => ({
      key: String(order),
      widthPx: 2 * radiusPx + 2,
      heightPx: 2 * radiusPx + 2,
      places: NUMBER_PLACES_PX.flatMap((px) => alongLine(line, px * lens.metresPerPx) ?? []).map((at) =>
        lens.toLayer(at),
      ),
    })),
  );
  return (
    <g>
      {numbered.map(({ order, sectionId }) => {
        const at = placed.get(String(order));
        if (at === undefined) return null;
        const faint = selection?.kind === 'section' && selection.id !== sectionId;
        return (
          <g
            key={order}
            transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}
            className={faint ? 'pass-number faint' : 'pass-number'}
          >
            <circle r={radiusPx} />
            <text textAnchor="middle" dominantBaseline="central">
              {order}
            </text>
          </g>
        );
      })}
    </g>
  );
}
