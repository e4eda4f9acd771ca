/**
 * Sheet: the printed plan of one job, as pages of drawing steps in millimetres. In: the yard, its job plan, a
 * paper and a scale; out: pages, and an SVG preview of one. Method: everything is laid out to the exact scale on
 * fixed parts of the page; labels go most important first and only where nothing else stands; text is measured
 * with the fonts' own widths. Black-and-white legible: kinds differ by hatch and line weight. Out of scope: PDF
 * bytes, and any figure that is not already in the plan.
 */
export { type CoverageFigures, coverageFigures } from './coverageFigures.ts';
export { coveredWords, loadUseWords, outsideWords } from './coverageWords.ts';
export { depthFigures, depthWords, type InkDepth } from './depthFigures.ts';
export { layoutSheet, type SheetInput } from './layoutSheet.ts';
export { textWidthMm } from './measureText.ts';
export type {
  ClipMark,
  PageColour,
  PageMark,
  PageStroke,
  PageSubpath,
  PathMark,
  PictureMark,
  SheetPage,
  TextMark,
} from './page.ts';
export type { Paper } from './paper.ts';
export { type LoadCounts, type PassCount, passCounts } from './passCounts.ts';
export { draftingScales, scaleWords } from './scale.ts';
export { type PictureHref, sheetToSvg } from './sheetToSvg.ts';
export { sectionsOfFill } from './fillWords.ts';
export {
  type FillFigures,
  type LoadFigures,
  type SheetFigures,
  sheetFigures,
  type ZoneFigures,
} from './sheetFigures.ts';
export { type ShownWalks, type WalkFigures, walkFigures, walkText, wetWords } from './walkFigures.ts';
