import type { PagePoint } from '../spaces.ts';
import { boxesOverlap, boxInside, findCommonBox, type PageBox } from './drawing.ts';
import { boundsOf, crossingsOfRow } from './pageGeometry.ts';
import { StrokeGrid } from './StrokeGrid.ts';
import type { PageSubpath } from './page.ts';

/** A map with nothing on it yet. */
export function emptyRoom(frame: PageBox): LabelRoom {
  return { frame, taken: [], lines: new StrokeGrid(frame), turf: [], cutOuts: [] };
}

/**
 * What is already on one map: labels may not touch `taken` boxes and should keep off `lines`. Filled while a
 * map is drawn, most important labels first, and forgotten with it.
 */
export interface LabelRoom {
  readonly frame: PageBox;
  readonly taken: PageBox[];
  readonly lines: StrokeGrid;
  /** The tinted turf, and the cut-outs a tape's reading should not stand on. */
  readonly turf: PageSubpath[];
  readonly cutOuts: PageSubpath[];
}

/** Candidate places tried each way across a region: enough to find the gap between two lanes. */
const TRIES_ACROSS = 28;

/** One crossed line costs as much as lying this share of the region's size off its middle. */
const LINE_COST = 0.35;

export function isFree(room: LabelRoom, box: PageBox): boolean {
  return boxInside(box, room.frame) && !room.taken.some((other) => boxesOverlap(other, box));
}

/**
 * The middle of a free place for a label inside a region: off its edges and off every label, crossing few
 * lines, near the middle. Undefined when there is none.
 */
export function findRoomInside(
  room: LabelRoom,
  region: readonly PageSubpath[],
  widthMm: number,
  heightMm: number,
  mostCrossed: number = Number.POSITIVE_INFINITY,
): PagePoint | undefined {
  const bounds = findCommonBox(boundsOf(region), room.frame);
  if (bounds === undefined || bounds.widthMm < widthMm || bounds.heightMm < heightMm) return undefined;
  const size = Math.max(bounds.widthMm, bounds.heightMm);
  const edges = new StrokeGrid(room.frame);
  for (const subpath of region) edges.add(subpath);
  let best: { readonly point: PagePoint; readonly cost: number } | undefined;
  for (let row = 1; row < TRIES_ACROSS; row++) {
    const crossedAt = crossingsOfRow(region, bounds.yMm + (bounds.heightMm * row) / TRIES_ACROSS);
    for (let column = 1; column < TRIES_ACROSS; column++) {
      const point = {
        xMm: bounds.xMm + (bounds.widthMm * column) / TRIES_ACROSS,
        yMm: bounds.yMm + (bounds.heightMm * row) / TRIES_ACROSS,
      };
      const box = centredBox(point, widthMm, heightMm);
      const offX = point.xMm - bounds.xMm - bounds.widthMm / 2;
      const offY = point.yMm - bounds.yMm - bounds.heightMm / 2;
      const near = Math.hypot(offX, offY) / size;
      if (best !== undefined && near >= best.cost) continue;
      if (!isFree(room, box) || edges.countMeeting(box) > 0) continue;
      if (crossedAt.filter((xMm) => xMm > point.xMm).length % 2 === 0) continue;
      const crossed = room.lines.countMeeting(box);
      if (crossed > mostCrossed) continue;
      const cost = near + LINE_COST * crossed;
      if (best === undefined || cost < best.cost) best = { point, cost };
    }
  }
  return best?.point;
}

/** The middle of a free place just outside a box, the nearest first, right and left before above and below. */
export function findRoomBeside(
  room: LabelRoom,
  thing: PageBox,
  widthMm: number,
  heightMm: number,
): PagePoint | undefined {
  let best: { readonly point: PagePoint; readonly cost: number } | undefined;
  for (let ring = 0; ring < 7; ring++) {
    for (let turn = 0; turn < 16; turn++) {
      const angle = (turn * Math.PI) / 8;
      const reach = 0.8 + ring * 1.6;
      const point = {
        xMm: thing.xMm + thing.widthMm / 2 + Math.cos(angle) * (thing.widthMm / 2 + reach + widthMm / 2),
        yMm: thing.yMm + thing.heightMm / 2 - Math.sin(angle) * (thing.heightMm / 2 + reach + heightMm / 2),
      };
      const box = centredBox(point, widthMm, heightMm);
      if (boxesOverlap(box, thing) || !isFree(room, box)) continue;
      const cost = ring * 0.5 + room.lines.countMeeting(box) + (turn % 8 === 0 ? 0 : 0.2);
      if (best === undefined || cost < best.cost) best = { point, cost };
    }
  }
  return best?.point;
}

export function centredBox(centre: PagePoint, widthMm: number, heightMm: number): PageBox {
  return { xMm: centre.xMm - widthMm / 2, yMm: centre.yMm - heightMm / 2, widthMm, heightMm };
}
