import { regionsAreaM2 } from '../kernel/index.ts';
import { areaFigure, areaUnitM2, formatArea, type UnitSystem } from '../units/index.ts';
import type { Outline, OutlineKind, YardDetails, YardFrame } from '../yard.ts';
import { frameWords } from './frameWords.ts';
import { RING_FORMULA } from './ringText.ts';
import { shapeOf } from './shape.ts';
import { edgesText, outlineEdges, type TracedWorking } from './tracedWorking.ts';
import { workedText } from './workedText.ts';

/** How the own whole area of any outline comes about, before anything takes ground from it. */
export interface OutlineWorking {
  readonly name: string;
  readonly kind: OutlineKind;
  readonly units: UnitSystem;
  readonly frame: YardFrame;
  readonly rings: readonly TracedWorking[];
  /** Of the ground it stands for, in the person's unit. */
  readonly area: number;
}

/**
 * @param outline checked by `checkOutline`
 * Accuracy: the rings as `ringWorking`; the area is that of the ground used everywhere else
 */
export function outlineWorking(
  outline: Outline,
  { frame, unitSystem: units }: Pick<YardDetails, 'frame' | 'unitSystem'>,
): OutlineWorking {
  const areaM2 = regionsAreaM2(shapeOf(outline).regions);
  return {
    name: outline.name,
    kind: outline.kind,
    units,
    frame,
    rings: outlineEdges(outline, units),
    area: areaM2 / areaUnitM2(units),
  };
}

/** "edge 200.00 - hole 1 16.00 = 184.00 m², shown 184.0 m²". */
export function outlineSumWords({ rings, area, units }: OutlineWorking): string {
  const [edge = '', ...holes] = rings.map((ring) => workedText(ring.area, units));
  const sum = rings.reduce((left, ring, i) => (i === 0 ? ring.area : left - ring.area), 0);
  // Holes that overlap or reach over the edge take less than their own areas.
  const isSum = Math.abs(sum - area) < 1e-3 * Math.max(1, area);
  const lessHoles = isSum
    ? holes.map((hole, i) => ` - hole ${i + 1} ${hole}`).join('')
    : ', less what of its holes lies in it once,';
  const shown = formatArea(area * areaUnitM2(units), units);
  const sumText = holes.length === 0 ? '' : `edge ${edge}${lessHoles} = `;
  return `${sumText}${workedText(area, units)} ${areaFigure(0, units).unit}, shown ${shown}`;
}

/** The working as plain text to paste anywhere. */
export function outlineText(working: OutlineWorking): string {
  return [
    `Working of ${working.name}`,
    '',
    `Frame: ${frameWords(working)}`,
    RING_FORMULA,
    ...edgesText(working.rings, working.units),
    '',
    `Own area: ${outlineSumWords(working)}`,
    '',
  ].join('\n');
}
