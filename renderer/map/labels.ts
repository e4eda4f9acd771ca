import { interiorPoint, ringBounds } from '../../core/kernel/index.ts';
import type { Region, Ring, YardPoint } from '../../core/spaces.ts';
import type { Outline } from '../../core/yard.ts';
import type { Lens } from './lens.ts';

/** A figure of the condensed face at label size, in pixels. */
const LETTER_PX = 7.5;
const LINE_PX = 18;

const places = new WeakMap<Ring, YardPoint>();

/** A good place for a name inside a region; worked out once for a shape. */
export function regionLabelPlace(region: Region): YardPoint {
  const known = places.get(region.outer);
  if (known !== undefined) return known;
  const place = interiorPoint(region);
  places.set(region.outer, place);
  return place;
}

export function labelPlace(outline: Outline): YardPoint {
  return regionLabelPlace(outline);
}

/** Whether a name of so many letters has room in a shape at this zoom. */
export function fitsIn(ring: Ring, lens: Lens, letters: number): boolean {
  const box = ringBounds(ring);
  const widthPx = (box.maxXM - box.minXM) / lens.metresPerPx;
  const heightPx = (box.maxYM - box.minYM) / lens.metresPerPx;
  return widthPx >= letters * LETTER_PX && heightPx >= LINE_PX;
}
