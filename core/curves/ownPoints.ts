import { bearingOfWay } from '../frame/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Traced, TracedCorner } from '../yard.ts';
import { ovalOf } from './ovalOf.ts';
import { directionOf } from './ovalRing.ts';

/** A point of a traced edge that a hand may take hold of. */
export type OwnPoint =
  | { readonly kind: 'corner'; readonly at: number; readonly place: YardPoint }
  /** The point an arc runs through, of the edge that begins at corner `of`. */
  | { readonly kind: 'via'; readonly of: number; readonly place: YardPoint }
  | {
      readonly kind: 'centre' | 'rim' | 'length-end' | 'width-end';
      readonly place: YardPoint;
    };

/**
 * The points that were placed for a traced edge: its corners in order, then the points its arcs run through; of a
 * circle the centre and its rim in the east; of an ellipse the centre, the end of its length on its bearing, and
 * the end of its width to the left of that.
 */
export function ownPoints(traced: Traced): readonly OwnPoint[] {
  if (traced.kind === 'corners') {
    const corners = traced.corners.map(
      ({ xM, yM }, at): OwnPoint => ({ kind: 'corner', at, place: { xM, yM } }),
    );
    const vias = traced.corners.flatMap(({ run }, of): readonly OwnPoint[] =>
      run?.kind === 'arc' ? [{ kind: 'via', of, place: run.via }] : [],
    );
    return [...corners, ...vias];
  }
  const { centre, halfAlongM, halfAcrossM, bearingDeg } = ovalOf(traced);
  const { east, north } = directionOf(bearingDeg);
  const along = { xM: centre.xM + halfAlongM * east, yM: centre.yM + halfAlongM * north };
  const middle: OwnPoint = { kind: 'centre', place: centre };
  if (traced.kind === 'circle') return [middle, { kind: 'rim', place: along }];
  const left = { xM: centre.xM - halfAcrossM * north, yM: centre.yM + halfAcrossM * east };
  return [middle, { kind: 'length-end', place: along }, { kind: 'width-end', place: left }];
}

/**
 * A traced edge with one of its own points moved. The centre takes the whole along; the rim changes the radius; the
 * end of the length turns and lengthens, that of the width widens; a corner leaves the points of its arcs behind.
 */
export function moveOwnPoint(traced: Traced, own: OwnPoint, to: YardPoint): Traced {
  if (traced.kind === 'corners') return withCorner(traced, own, to);
  const { centre } = traced;
  const [eastM, northM] = [to.xM - centre.xM, to.yM - centre.yM];
  if (own.kind === 'centre') return { ...traced, centre: { xM: to.xM, yM: to.yM } };
  if (traced.kind === 'circle') {
    return own.kind === 'rim' ? { ...traced, radiusM: Math.hypot(eastM, northM) } : traced;
  }
  if (own.kind === 'length-end') {
    const halfLengthM = Math.hypot(eastM, northM);
    // A length of nothing points nowhere, so it keeps its bearing.
    if (halfLengthM === 0) return { ...traced, halfLengthM };
    return { ...traced, halfLengthM, bearingDeg: bearingOfWay(eastM, northM) };
  }
  if (own.kind !== 'width-end') return traced;
  const { east, north } = directionOf(traced.bearingDeg);
  return { ...traced, halfWidthM: Math.abs(northM * east - eastM * north) };
}

function withCorner(traced: Extract<Traced, { kind: 'corners' }>, own: OwnPoint, to: YardPoint): Traced {
  const { xM, yM } = to;
  const changed = (corner: TracedCorner, i: number): TracedCorner => {
    if (own.kind === 'corner' && own.at === i) return { ...corner, xM, yM };
    if (own.kind === 'via' && own.of === i && corner.run?.kind === 'arc') {
      return { ...corner, run: { kind: 'arc', via: { xM, yM } } };
    }
    return corner;
  };
  return { ...traced, corners: traced.corners.map(changed) };
}
