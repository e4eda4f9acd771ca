import { wholeBearing } from '../frame/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Traced, TracedCorner } from '../yard.ts';

/** A similarity of the yard: what it does to a point, to a length, and to a compass bearing. */
export interface Similarity {
  readonly move: (point: YardPoint) => YardPoint;
  readonly scale: number;
  /** Added to bearings: degrees clockwise. */
  readonly turnDeg: number;
}

/** A traced edge moved, turned or scaled as a whole, its curves with it. Widths kept off stay as they were. */
export function movedTraced(traced: Traced, by: Similarity): Traced {
  switch (traced.kind) {
    case 'corners':
      return { ...traced, corners: traced.corners.map((corner) => movedCorner(corner, by)) };
    case 'circle':
      return { ...traced, centre: by.move(traced.centre), radiusM: traced.radiusM * by.scale };
    case 'ellipse':
      return {
        ...traced,
        centre: by.move(traced.centre),
        halfLengthM: traced.halfLengthM * by.scale,
        halfWidthM: traced.halfWidthM * by.scale,
        bearingDeg: wholeBearing(traced.bearingDeg + by.turnDeg),
      };
  }
}

function movedCorner(corner: TracedCorner, { move }: Similarity): TracedCorner {
  const { run, ...rest } = corner;
  const moved = { ...rest, ...move(corner) };
  if (run === undefined) return moved;
  return { ...moved, run: run.kind === 'arc' ? { kind: 'arc', via: move(run.via) } : run };
}
