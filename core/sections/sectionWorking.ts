import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import {
  areaFigure,
  areaUnitM2,
  formatArea,
  formatNumber,
  lengthFigure,
  lengthUnitM,
  type UnitSystem,
} from '../units/index.ts';
import type { YardDetails, YardFrame } from '../yard.ts';
import {
  frameWords,
  RING_FORMULA,
  type RingWorking,
  ringText,
  ringWorking,
  textTable,
  workedText,
} from '../zones/index.ts';
import type { CutLine, Section } from './section.ts';

/** How a section's area comes about: its rings corner by corner, and the cut lines among its edges. */
export interface SectionWorking {
  readonly id: string;
  readonly zoneName: string;
  readonly units: UnitSystem;
  readonly frame: YardFrame;
  /** The edge first, then what was cut out of the section. */
  readonly rings: readonly RingWorking[];
  /** In the person's unit: the edge less the holes. */
  readonly area: number;
  readonly cuts: readonly CutWorking[];
  /** What its area is multiplied by for amounts: `ResolvedZone.amountFactor` of its zone. */
  readonly amountFactor: number;
}

export interface CutWorking {
  /** The section on the other side. */
  readonly with: string;
  readonly from: CutEnd;
  readonly to: CutEnd;
  readonly length: number;
}

export interface CutEnd {
  readonly east: number;
  readonly north: number;
  /** Of the edge, counted from 1; null where another section's cut line ends here. */
  readonly corner: number | null;
}

/** Two places nearer than this are one corner: sections share their cut points to the last digit. */
const SAME_M = 1e-6;

/**
 * @param cutLines of the whole plan
 * @param amountFactor of its zone
 * Accuracy: the rings as `ringWorking`
 */
export function sectionWorking(
  section: Section,
  cutLines: readonly CutLine[],
  { frame, unitSystem: units }: Pick<YardDetails, 'frame' | 'unitSystem'>,
  amountFactor: number,
): SectionWorking {
  const { outer, holes } = section.region;
  const unitM = lengthUnitM(units);
  const endOf = (at: YardPoint): CutEnd => {
    const corner = outer.findIndex((point) => distanceM(point, at) < SAME_M);
    return { east: at.xM / unitM, north: at.yM / unitM, corner: corner < 0 ? null : corner + 1 };
  };
  const rings = [outer, ...holes].map((ring) => ringWorking(ring, units));
  return {
    id: section.id,
    zoneName: section.zoneName,
    units,
    frame,
    rings,
    amountFactor,
    area: rings.reduce((left, ring, i) => (i === 0 ? ring.area : left - ring.area), 0),
    cuts: cutLines
      .filter(({ between }) => between.includes(section.id))
      .map(({ between: [left, right], from, to }) => ({
        with: left === section.id ? right : left,
        from: endOf(from),
        to: endOf(to),
        length: distanceM(from, to) / unitM,
      })),
  };
}

/** "edge 200.00 - hole 1 16.00 = 184.00 ft²". */
export function sectionSumWords({ rings, area, units }: SectionWorking): string {
  const [edge = '', ...holes] = rings.map((ring) => workedText(ring.area, units));
  const lessHoles = holes.map((hole, i) => ` - hole ${i + 1} ${hole}`).join('');
  const sumText = holes.length === 0 ? '' : `edge ${edge}${lessHoles} = `;
  return `${sumText}${workedText(area, units)} ${areaFigure(0, units).unit}`;
}

/** What the schedule shows of it; rounded among all sections, so it may be one step off the nearest. */
export function sectionShownWords({ area, units }: SectionWorking, shownM2: number): string {
  const shown = formatArea(shownM2, units);
  const nearest = formatArea(area * areaUnitM2(units), units);
  if (shown === nearest) return `shown as ${shown}`;
  return `shown as ${shown}, not the nearest: all sections’ figures are rounded together (largest remainder), so that they add up`;
}

/** Map × factor = surface, where amounts are worked out from a surface; empty where they are from the map. */
export function sectionSlopeWords({ area, amountFactor, units }: SectionWorking): readonly string[] {
  if (amountFactor === 1) return [];
  const { unit } = areaFigure(0, units);
  return [
    `its load is mixed for ${workedText(area, units)} × ${formatNumber(amountFactor, 6)} = ${workedText(area * amountFactor, units)} ${unit} of surface, by the factor of its zone`,
  ];
}

/** The cut lines as a table; the first row is the heads, no rows where the zone is one section. */
export function cutTable({ cuts, units }: SectionWorking): readonly (readonly string[])[] {
  if (cuts.length === 0) return [];
  const end = ({ corner, east, north }: CutEnd): string =>
    corner === null ? `${formatNumber(east, 2)} east, ${formatNumber(north, 2)} north` : `corner ${corner}`;
  return [
    ['cut line with', 'from', 'to', `length ${lengthFigure(0, units).unit}`],
    ...cuts.map((cut) => [cut.with, end(cut.from), end(cut.to), formatNumber(cut.length, 3)]),
  ];
}

/** The working as plain text to paste anywhere. */
export function sectionText(working: SectionWorking, shownM2: number): string {
  const { id, zoneName, rings, units } = working;
  const cuts = textTable(cutTable(working));
  return [
    `Working of section ${id} of ${zoneName}`,
    '',
    `Frame: ${frameWords(working)}`,
    RING_FORMULA,
    ...rings.flatMap((ring, i) => ['', i === 0 ? 'Edge' : `Hole ${i}`, ...ringText(ring, units)]),
    '',
    `Area: ${sectionSumWords(working)}, ${sectionShownWords(working, shownM2)}`,
    ...sectionSlopeWords(working),
    ...(cuts.length === 0 ? [] : ['', ...cuts]),
    '',
  ].join('\n');
}
