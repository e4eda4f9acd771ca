import type { YardPoint } from '../spaces.ts';
import type { EdgeRun, TracedCorner } from '../yard.ts';
import { arcOf } from './arc.ts';
import { arcPoints } from './arcPoints.ts';
import { bezierPoints } from './bezier.ts';
import { smoothNeighbours, smoothPiece } from './smoothPiece.ts';

/** A placed point that a curve follows: a corner, or the point on the arc of an edge. */
export interface Lead {
  readonly kind: 'corner' | 'via';
  /** Index of the corner, or of the edge. */
  readonly at: number;
  readonly place: YardPoint;
}

/** A curved edge: what it follows, and what it comes to when those points are where they are told to be. */
export interface EdgeCurve {
  readonly leads: readonly Lead[];
  /** Without its ends, from the edge's own corner on. `chords` null = as many as it takes. */
  readonly draw: (places: readonly YardPoint[], chords: number | null) => readonly YardPoint[];
}

/** The curve of an edge; null when it is traced straight. */
export function edgeCurve(corners: readonly TracedCorner[], edge: number): EdgeCurve | null {
  const next = (edge + 1) % corners.length;
  const [from, to] = [corners[edge], corners[next]] as [TracedCorner, TracedCorner];
  if (from.run === undefined) return null;
  const isForward = from.xM < to.xM || (from.xM === to.xM && from.yM <= to.yM);
  const corner = (at: number): Lead => ({ kind: 'corner', at, place: corners[at] as TracedCorner });
  return from.run.kind === 'arc'
    ? arcCurve(from.run, edge, [corner(edge), corner(next)], isForward)
    : smoothCurve(smoothNeighbours(corners, edge), [corner(edge), corner(next)], corner, isForward);
}

/**
 * The corners that stand for the curve of an edge, without its ends; none when it is straight. An edge that two
 * outlines share comes to the same corners, bit for bit, whichever way each was traced.
 */
export function pointsBetween(corners: readonly TracedCorner[], edge: number): readonly YardPoint[] {
  const curve = edgeCurve(corners, edge);
  if (curve === null) return [];
  const points = curve.draw(
    curve.leads.map(({ place }) => place),
    null,
  );
  // A curve through places beyond all numbers is drawn straight; the kernel's check says what ails it.
  return points.every(({ xM, yM }) => Number.isFinite(xM) && Number.isFinite(yM)) ? points : [];
}

function arcCurve(
  run: Extract<EdgeRun, { kind: 'arc' }>,
  edge: number,
  [from, to]: readonly [Lead, Lead],
  isForward: boolean,
): EdgeCurve {
  return {
    leads: [from, { kind: 'via', at: edge, place: run.via }, to],
    draw: (places, chords) => {
      const [a, via, b] = oneWay(places, isForward) as [YardPoint, YardPoint, YardPoint];
      const arc = arcOf(a, via, b);
      return arc === null ? [] : oneWay(arcPoints(arc, chords ?? undefined), isForward);
    },
  };
}

function smoothCurve(
  { before, after }: { readonly before: number | null; readonly after: number | null },
  [from, to]: readonly [Lead, Lead],
  corner: (at: number) => Lead,
  isForward: boolean,
): EdgeCurve {
  const leads = [
    ...(before === null ? [] : [corner(before)]),
    from,
    to,
    ...(after === null ? [] : [corner(after)]),
  ];
  const first = before === null ? 0 : 1;
  return {
    leads,
    draw: (places, chords) => {
      const four = [
        before === null ? null : (places[0] as YardPoint),
        places[first] as YardPoint,
        places[first + 1] as YardPoint,
        places[first + 2] ?? null,
      ] as const;
      const [a, b, c, d] = oneWay(four, isForward) as typeof four;
      return oneWay(bezierPoints(smoothPiece(a, b, c, d), chords ?? undefined), isForward);
    },
  };
}

/** From west to east, so that walking the edge the other way rounds alike. */
function oneWay<T>(list: readonly T[], isForward: boolean): readonly T[] {
  return isForward ? list : [...list].reverse();
}
