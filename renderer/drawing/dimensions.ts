import { edgePath, ownPoints, tracedRing } from '../../core/curves/index.ts';
import { distanceM, lineLengthM, signedAreaM2 } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Traced } from '../../core/yard.ts';
import type { Handle } from './drawing.ts';
import { arcFigures } from './edges.ts';
import { alongLine } from './plane.ts';

/** A measured line to be written beside its edge. */
export interface Dimension {
  readonly from: YardPoint;
  readonly to: YardPoint;
  readonly lengthM: number;
  /** Of a curve: where its length is written, and the radius of an arc. */
  readonly curve?: { readonly at: YardPoint; readonly radiusM: number | null };
}

export function dimension(from: YardPoint, to: YardPoint): Dimension {
  return { from, to, lengthM: distanceM(from, to) };
}

/** The edge itself for an edge or an arc, both edges that meet for a corner, from the centre for the others. */
export function dimensionsAt(rings: readonly Traced[], handle: Handle | null): readonly Dimension[] {
  const traced = handle === null ? undefined : rings[handle.ring];
  if (handle === null || traced === undefined) return [];
  if (traced.kind !== 'corners') return ovalDimensions(traced);
  const { length } = traced.corners;
  if (handle.at >= length) return [];
  const onward = edgeDimension(traced, handle.at);
  return handle.of === 'corner'
    ? [edgeDimension(traced, (handle.at + length - 1) % length), onward]
    : [onward];
}

/** The radius of a circle; half the length and half the width of an ellipse, which is what is drawn from its centre. */
export function ovalDimensions(traced: Traced): readonly Dimension[] {
  const [centre, ...ends] = ownPoints(traced);
  return centre === undefined ? [] : ends.map(({ place }) => dimension(centre.place, place));
}

/** The edges settled so far and those that follow the hand; outside the ground, whichever way it runs. */
export function outsideDimensions(traced: Traced, edges: number): readonly Dimension[] {
  if (traced.kind !== 'corners') return [];
  // Lengths are written on the right of their edge: outside a shape that runs counter-clockwise, so others are turned.
  const ring = tracedRing(traced);
  const clockwise = ring.length >= 3 && signedAreaM2(ring) < 0;
  return Array.from({ length: edges }, (_, edge) => {
    const found = edgeDimension(traced, edge);
    return clockwise ? { ...found, from: found.to, to: found.from } : found;
  });
}

function edgeDimension(traced: Extract<Traced, { kind: 'corners' }>, edge: number): Dimension {
  const path = edgePath(traced, edge);
  const [from, to] = [path[0], path[path.length - 1]] as [YardPoint, YardPoint];
  if (path.length === 2) return dimension(from, to);
  const lengthM = lineLengthM(path);
  const at = alongLine(path, lengthM / 2) ?? from;
  return { from, to, lengthM, curve: { at, radiusM: arcFigures(traced, edge)?.radiusM ?? null } };
}
