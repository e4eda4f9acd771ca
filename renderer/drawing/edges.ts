import { arcByRadius, arcOf, edgePath } from '../../core/curves/index.ts';
import { distanceM, lineLengthM } from '../../core/kernel/index.ts';
import { ok, type Result } from '../../core/result.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { EdgeRun, Traced, TracedCorner } from '../../core/yard.ts';
import type { EdgeToCome } from './drawing.ts';
import { middle } from './plane.ts';

/** How an edge between two corners would run; undefined = straight, as is an arc whose point is still to come. */
export function runOf(edge: EdgeToCome, from: YardPoint, to: YardPoint): Result<EdgeRun | undefined> {
  switch (edge.kind) {
    case 'straight':
      return ok(undefined);
    case 'smooth':
      return ok({ kind: 'smooth' });
    case 'arc':
      return ok(edge.via === null ? undefined : { kind: 'arc', via: edge.via });
    case 'radius': {
      const via = arcByRadius(from, to, edge.radiusM, edge.side, edge.long);
      return via.ok ? ok({ kind: 'arc', via: via.value }) : via;
    }
  }
}

/** A corner with its edge running so. */
export function withRun(corner: TracedCorner, run: EdgeRun | undefined): TracedCorner {
  const { run: _, ...rest } = corner;
  return run === undefined ? rest : { ...rest, run };
}

/** A ring with one edge running another way; an edge that becomes an arc bulges outwards by a quarter of its length. */
export function withEdge(traced: Traced, edge: number, to: EdgeToCome): Result<Traced> {
  if (traced.kind !== 'corners') return ok(traced);
  const [from, next] = endsOf(traced, edge);
  if (from === undefined || next === undefined) return ok(traced);
  if (to.kind === 'arc' && to.via === null && from.run?.kind === 'arc') return ok(traced);
  const asked = to.kind === 'arc' && to.via === null ? { ...to, via: bulge(from, next) } : to;
  const run = runOf(asked, from, next);
  return run.ok ? ok({ ...traced, corners: traced.corners.with(edge, withRun(from, run.value)) }) : run;
}

/** What an arc is measured by; null for an edge that is none. */
export interface ArcFigures {
  readonly radiusM: number;
  readonly side: 'left' | 'right';
  /** More than half of its circle. */
  readonly long: boolean;
}

export function arcFigures(traced: Traced, edge: number): ArcFigures | null {
  if (traced.kind !== 'corners') return null;
  const [from, next] = endsOf(traced, edge);
  if (from?.run?.kind !== 'arc' || next === undefined) return null;
  const arc = arcOf(from, from.run.via, next);
  if (arc === null) return null;
  // Counter-clockwise round its centre an arc bulges to the right of its chord.
  const side = arc.sweepRad > 0 ? 'right' : 'left';
  return { radiusM: arc.radiusM, side, long: Math.abs(arc.sweepRad) > Math.PI };
}

/** Length along an edge, curve or not. */
export function edgeLengthM(traced: Traced, edge: number): number {
  return lineLengthM(edgePath(traced, edge));
}

/** A new corner at a place on an edge, after the corner it begins at; both parts run and are kept off as the edge was. */
export function withCornerOn(traced: Traced, edge: number, place: YardPoint): Traced {
  if (traced.kind !== 'corners') return traced;
  const from = traced.corners[edge];
  if (from === undefined) return traced;
  const { xM, yM } = place;
  return { ...traced, corners: traced.corners.toSpliced(edge + 1, 0, { ...from, xM, yM }) };
}

/** Without one corner. The edge that closes the gap is straight, unless both before and after were smooth. */
export function withoutCorner(traced: Traced, at: number): Traced {
  if (traced.kind !== 'corners') return traced;
  const { corners } = traced;
  const beforeAt = (at + corners.length - 1) % corners.length;
  const [before, gone] = [corners[beforeAt], corners[at]];
  if (before === undefined || gone === undefined) return traced;
  const smooth = before.run?.kind === 'smooth' && gone.run?.kind === 'smooth';
  const joined = withRun(before, smooth ? before.run : undefined);
  return { ...traced, corners: corners.with(beforeAt, joined).toSpliced(at, 1) };
}

function endsOf(
  traced: Extract<Traced, { kind: 'corners' }>,
  edge: number,
): readonly [TracedCorner | undefined, TracedCorner | undefined] {
  return [traced.corners[edge], traced.corners[(edge + 1) % traced.corners.length]];
}

/** To the right of its way, which is outside of a ring that runs counter-clockwise. */
function bulge(from: YardPoint, to: YardPoint): YardPoint {
  const { xM, yM } = middle(from, to);
  return distanceM(from, to) === 0
    ? { xM, yM }
    : { xM: xM + (to.yM - from.yM) / 4, yM: yM - (to.xM - from.xM) / 4 };
}
