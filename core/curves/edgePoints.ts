import type { YardPoint } from '../spaces.ts';
import type { TracedCorner } from '../yard.ts';
import { arcOf } from './arc.ts';
import { arcPoints } from './arcPoints.ts';
import { bezierPoints } from './bezier.ts';
import { smoothNeighbours, smoothPiece } from './smoothPiece.ts';

/** A placed point that a curve follows: a corner by its place along the edge, or the point on an arc. */
export type Lead = 'before' | 'from' | 'via' | 'to' | 'after';

/** A curved edge: what it follows, what it comes to, and what it would if those points were elsewhere. */
export interface EdgeCurve {
  readonly leads: readonly Lead[];
  readonly places: readonly YardPoint[];
  /** The corners that stand for it, without its ends, from the edge's own corner on; none when it is straight. */
  readonly points: readonly YardPoint[];
  readonly draw: (places: readonly YardPoint[], chords: number) => readonly YardPoint[];
}

type Corners = readonly TracedCorner[];

/** By the corner an edge begins at. Corners are kept as they are while others move, and their curves with them. */
const known = new WeakMap<TracedCorner, { readonly around: readonly unknown[]; readonly curve: EdgeCurve }>();

/**
 * The curve of an edge; null when it is traced straight. An edge that two outlines share comes to the same corners,
 * bit for bit, whichever way each was traced.
 */
export function edgeCurve(corners: Corners, edge: number): EdgeCurve | null {
  const [from, to] = [corners[edge], corners[(edge + 1) % corners.length]] as [TracedCorner, TracedCorner];
  if (from.run === undefined) return null;
  const { before, after } = smoothNeighbours(corners, edge);
  const around = from.run.kind === 'smooth' ? [to, before, after] : [to];
  const found = known.get(from);
  if (found?.around.every((corner, i) => corner === around[i])) return found.curve;
  const isForward = from.xM < to.xM || (from.xM === to.xM && from.yM <= to.yM);
  const curve =
    from.run.kind === 'arc'
      ? arcCurve(from, from.run.via, to, isForward)
      : smoothCurve(before, from, to, after, isForward);
  known.set(from, { around, curve });
  return curve;
}

/** The corners that stand for the curve of an edge, without its ends; none when it is straight. */
export function pointsBetween(corners: Corners, edge: number): readonly YardPoint[] {
  return edgeCurve(corners, edge)?.points ?? [];
}

function arcCurve(from: YardPoint, via: YardPoint, to: YardPoint, isForward: boolean): EdgeCurve {
  const draw = (places: readonly YardPoint[], chords?: number): readonly YardPoint[] => {
    const [a, middle, b] = oneWay(places, isForward) as [YardPoint, YardPoint, YardPoint];
    const arc = arcOf(a, middle, b);
    return arc === null ? [] : oneWay(arcPoints(arc, chords), isForward);
  };
  const places = [from, via, to];
  return { leads: ['from', 'via', 'to'], places, points: sound(draw(places)), draw };
}

function smoothCurve(
  before: YardPoint | null,
  from: YardPoint,
  to: YardPoint,
  after: YardPoint | null,
  isForward: boolean,
): EdgeCurve {
  const first = before === null ? 0 : 1;
  const draw = (places: readonly YardPoint[], chords?: number): readonly YardPoint[] => {
    const four = [
      before === null ? null : (places[0] as YardPoint),
      places[first] as YardPoint,
      places[first + 1] as YardPoint,
      places[first + 2] ?? null,
    ] as const;
    const [a, b, c, d] = oneWay(four, isForward) as typeof four;
    return oneWay(bezierPoints(smoothPiece(a, b, c, d), chords), isForward);
  };
  const all: readonly (readonly [Lead, YardPoint | null])[] = [
    ['before', before],
    ['from', from],
    ['to', to],
    ['after', after],
  ];
  const there = all.filter((each): each is readonly [Lead, YardPoint] => each[1] !== null);
  const places = there.map(([, place]) => place);
  return { leads: there.map(([lead]) => lead), places, points: sound(draw(places)), draw };
}

/** A curve through places beyond all numbers is drawn straight; the kernel's check says what ails it. */
function sound(points: readonly YardPoint[]): readonly YardPoint[] {
  return points.every(({ xM, yM }) => Number.isFinite(xM) && Number.isFinite(yM)) ? points : [];
}

/** From west to east, so that walking the edge the other way rounds alike. */
function oneWay<T>(list: readonly T[], isForward: boolean): readonly T[] {
  return isForward ? list : [...list].reverse();
}
