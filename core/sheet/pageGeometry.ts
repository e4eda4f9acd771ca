import type { PagePoint } from '../spaces.ts';
import type { PageBox } from './drawing.ts';
import type { PageSubpath } from './page.ts';

/** Where closed subpaths cross a level line of the page. */
export function crossingsOfRow(subpaths: readonly PageSubpath[], yMm: number): number[] {
  const crossings: number[] = [];
  for (const { points } of subpaths) {
    for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
      const a = points[i] as PagePoint;
      const b = points[j] as PagePoint;
      if (a.yMm > yMm === b.yMm > yMm) continue;
      crossings.push(a.xMm + ((yMm - a.yMm) / (b.yMm - a.yMm)) * (b.xMm - a.xMm));
    }
  }
  return crossings;
}

/** Whether a page point is inside closed subpaths by the even-odd rule. */
export function insideSubpaths(subpaths: readonly PageSubpath[], point: PagePoint): boolean {
  return crossingsOfRow(subpaths, point.yMm).filter((xMm) => point.xMm < xMm).length % 2 === 1;
}

/** Whether a straight stroke touches a box. Asked a million times a sheet, so it makes nothing on the way. */
export function strokeMeetsBox(a: PagePoint, b: PagePoint, box: PageBox): boolean {
  const right = box.xMm + box.widthMm;
  const foot = box.yMm + box.heightMm;
  if (a.xMm < box.xMm && b.xMm < box.xMm) return false;
  if (a.xMm > right && b.xMm > right) return false;
  if (a.yMm < box.yMm && b.yMm < box.yMm) return false;
  if (a.yMm > foot && b.yMm > foot) return false;
  // Their bounds meet: the stroke misses only if all four corners lie strictly on one side of its line.
  const dx = b.xMm - a.xMm;
  const dy = b.yMm - a.yMm;
  const nw = dx * (box.yMm - a.yMm) - dy * (box.xMm - a.xMm);
  const ne = dx * (box.yMm - a.yMm) - dy * (right - a.xMm);
  const sw = dx * (foot - a.yMm) - dy * (box.xMm - a.xMm);
  const se = dx * (foot - a.yMm) - dy * (right - a.xMm);
  return !((nw > 0 && ne > 0 && sw > 0 && se > 0) || (nw < 0 && ne < 0 && sw < 0 && se < 0));
}

/** The part of a straight stroke in a box (Liang and Barsky 1984: clip the parameter against four sides). */
export function findStrokeInBox(
  a: PagePoint,
  b: PagePoint,
  box: PageBox,
): readonly [PagePoint, PagePoint] | undefined {
  let enter = 0;
  let leave = 1;
  const dx = b.xMm - a.xMm;
  const dy = b.yMm - a.yMm;
  const sides: readonly (readonly [number, number])[] = [
    [-dx, a.xMm - box.xMm],
    [dx, box.xMm + box.widthMm - a.xMm],
    [-dy, a.yMm - box.yMm],
    [dy, box.yMm + box.heightMm - a.yMm],
  ];
  for (const [towards, room] of sides) {
    if (towards === 0) {
      if (room < 0) return undefined;
    } else if (towards < 0) {
      enter = Math.max(enter, room / towards);
    } else {
      leave = Math.min(leave, room / towards);
    }
  }
  if (enter > leave) return undefined;
  const pointAt = (way: number) => ({ xMm: a.xMm + dx * way, yMm: a.yMm + dy * way });
  return [pointAt(enter), pointAt(leave)];
}

/** Whether any edge of the subpaths touches a box. */
export function edgesMeetBox(subpaths: readonly PageSubpath[], box: PageBox): boolean {
  return subpaths.some(({ points, closed }) =>
    points.some((point, i) => {
      const next = i + 1 < points.length ? points[i + 1] : closed ? points[0] : undefined;
      return next !== undefined && strokeMeetsBox(point, next, box);
    }),
  );
}

export function boundsOf(subpaths: readonly PageSubpath[]): PageBox {
  const xs = subpaths.flatMap((subpath) => subpath.points.map((point) => point.xMm));
  const ys = subpaths.flatMap((subpath) => subpath.points.map((point) => point.yMm));
  // Not Math.min(...xs): a traced outline may have more corners than a call takes arguments.
  const least = (values: readonly number[]) =>
    values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const most = (values: readonly number[]) =>
    values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const xMm = least(xs);
  const yMm = least(ys);
  return { xMm, yMm, widthMm: most(xs) - xMm, heightMm: most(ys) - yMm };
}

export function distanceMm(a: PagePoint, b: PagePoint): number {
  return Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);
}

export function pathLengthMm(points: readonly PagePoint[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i++)
    sum += distanceMm(points[i - 1] as PagePoint, points[i] as PagePoint);
  return sum;
}

/** The point a way along a path, and the unit direction there; the path has at least two points. */
export function pointAlong(
  points: readonly PagePoint[],
  wayMm: number,
): { readonly point: PagePoint; readonly dx: number; readonly dy: number } {
  let left = wayMm;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1] as PagePoint;
    const b = points[i] as PagePoint;
    const length = distanceMm(a, b);
    if (length > 0 && (left <= length || i === points.length - 1)) {
      const dx = (b.xMm - a.xMm) / length;
      const dy = (b.yMm - a.yMm) / length;
      const way = Math.min(left, length);
      return { point: { xMm: a.xMm + dx * way, yMm: a.yMm + dy * way }, dx, dy };
    }
    left -= length;
  }
  return { point: points[0] as PagePoint, dx: 1, dy: 0 };
}
