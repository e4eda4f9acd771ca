import type { YardPoint } from '../spaces.ts';
import { areaUnitM2, lengthUnitM, type UnitSystem } from '../units/index.ts';
import type { Traced, TracedCorner } from '../yard.ts';
import { type RingWorking, ringWorking } from './ringWorking.ts';

/** How the area of a curved edge comes about by formula. Lengths and areas in the person's units. */
export type CurveWorking =
  | {
      readonly kind: 'circle';
      readonly centre: { readonly east: number; readonly north: number };
      readonly radius: number;
      readonly area: number;
    }
  | {
      readonly kind: 'ellipse';
      readonly centre: { readonly east: number; readonly north: number };
      readonly halfLength: number;
      readonly halfWidth: number;
      readonly bearingDeg: number;
      readonly area: number;
    }
  /** The polygon of the corners as placed, and the circle segment on each arc's chord. */
  | {
      readonly kind: 'arcs';
      readonly chords: RingWorking;
      readonly segments: readonly SegmentWorking[];
      readonly area: number;
    }
  /** Smooth edges have no formula of their own worth the paper; the ring they are drawn with is worked. */
  | { readonly kind: 'smooth'; readonly edges: number };

export interface SegmentWorking {
  /** The arc runs from this corner to the next, counted from 1. */
  readonly corner: number;
  readonly radius: number;
  readonly turnedDeg: number;
  /** Above zero where the arc bulges out of the polygon, below where it cuts into it. */
  readonly area: number;
}

/**
 * The formula of a traced edge; null for one of straight edges.
 *
 * Accuracy: closed forms; an arc is the circle through its two corners and its point on the way
 * Source: circle π r², ellipse π a b, segment r²/2 (θ - sin θ) with θ the angle turned
 */
export function curveWorking(traced: Traced, units: UnitSystem): CurveWorking | null {
  const unitM = lengthUnitM(units);
  const unitM2 = areaUnitM2(units);
  const placed = ({ xM, yM }: YardPoint) => ({ east: xM / unitM, north: yM / unitM });
  switch (traced.kind) {
    case 'circle':
      return {
        kind: 'circle',
        centre: placed(traced.centre),
        radius: traced.radiusM / unitM,
        area: (Math.PI * traced.radiusM ** 2) / unitM2,
      };
    case 'ellipse':
      return {
        kind: 'ellipse',
        centre: placed(traced.centre),
        halfLength: traced.halfLengthM / unitM,
        halfWidth: traced.halfWidthM / unitM,
        bearingDeg: traced.bearingDeg,
        area: (Math.PI * traced.halfLengthM * traced.halfWidthM) / unitM2,
      };
    case 'corners':
      return cornersWorking(traced.corners, units);
  }
}

function cornersWorking(corners: readonly TracedCorner[], units: UnitSystem): CurveWorking | null {
  const smooth = corners.filter(({ run }) => run?.kind === 'smooth').length;
  if (smooth > 0) return { kind: 'smooth', edges: smooth };
  if (corners.every(({ run }) => run === undefined)) return null;
  const chords = ringWorking(corners, units);
  const turnsLeft = chords.eastByNextNorthSum >= chords.nextEastByNorthSum;
  const segments = corners.flatMap((corner, i): readonly SegmentWorking[] => {
    if (corner.run?.kind !== 'arc') return [];
    const next = corners[(i + 1) % corners.length] as TracedCorner;
    const segment = segmentOn(corner, corner.run.via, next, units);
    return segment === null
      ? []
      : [{ ...segment, corner: i + 1, area: turnsLeft ? segment.area : -segment.area }];
  });
  const area = segments.reduce((sum, segment) => sum + segment.area, chords.area);
  return { kind: 'arcs', chords, segments, area };
}

/** Its area is above zero where the arc lies right of its chord: outside a ring that turns left. */
function segmentOn(
  from: YardPoint,
  via: YardPoint,
  to: YardPoint,
  units: UnitSystem,
): Omit<SegmentWorking, 'corner'> | null {
  const unitM = lengthUnitM(units);
  const [ax, ay, bx, by] = [from.xM - via.xM, from.yM - via.yM, to.xM - via.xM, to.yM - via.yM];
  const cross = ax * by - ay * bx;
  // Three points on one line: the edge is straight.
  if (cross === 0) return null;
  const chordM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  const atVia = Math.atan2(Math.abs(cross), ax * bx + ay * by);
  // The angle at a point of the circle is half of the arc it looks at, which is the other one.
  const turned = 2 * (Math.PI - atVia);
  const radiusM = chordM / (2 * Math.sin(atVia));
  const areaM2 = (radiusM ** 2 / 2) * (turned - Math.sin(turned));
  return {
    radius: radiusM / unitM,
    turnedDeg: (turned * 180) / Math.PI,
    area: (cross < 0 ? areaM2 : -areaM2) / areaUnitM2(units),
  };
}
