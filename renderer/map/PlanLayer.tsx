import { memo, type ReactNode } from 'react';
import type { Pass } from '../../core/passes/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import type { Yard } from '../../core/yard.ts';
import type { Section } from '../../core/sections/index.ts';
import { alongLine, type Selection, type Xy } from '../drawing/index.ts';
import { stakingOf } from '../shared/stakingOf.ts';
import { CutLines, flagAsks, flagBoxes, type FlagWord, letterAsks } from './CutLines.tsx';
import { fits, insidePlace, type LabelAsk, placeLabels, type TakenBox } from './labels.ts';
import type { Lens } from './lens.ts';

/** Below these spacings of the lanes on the screen, numbers and arrow heads would only be a smear. */
const NUMBERS_FROM_PX = 18;
const ARROWS_FROM_PX = 8;
/** A shorter pass has no room for its number. */
const NUMBER_LENGTH_PX = 44;

const SECTION_LETTER_PX = 30;
const SECTION_LETTER_WIDTH_PX = 18;

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
  const swathPx = plan.request.swathM / lens.metresPerPx;
  return (
    <g className="plan">
      {plan.passes.map((pass) => (
        <PassLine key={pass.order} pass={pass} lens={lens} swathPx={swathPx} selection={selection} />
      ))}
      <CutLines staking={stakingOf(yard, plan)} lens={lens} selection={selection} />
      <Words plan={plan} lens={lens} selection={selection} yard={yard} />
    </g>
  );
});

function isSelected(section: Section, selection: Selection): boolean {
  return selection?.kind === 'section' && selection.id === section.id;
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

interface Word {
  readonly ask: LabelAsk;
  readonly draw: (at: Xy) => ReactNode;
}

type WordsProps = PlanLayerProps & { readonly yard: Yard };

/** Letters of flags and sections, what else stands by the flags, pass numbers: none lies on another, nor on a flag. */
function Words(props: WordsProps) {
  const { words, placed } = placedWords(props);
  return (
    <g>
      {words.map(({ ask, draw }) => {
        const at = placed.get(ask.key);
        return at === undefined ? null : <g key={ask.key}>{draw(at)}</g>;
      })}
    </g>
  );
}

function placedWords(props: WordsProps) {
  const { plan, yard, lens } = props;
  const words = [...flagLetters(props), ...letterWords(props), ...flagWords(props), ...numberWords(props)];
  const symbols = yard.marks.map(({ at }) => ({ at: lens.toLayer(at), widthPx: 24, heightPx: 24 }));
  const standing = [...flagBoxes(stakingOf(yard, plan), lens), ...symbols];
  return {
    words,
    standing,
    placed: placeLabels(
      words.map(({ ask }) => ask),
      standing,
    ),
  };
}

/** What a plan’s flags and words stand on, so that the names of things keep off them. */
export function planBoxes(props: WordsProps): readonly TakenBox[] {
  const { words, standing, placed } = placedWords(props);
  return [
    ...standing,
    ...words.flatMap(({ ask: { key, widthPx, heightPx } }) => {
      const at = placed.get(key);
      return at === undefined ? [] : [{ at, widthPx, heightPx }];
    }),
  ];
}

/** Where a section's letter may stand besides the best place, in letter heights. */
const LETTER_SHIFTS = [
  [0, 0],
  [0, 1],
  [0, -1],
  [1.3, 0],
  [-1.3, 0],
  [0, 2],
  [0, -2],
] as const;

function letterWords({ plan, lens, selection }: PlanLayerProps): readonly Word[] {
  return plan.sections.flatMap((section) => {
    const stepM = SECTION_LETTER_PX * lens.metresPerPx;
    const best = insidePlace(section.region, stepM);
    const widthPx = section.id.length * SECTION_LETTER_WIDTH_PX;
    const places = LETTER_SHIFTS.map(([x, y]) => ({ xM: best.xM + x * stepM, yM: best.yM + y * stepM }))
      .filter((place) => fits(section.region, place, lens, widthPx, SECTION_LETTER_PX))
      .map((place) => lens.toLayer(place));
    const ask = {
      key: `section ${section.id}`,
      widthPx,
      heightPx: SECTION_LETTER_PX,
      places,
    };
    const className = isSelected(section, selection) ? 'section-id selected' : 'section-id';
    return [{ ask, draw: (at) => <Written at={at} words={section.id} className={className} /> }];
  });
}

function flagLetters({ plan, lens, yard }: WordsProps): readonly Word[] {
  return letterAsks(stakingOf(yard, plan), lens).map(asWord);
}

function flagWords({ plan, lens, yard, selection }: WordsProps): readonly Word[] {
  const treatedM2 = plan.sections.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const units = yard.details.unitSystem;
  return flagAsks(stakingOf(yard, plan), units, lens, treatedM2, selection).map(asWord);
}

function asWord({ ask, text, className, turnDeg }: FlagWord): Word {
  return { ask, draw: (at) => <Written at={at} words={text} className={className} turnDeg={turnDeg} /> };
}

/** Lanes choose before perimeter passes, which are longer and have room elsewhere. */
function numberWords({ plan, lens, selection }: PlanLayerProps): readonly Word[] {
  const swathPx = plan.request.swathM / lens.metresPerPx;
  const radiusPx = Math.min(11, swathPx / 2 - 1);
  const sizePx = 2 * radiusPx + 2;
  return plan.passes
    .filter(({ lengthM }) => swathPx >= NUMBERS_FROM_PX && lengthM / lens.metresPerPx >= NUMBER_LENGTH_PX)
    .sort((a, b) => Number(a.kind === 'perimeter') - Number(b.kind === 'perimeter'))
    .map(({ order, line, sectionId }) => {
      const along = NUMBER_PLACES_PX.flatMap((px) => alongLine(line, px * lens.metresPerPx) ?? []);
      const places = along.map((at) => lens.toLayer(at));
      const faint = selection?.kind === 'section' && selection.id !== sectionId;
      return {
        ask: { key: `pass ${order}`, widthPx: sizePx, heightPx: sizePx, places },
        draw: (at) => (
          <g
            transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}
            className={faint ? 'pass-number faint' : 'pass-number'}
          >
            <circle r={radiusPx} />
            <text textAnchor="middle" dominantBaseline="central">
              {order}
            </text>
          </g>
        ),
      };
    });
}

interface WrittenProps {
  readonly at: Xy;
  readonly words: string;
  readonly className: string;
  readonly turnDeg?: number;
}

function Written({ at, words, className, turnDeg = 0 }: WrittenProps) {
  const turned = turnDeg === 0 ? '' : ` rotate(${turnDeg.toFixed(2)})`;
  return (
    <text
      transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})${turned}`}
      className={className}
      textAnchor="middle"
      dominantBaseline="central"
    >
      {words}
    </text>
  );
}
