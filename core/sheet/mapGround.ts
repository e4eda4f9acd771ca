import { outlineRings } from '../curves/index.ts';
import type { PagePoint, Region } from '../spaces.ts';
import type { Outline, OutlineKind, Yard } from '../yard.ts';
import type { ResolvedYard } from '../zones/index.ts';
import { BED_INK, circleOutline, INK, shape, TURF_TINT, WHITE } from './drawing.ts';
import { findHatch, findHatchOf, type GroundInk, GROUND_INK, OVERLAP_INK } from './hatch.ts';
import { type MapView, regionToPage, ringToPage, yardToPage } from './mapView.ts';
import { boundsOf } from './pageGeometry.ts';
import type { PageMark, PictureMark } from './page.ts';

/** Painted from the ground up, after the zones' edges: a house wall that bounds a lawn is drawn as a wall. */
const PAINT_ORDER: readonly OutlineKind[] = [
  'keep-off',
  'bed',
  'water',
  'hardscape',
  'tree',
  'building',
  'check-plot',
];

export function outlineToPage(view: MapView, outline: Outline) {
  return outlineRings(outline).map((ring) => ringToPage(view, ring));
}

/** The ground of a map without any word on it: tinted turf, zone edges, shared and kept-off ground, hatched cut-outs. */
export function drawGround(
  view: MapView,
  yard: Yard,
  tinted: readonly Region[],
  { overlaps, strips }: Pick<ResolvedYard, 'overlaps' | 'strips'>,
): PageMark[] {
  const marks: PageMark[] = [];
  for (const region of tinted) marks.push(shape(regionToPage(view, region), TURF_TINT, null));
  for (const outline of yard.outlines) {
    if (outline.kind === 'zone') marks.push(shape(outlineToPage(view, outline), null, GROUND_INK.zone.edge));
  }
  for (const { regions } of overlaps) marks.push(...drawInked(view, regions, OVERLAP_INK));
  for (const { regions } of strips) marks.push(...drawInked(view, regions, GROUND_INK['keep-off']));
  for (const kind of PAINT_ORDER) {
    for (const outline of yard.outlines) {
      if (outline.kind === kind) marks.push(...drawOutline(view, outline));
    }
  }
  return marks;
}

function drawInked(view: MapView, regions: readonly Region[], ink: GroundInk): PageMark[] {
  const subpaths = regions.flatMap((region) => regionToPage(view, region));
  const hatch = findHatchOf(ink, subpaths, view.box);
  return [...(hatch === undefined ? [] : [hatch]), shape(subpaths, null, ink.edge)];
}

function drawOutline(view: MapView, outline: Outline): PageMark[] {
  const subpaths = outlineToPage(view, outline);
  const marks: PageMark[] = [];
  const opaque = outline.kind !== 'keep-off' && outline.kind !== 'check-plot';
  if (opaque) marks.push(shape(subpaths, WHITE, null));
  const hatch = findHatch(outline.kind, subpaths, view.box);
  if (hatch !== undefined) marks.push(hatch);
  marks.push(shape(subpaths, null, GROUND_INK[outline.kind].edge));
  if (outline.kind === 'tree') {
    const { xMm, yMm, widthMm, heightMm } = boundsOf(subpaths);
    const trunk: PagePoint = { xMm: xMm + widthMm / 2, yMm: yMm + heightMm / 2 };
    const radiusMm = Math.min(0.7, widthMm / 8);
    marks.push(
      shape([circleOutline(trunk, radiusMm)], BED_INK, { colour: INK, widthMm: 0.13, dashMm: null }),
    );
  }
  return marks;
}

/** Base pictures under the drawing, faint enough to be drawn over. */
export function drawPictures(view: MapView, yard: Yard, opacity: number): PictureMark[] {
  return yard.pictures.flatMap((picture) => {
    if (picture.placement.kind === 'unscaled') return [];
    const [nw, ne, , sw] = picture.placement.corners;
    return [
      {
        kind: 'picture',
        imageHash: picture.imageHash,
        corners: [yardToPage(view, nw), yardToPage(view, ne), yardToPage(view, sw)],
        opacity,
      },
    ];
  });
}
