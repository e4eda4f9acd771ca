import type { YardPoint } from '../spaces.ts';
import type { TracedCorner } from '../yard.ts';
import { arcOf } from './arc.ts';
import { arcPoints } from './arcPoints.ts';
import { bezierPoints } from './bezier.ts';
import { smoothNeighbours, smoothPiece } from './smoothPiece.ts';

/**
 * The corners that stand for the curve of an edge, without its ends; none when it is straight. An edge that two
 * outlines share comes to the same corners, bit for bit, whichever way each was traced.
 */
export function pointsBetween(corners: readonly TracedCorner[], edge: number): readonly YardPoint[] {
  const from = corners[edge] as TracedCorner;
  if (from.run === undefined) return [];
  const to = corners[(edge + 1) % corners.length] as TracedCorner;
  const { before, after } = smoothNeighbours(corners, edge);
  const isForward = from.xM < to.xM || (from.xM === to.xM && from.yM <= to.yM);
  const points = isForward
    ? curvePoints(from.run, before, from, to, after)
    : [...curvePoints(from.run, after, to, from, before)].reverse();
  // A curve through places beyond all numbers is drawn straight; the kernel's check says what ails it.
  return points.every(({ xM, yM }) => Number.isFinite(xM) && Number.isFinite(yM)) ? points : [];
}

function curvePoints(
  run: NonNullable<TracedCorner['run']>,
  before: YardPoint | null,
  from: YardPoint,
  to: YardPoint,
  after: YardPoint | null,
): readonly YardPoint[] {
  if (run.kind === 'smooth') return bezierPoints(smoothPiece(before, from, to, after));
  const arc = arcOf(from, run.via, to);
  return arc === null ? [] : arcPoints(arc);
}
