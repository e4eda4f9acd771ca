import { memo } from 'react';
import type { Pass } from '../../core/passes/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import { formatLength } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import type { CutLine, Section } from '../../core/sections/index.ts';
import { alongLine, distanceM, type Selection, type Xy } from '../drawing/index.ts';
import { fits, insidePlace } from './labels.ts';
import { readableDeg } from './readableDeg.ts';
import type { Lens } from './lens.ts';

/** Below these spacings of the lanes on the screen, numbers and arrow heads would only be a smear. */
const NUMBERS_FROM_PX = 18;
const ARROWS_FROM_PX = 8;

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
export const PlanLayer = memo(function PlanLayer(props: PlanLayerProps & { readonly units: UnitSystem }) {
  const { plan, lens, selection, units } = props;
  const swathPx = plan.request.swathM / lens.metresPerPx;
  return (
    <g className="plan">
      {plan.passes.map((pass) => (
        <PassLine key={pass.order} pass={pass} lens={lens} swathPx={swathPx} selection={selection} />
      ))}
      {plan.cutLines.map((cut) => (
        <g key={`${cut.between.join()} ${cut.from.xM} ${cut.from.yM}`}>
          <path d={lens.path([cut.from, cut.to], false)} className="cut-line" />
          <FlagMark at={lens.toLayer(cut.from)} />
          <FlagMark at={lens.toLayer(cut.to)} />
          <CutLength cut={cut} lens={lens} units={units} />
        </g>
      ))}
      {plan.passes.map((pass) => (
        <PassNumber key={pass.order} pass={pass} lens={lens} swathPx={swathPx} selection={selection} />
      ))}
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

/** How long the line between two flags is, so that a tape shows whether they stand right. */
function CutLength({ cut, lens, units }: { cut: CutLine; lens: Lens; units: UnitSystem }) {
  const a = lens.toLayer(cut.from);
  const b = lens.toLayer(cut.to);
  const lengthM = distanceM(cut.from, cut.to);
  if (lengthM / lens.metresPerPx < 90) return null;
  const turnDeg = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  return (
    <text
      className="flag-text"
      textAnchor="middle"
      transform={`translate(${((a.x + b.x) / 2).toFixed(1)} ${((a.y + b.y) / 2).toFixed(1)}) rotate(${readableDeg(turnDeg).toFixed(2)}) translate(0 -7)`}
    >
      {formatLength(lengthM, units)}
    </text>
  );
}

/** A flag on a short pole, its foot on the ground. */
function FlagMark({ at }: { readonly at: Xy }) {
  return (
    <g transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`} className="flag">
      <path d="M0 0V-30" className="flag-pole" />
      <path d="M0 -30L20 -24L0 -17Z" className="flag-cloth" />
    </g>
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

/** A lane's number stands where it starts; a perimeter pass's a little way on, clear of the lane that follows. */
const PERIMETER_NUMBER_PX = 30;

function PassNumber({ pass, lens, swathPx, selection }: PassLineProps) {
  const lengthPx = pass.lengthM / lens.metresPerPx;
  const first = pass.line[0];
  if (first === undefined || swathPx < NUMBERS_FROM_PX || lengthPx < 44) return null;
  const on = pass.kind === 'perimeter' ? Math.min(PERIMETER_NUMBER_PX, lengthPx / 4) : 0;
  const at = lens.toLayer(alongLine(pass.line, on * lens.metresPerPx) ?? first);
  const faint = selection?.kind === 'section' && selection.id !== pass.sectionId;
  return (
    <g
      transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}
      className={faint ? 'pass-number faint' : 'pass-number'}
    >
      <circle r={Math.min(11, swathPx / 2 - 1)} />
      <text textAnchor="middle" dominantBaseline="central">
        {pass.order}
      </text>
    </g>
  );
}
