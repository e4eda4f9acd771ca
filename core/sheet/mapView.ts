import { type RingBounds, ringBounds } from '../kernel/index.ts';
import type { PagePoint, Region, Ring, YardPoint } from '../spaces.ts';
import type { PageBox } from './drawing.ts';
import type { PageSubpath } from './page.ts';

/** A window on the yard: which ground falls in which box of the page, at which scale. North is up. */
export interface MapView {
  readonly box: PageBox;
  readonly scale: number;
  readonly centre: YardPoint;
}

export type GroundBounds = RingBounds;

/** The smallest upright rectangle round all points; undefined when there are none. */
export function findGroundBounds(points: readonly YardPoint[]): GroundBounds | undefined {
  return points.length === 0 ? undefined : ringBounds(points);
}

export function viewOf(bounds: GroundBounds, box: PageBox, scale: number): MapView {
  return {
    box,
    scale,
    centre: { xM: (bounds.minXM + bounds.maxXM) / 2, yM: (bounds.minYM + bounds.maxYM) / 2 },
  };
}

/** Where ground lies on the paper: 1 m is exactly 1000 / scale mm, east right, north up. */
export function yardToPage(view: MapView, point: YardPoint): PagePoint {
  const mmPerM = 1000 / view.scale;
  return {
    xMm: view.box.xMm + view.box.widthMm / 2 + (point.xM - view.centre.xM) * mmPerM,
    yMm: view.box.yMm + view.box.heightMm / 2 - (point.yM - view.centre.yM) * mmPerM,
  };
}

export function ringToPage(view: MapView, ring: Ring): PageSubpath {
  return { points: ring.map((point) => yardToPage(view, point)), closed: true };
}

export function regionToPage(view: MapView, region: Region): PageSubpath[] {
  return [region.outer, ...region.holes].map((ring) => ringToPage(view, ring));
}
