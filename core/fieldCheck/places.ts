import { ringBounds, windIn } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';

/** A place a tape can be held to, and what it is called. */
export interface NamedPlace {
  readonly at: YardPoint;
  readonly words: string;
  /** For a narrow column: "Lawn 3". */
  readonly short: string;
  /** Where it lies on its outline, to tell it from the others in a list: "north-east". */
  readonly side: string;
}

/**
 * The places of an outline that can be found on the ground: its corners as they were placed, hole by hole, and
 * the four ends of the axes of a circle or an ellipse.
 */
export function cornersOf(outline: Outline): readonly NamedPlace[] {
  return ringsOf(outline).flatMap((traced, ring) => {
    const points = pointsOf(traced);
    const box = ringBounds(points);
    return points.map(({ xM, yM }, i) => ({
      at: { xM, yM },
      ...wordsOf(outline, ring, i),
      side: windIn(box, { xM, yM }).name,
    }));
  });
}

/** The first of an outline's places within so far of a point; nothing is named or made but that one. */
export function findCorner(
  outline: Outline,
  at: YardPoint,
  withinM: number,
): { readonly words: string; readonly short: string } | undefined {
  for (const [ring, traced] of ringsOf(outline).entries()) {
    const i = pointsOf(traced).findIndex(({ xM, yM }) => isNear(xM - at.xM, yM - at.yM, withinM));
    if (i >= 0) return wordsOf(outline, ring, i);
  }
  return undefined;
}

function isNear(dxM: number, dyM: number, withinM: number): boolean {
  return Math.abs(dxM) <= withinM && Math.abs(dyM) <= withinM && Math.hypot(dxM, dyM) <= withinM;
}

function ringsOf({ outer, holes }: Outline): readonly Traced[] {
  return [outer, ...holes];
}

function pointsOf(traced: Traced): readonly YardPoint[] {
  if (traced.kind === 'corners') return traced.corners;
  const { xM, yM } = traced.centre;
  const [alongM, acrossM, bearingDeg] =
    traced.kind === 'circle'
      ? [traced.radiusM, traced.radiusM, 0]
      : [traced.halfLengthM, traced.halfWidthM, traced.bearingDeg];
  return [alongM, acrossM, alongM, acrossM].map((outM, i) => {
    const turnRad = ((bearingDeg + 90 * i) * Math.PI) / 180;
    return { xM: xM + outM * Math.sin(turnRad), yM: yM + outM * Math.cos(turnRad) };
  });
}

/** From the bearing of the length round clockwise. */
const ELLIPSE_ENDS = ['far end', 'right side', 'near end', 'left side'] as const;
const CIRCLE_ENDS = ['north side', 'east side', 'south side', 'west side'] as const;

function wordsOf(outline: Outline, ring: number, i: number): Pick<NamedPlace, 'words' | 'short'> {
  const of = ring === 0 ? outline.name : `hole ${ring} of ${outline.name}`;
  const { kind } = ringsOf(outline)[ring] ?? outline.outer;
  if (kind === 'corners') return { words: `corner ${i + 1} of ${of}`, short: `${of} ${i + 1}` };
  const end = (kind === 'circle' ? CIRCLE_ENDS : ELLIPSE_ENDS)[i] ?? '';
  return { words: `${end} of ${of}`, short: `${of} ${end}` };
}
