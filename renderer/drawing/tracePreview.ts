import { edgePath, tracedRing } from '../../core/curves/index.ts';
import { findCrossing, signedAreaM2 } from '../../core/kernel/index.ts';
import type { Traced, TracedCorner } from '../../core/yard.ts';
import { ovalDimensions, outsideDimensions } from './dimensions.ts';
import type { OvalState, TraceState } from './drawing.ts';
import { runOf, withRun } from './edges.ts';
import type { Preview } from './previewOf.ts';
import { ovalTo } from './states/oval.ts';
import { closedTrace } from './states/trace.ts';

/** An outline that is being traced, its next edge following the hand. */
export function tracePreview(state: TraceState): Partial<Preview> {
  const { corners, aim, outlineKind, edge } = state;
  const last = corners[corners.length - 1];
  const shape = shapeInHand(state);
  const settled = Math.max(corners.length - 1, 0);
  const edges = shape.corners.length - 1;
  const paths = Array.from({ length: Math.max(edges, 0) }, (_, i) => edgePath(shape, i));
  const ring = tracedRing(shape);
  // A crossing counts once the person tried to close; while the pointer roams it would only flicker.
  const { problem } = state;
  const crosses = problem?.kind === 'shape/self-crossing' || problem?.kind === 'shape/not-uncrossed';
  const closed = crosses ? closedTrace(state) : null;
  const closes = aim?.to === 'first-corner';
  const closing = edges >= 2 || (edges === 1 && ring.length > 2) ? edgePath(shape, edges) : [];
  const pendingVia = edge.kind === 'arc' && edge.via !== null ? [edge.via] : [];
  return {
    traced: {
      kind: outlineKind,
      corners,
      vias: [...corners.flatMap(({ run }) => (run?.kind === 'arc' ? [run.via] : [])), ...pendingVia],
      line: last === undefined ? [] : [...paths.slice(0, settled).flatMap((path) => path.slice(0, -1)), last],
      ground: ring,
    },
    rubber: last && aim ? (closes ? closing : (paths[settled] ?? [last, aim.at])) : [],
    closing: closes && closing.length > 0 ? [] : closing,
    broken: closed?.ok ? [tracedRing(closed.value)] : [],
    crossing: crosses ? problem.facts.crossing : null,
    dimensions: outsideDimensions(shape, Math.max(edges, 0)),
    areaM2: ring.length >= 3 && findCrossing(ring) === undefined ? Math.abs(signedAreaM2(ring)) : null,
    aim,
  };
}

type Cornered = Extract<Traced, { kind: 'corners' }>;

/** The corners so far and the one the hand points at, closed: straight, or smoothly while the edges are smooth. */
function shapeInHand(state: TraceState): Cornered {
  const { corners, aim, edge } = state;
  const last = corners[corners.length - 1];
  if (last === undefined || aim === null || aim.to === 'first-corner') {
    const closed = closedTrace(state);
    return closed.ok && closed.value.kind === 'corners' ? closed.value : { kind: 'corners', corners };
  }
  const run = runOf(edge, last, aim.at);
  const next: TracedCorner = edge.kind === 'smooth' ? { ...aim.at, run: { kind: 'smooth' } } : aim.at;
  // A radius too small for where the hand points is said when the corner is placed; until then the edge is straight.
  const onward = withRun(last, run.ok ? run.value : undefined);
  return { kind: 'corners', corners: [...corners.slice(0, -1), onward, next] };
}

/** A circle or an ellipse, its size following the hand. */
export function ovalPreview(state: OvalState): Partial<Preview> {
  const { aim, outlineKind, points } = state;
  const traced = aim === null ? null : ovalTo(state, aim.at);
  const ring = traced === null ? [] : tracedRing(traced);
  return {
    traced: { kind: outlineKind, corners: points, vias: [], line: [], ground: ring },
    rubber: ring.length > 0 ? [...ring, ...ring.slice(0, 1)] : [],
    dimensions: traced === null ? [] : ovalDimensions(traced),
    areaM2: ring.length > 0 ? Math.abs(signedAreaM2(ring)) : null,
    aim,
  };
}
