import { tracedRegion, tracedRing } from '../../core/curves/index.ts';
import { regionAreaM2, ringBounds } from '../../core/kernel/index.ts';
import type { Region, Ring, YardPoint } from '../../core/spaces.ts';
import type { Outline } from '../../core/yard.ts';
import type { ResolvedZone } from '../../core/zones/index.ts';
import type { Xy } from '../drawing/index.ts';
import type { Lens } from './lens.ts';

/** A letter of the condensed face at label size, and a line of it, in pixels. */
export const LETTER_PX = 7.2;
export const LINE_PX = 19;

/** A shape smaller than this on the screen goes without a name until one looks closer. */
const LEAST_SHAPE_PX = 16;

/** A name looking for a place: the first of `places` (its middle) where it meets no other name. */
export interface LabelAsk {
  readonly key: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly places: readonly Xy[];
}

/** A part of the sketch that something stands on, by its middle. */
export interface TakenBox {
  readonly at: Xy;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Gives each name a place clear of what stands there, the first asked first; one that finds none is left out. */
export function placeLabels(
  asks: readonly LabelAsk[],
  standing: readonly TakenBox[] = [],
): ReadonlyMap<string, Xy> {
  const placed = new Map<string, Xy>();
  const taken = [...standing];
  for (const { key, widthPx, heightPx, places } of asks) {
    const at = places.find((place) =>
      taken.every((other) => areApart({ at: place, widthPx, heightPx }, other)),
    );
    if (at === undefined) continue;
    placed.set(key, at);
    taken.push({ at, widthPx, heightPx });
  }
  return placed;
}

function areApart(a: TakenBox, b: TakenBox): boolean {
  return (
    Math.abs(a.at.x - b.at.x) >= (a.widthPx + b.widthPx) / 2 ||
    Math.abs(a.at.y - b.at.y) >= (a.heightPx + b.heightPx) / 2
  );
}

/** Where an outline's name may stand: inside when it has room there, else, `besideToo`, under it or over it. */
export function outlinePlaces(
  outline: Outline,
  zone: ResolvedZone | undefined,
  lens: Lens,
  widthPx: number,
  heightPx: number,
  besideToo: boolean,
): readonly Xy[] {
  const box = ringBounds(tracedRing(outline.outer));
  const wide = (box.maxXM - box.minXM) / lens.metresPerPx;
  const high = (box.maxYM - box.minYM) / lens.metresPerPx;
  if (Math.max(wide, high) < LEAST_SHAPE_PX) return [];
  const whole = tracedRegion(outline);
  const ground = zone === undefined ? whole : (largest(zone.treated) ?? whole);
  const middle = insidePlace(ground, heightPx * lens.metresPerPx);
  const inside = fits(ground, middle, lens, widthPx, heightPx) ? [lens.toLayer(middle)] : [];
  // A zone's name outside it would name its neighbour.
  if (outline.kind === 'zone' || !besideToo) return inside;
  const across = (box.minXM + box.maxXM) / 2;
  const under = lens.toLayer({ xM: across, yM: box.minYM });
  const over = lens.toLayer({ xM: across, yM: box.maxYM });
  const off = heightPx / 2 + 3;
  return [...inside, { x: under.x, y: under.y + off }, { x: over.x, y: over.y - off }];
}

const insides = new WeakMap<Ring, { readonly heightM: number; readonly place: YardPoint }>();

/** A place inside a region with room for words of a height; worked out once for a shape and a zoom. */
export function insidePlace(region: Region, heightM: number): YardPoint {
  const known = insides.get(region.outer);
  if (known !== undefined && known.heightM === heightM) return known.place;
  const place = widestPlace(region, heightM / 2);
  insides.set(region.outer, { heightM, place });
  return place;
}

/** Rows looked at, and how much nearer to the middle row counts against being wide. */
const ROWS = 17;
const OFF_MIDDLE = 0.5;

/**
 * The middle of the widest stretch that is inside at the head, the middle and the foot of the words, rows near
 * the middle preferred. Words are wide and low, so this suits them better than the point furthest from every
 * edge, and it is cheap enough to be asked again on every frame of a drag (rows × corners).
 */
function widestPlace(region: Region, halfHeightM: number): YardPoint {
  const box = ringBounds(region.outer);
  const stepM = (box.maxYM - box.minYM) / (ROWS + 1);
  const rows = rowStretches(region, box.minYM, stepM);
  const rowsAbove = rowStretches(region, box.minYM + halfHeightM, stepM);
  const rowsBelow = rowStretches(region, box.minYM - halfHeightM, stepM);
  let best = { xM: (box.minXM + box.maxXM) / 2, yM: (box.minYM + box.maxYM) / 2 };
  let bestScore = 0;
  for (let row = 1; row <= ROWS; row += 1) {
    const yM = box.minYM + row * stepM;
    const offMiddle = Math.abs(row - (ROWS + 1) / 2) / (ROWS / 2);
    for (const stretch of rows[row] ?? []) {
      const head = (rowsAbove[row] ?? []).filter((other) => meet(other, stretch));
      const foot = (rowsBelow[row] ?? []).filter((other) => meet(other, stretch));
      // With no room for the height anywhere, the row's own stretch is still the best there is, at a discount.
      const narrowed = head.flatMap((h) => foot.map((f) => common(common(stretch, h), f)));
      for (const [room, share] of [[stretch, 0.2] as const, ...narrowed.map((each) => [each, 1] as const)]) {
        const score = (room.rightM - room.leftM) * share * (1 - OFF_MIDDLE * offMiddle);
        if (score <= bestScore) continue;
        bestScore = score;
        best = { xM: (room.leftM + room.rightM) / 2, yM };
      }
    }
  }
  return best;
}

function meet(a: Stretch, b: Stretch): boolean {
  return a.leftM < b.rightM && b.leftM < a.rightM;
}

function common(a: Stretch, b: Stretch): Stretch {
  return { leftM: Math.max(a.leftM, b.leftM), rightM: Math.min(a.rightM, b.rightM) };
}

interface Stretch {
  readonly leftM: number;
  readonly rightM: number;
}

/** For rows 1 to ROWS, one step apart from a start: the parts of each that are inside, from west to east. */
function rowStretches(region: Region, startM: number, stepM: number): readonly (readonly Stretch[])[] {
  const crossings: number[][] = Array.from({ length: ROWS + 1 }, () => []);
  for (const ring of [region.outer, ...region.holes]) {
    for (const [i, a] of ring.entries()) {
      const b = ring[(i + 1) % ring.length];
      if (b === undefined || a.yM === b.yM) continue;
      // A row on a corner belongs to the edge above it, so that it is crossed once and not twice.
      const low = Math.max(1, Math.ceil((Math.min(a.yM, b.yM) - startM) / stepM));
      const high = Math.min(ROWS, Math.ceil((Math.max(a.yM, b.yM) - startM) / stepM) - 1);
      for (let row = low; row <= high; row += 1) {
        const yM = startM + row * stepM;
        crossings[row]?.push(a.xM + ((yM - a.yM) / (b.yM - a.yM)) * (b.xM - a.xM));
      }
    }
  }
  return crossings.map(paired);
}

/** The parts of one row that are inside, from west to east. */
function stretches(region: Region, yM: number): readonly Stretch[] {
  return rowStretches(region, yM - 1, 1)[1] ?? [];
}

function paired(crossings: number[]): readonly Stretch[] {
  crossings.sort((a, b) => a - b);
  const found: Stretch[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    found.push({ leftM: crossings[i] ?? 0, rightM: crossings[i + 1] ?? 0 });
  }
  return found;
}

/** Whether a name of a size has room round a place: the chords at its top, middle and foot are long enough. */
export function fits(region: Region, at: YardPoint, lens: Lens, widthPx: number, heightPx: number): boolean {
  const halfM = (widthPx / 2) * lens.metresPerPx;
  const halfHeightM = (heightPx / 2) * lens.metresPerPx;
  return [-halfHeightM, 0, halfHeightM].every((up) =>
    stretches(region, at.yM + up).some(
      ({ leftM, rightM }) => leftM <= at.xM - halfM && rightM >= at.xM + halfM,
    ),
  );
}

function largest(regions: readonly Region[]): Region | undefined {
  return regions.reduce<Region | undefined>(
    (best, region) => (best === undefined || regionAreaM2(region) > regionAreaM2(best) ? region : best),
    undefined,
  );
}
