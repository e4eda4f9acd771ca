import { distanceM, distanceToEdgeM } from '../kernel/index.ts';
import type { Cut, CutLine } from '../sections/index.ts';
import type { YardPoint } from '../spaces.ts';
import { alongAndLeft } from './placing.ts';

/** Where one flag stands, and the cut lines that end there or pass. */
export interface FlagPlace {
  readonly at: YardPoint;
  /** The straight rows of cuts it stands on, by their place in the list of rows. */
  readonly rows: readonly number[];
}

/** A straight row of cuts: the runs of one line over the ground, or a single cut. */
interface CutRow {
  readonly from: YardPoint;
  readonly to: YardPoint;
}

/** Ends nearer together than this share a flag. */
const SAME_FLAG_M = 0.005;
/** A place this near to a cut is on it. */
const ON_ROW_M = 0.003;

/**
 * The places flags are needed at: every end of a cut line, once, in an order to set them in: of each row its outermost
 * first, and no row before those it ends on.
 */
export function flagPlaces(cuts: readonly Cut[], cutLines: readonly CutLine[]): FlagPlace[] {
  const rows = cutRows(cuts);
  const ends: YardPoint[] = [];
  for (const end of cutLines.flatMap(({ from, to }) => [from, to])) {
    if (!ends.some((other) => distanceM(other, end) <= SAME_FLAG_M)) ends.push(end);
  }
  const places = ends.map((at): FlagPlace => {
    return { at, rows: rows.flatMap((row, i) => (isOn(row, at) ? [i] : [])) };
  });
  const inOrder = rowOrder(rows).flatMap((row) =>
    places
      .filter((place) => place.rows.includes(row))
      .sort((a, b) => outerness(rows[row] as CutRow, b.at) - outerness(rows[row] as CutRow, a.at)),
  );
  return [...new Set([...inOrder, ...places])];
}

/** Cuts one after the other that lie in one line are a row. */
function cutRows(cuts: readonly Cut[]): CutRow[] {
  const rows: CutRow[] = [];
  for (const { from, to } of cuts) {
    const last = rows.at(-1);
    const isInLine =
      last !== undefined &&
      [from, to].every((end) => Math.abs(alongAndLeft(last.from, last.to, end).leftM) <= ON_ROW_M);
    if (last === undefined || !isInLine) rows.push({ from, to });
    else rows[rows.length - 1] = farthestApart([last.from, last.to, from, to]);
  }
  return rows;
}

function farthestApart(places: readonly YardPoint[]): CutRow {
  const pairs = places.flatMap((from, i) => places.slice(i + 1).map((to) => ({ from, to })));
  return pairs.reduce((best, next) =>
    distanceM(next.from, next.to) > distanceM(best.from, best.to) ? next : best,
  );
}

function isOn({ from, to }: CutRow, at: YardPoint): boolean {
  return distanceToEdgeM(from, to, at) <= ON_ROW_M;
}

/** How far a place is from the middle of its row. */
function outerness({ from, to }: CutRow, at: YardPoint): number {
  const { alongM } = alongAndLeft(from, to, at);
  return Math.round(Math.abs(alongM - distanceM(from, to) / 2) * 1e6);
}

/** Rows in the order given, but none before a row that one of its ends stands on. */
function rowOrder(rows: readonly CutRow[]): readonly number[] {
  const restsOn = rows.map((row, i) =>
    rows.flatMap((other, j) => (i !== j && restsWithin(other, row) ? [j] : [])),
  );
  const done: number[] = [];
  const waiting = rows.map((_, i) => i);
  while (waiting.length > 0) {
    // Rows that rest on one another in a ring are taken as they come.
    const ready = waiting.findIndex((row) => (restsOn[row] ?? []).every((other) => done.includes(other)));
    done.push(...waiting.splice(Math.max(0, ready), 1));
  }
  return done;
}

/** Whether a row ends between the ends of another. */
function restsWithin(other: CutRow, { from, to }: CutRow): boolean {
  return [from, to].some(
    (end) =>
      isOn(other, end) && distanceM(other.from, end) > SAME_FLAG_M && distanceM(other.to, end) > SAME_FLAG_M,
  );
}
