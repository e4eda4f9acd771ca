import { MOST_OFF_CURVE_M } from '../curves/index.ts';
import { areaFigure, formatNumber, lengthFigure, type UnitSystem } from '../units/index.ts';
import type { CurveWorking } from './curveWorking.ts';
import { ringText } from './ringText.ts';
import { textTable } from './textTable.ts';

/** Digits of a length and of an area in a formula: enough for the product of the lengths to give the area. */
const LENGTH_DECIMALS = 6;
const AREA_DECIMALS = 4;

/** The formula of a curve with its numbers, a line each. */
export function curveWords(curve: CurveWorking, units: UnitSystem): readonly string[] {
  const [length, area] = [lengthFigure(0, units).unit, areaFigure(0, units).unit];
  switch (curve.kind) {
    case 'circle':
      return [
        `Circle about ${lengthText(curve.centre.east)} east, ${lengthText(curve.centre.north)} north: A = π r² = π × ${lengthText(curve.radius)}² = ${areaText(curve.area)} ${area}`,
      ];
    case 'ellipse':
      return [
        `Ellipse about ${lengthText(curve.centre.east)} east, ${lengthText(curve.centre.north)} north, its length at a bearing of ${formatNumber(curve.bearingDeg, 2)}°: A = π a b = π × ${lengthText(curve.halfLength)} × ${lengthText(curve.halfWidth)} = ${areaText(curve.area)} ${area}`,
      ];
    case 'arcs':
      return [
        `Polygon of the corners as placed ${areaText(curve.chords.area)}, and on the chord of each arc a segment r²/2 (θ - sin θ), θ the angle turned, r in ${length}: together ${areaText(curve.area)} ${area}`,
      ];
    case 'smooth':
      return [
        `${curve.edges === 1 ? '1 edge runs' : `${curve.edges} edges run`} smoothly through the corners; the area is that of the ring below`,
      ];
  }
}

/** Each arc's segment, the first row the heads; empty where there are none. */
export function segmentTable(curve: CurveWorking, units: UnitSystem): readonly (readonly string[])[] {
  if (curve.kind !== 'arcs') return [];
  return [
    ['arc from corner', `r ${lengthFigure(0, units).unit}`, 'θ', `segment ${areaFigure(0, units).unit}`],
    ...curve.segments.map(({ corner, radius, turnedDeg, area }) => [
      `${corner}`,
      lengthText(radius),
      `${formatNumber(turnedDeg, 6)}°`,
      areaText(area),
    ]),
  ];
}

/** What is said of a ring that stands for a curve: how it was made, and that it has the curve's area. */
export function drawnWords(corners: number): string {
  return `Computed and drawn with ${formatNumber(corners, 0)} corners, none more than ${MOST_OFF_CURVE_M * 1000} mm off the curve, placed so that the area stays that of the curve`;
}

/** The whole of it for a copy in plain text. */
export function curveText(curve: CurveWorking, corners: number, units: UnitSystem): readonly string[] {
  return [
    ...curveWords(curve, units),
    ...(curve.kind === 'arcs' ? ringText(curve.chords, units) : []),
    ...textTable(segmentTable(curve, units)),
    drawnWords(corners),
  ];
}

function lengthText(value: number): string {
  const text = formatNumber(value, LENGTH_DECIMALS);
  // Two decimals always, the rest where it says something.
  return text.replace(/(\.\d\d)(\d*?)0+$/, '$1$2');
}

function areaText(value: number): string {
  return formatNumber(value, AREA_DECIMALS);
}
