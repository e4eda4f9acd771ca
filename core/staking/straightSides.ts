import { distanceM, distanceToEdgeM, signedAreaM2 } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { TapeSide } from '../sections/index.ts';
import type { Outline, Traced, TracedCorner, Yard } from '../yard.ts';
import { LEAST_SIDE_M, type NamedPoint, type YardPoints, yardPoints } from './namedPoints.ts';

/** A straight edge of an outline that a tape is laid along, from one named corner to the next. */
export interface StraightSide {
  readonly outline: Outline;
  readonly from: NamedPoint;
  readonly to: NamedPoint;
  /** Whether the outline's own ground lies to the left, going from `from` to `to`. */
  readonly isInLeft: boolean;
  /** Widths of the strips kept off along it. */
  readonly stripWidthsM: readonly number[];
}

/** Corners this near to the line through their neighbours are on it: points a survey set in mid-edge. */
const IN_LINE_M = 1e-5;

/** The straight sides of all outlines that are long enough to be seen; edges in one line are one side. */
export function straightSides(outlines: readonly Outline[], { cornersOf }: YardPoints): StraightSide[] {
  return outlines.flatMap((outline) =>
    [outline.outer, ...outline.holes].flatMap((traced, ring) => {
      const named = cornersOf.get(traced);
      return traced.kind !== 'corners' || named === undefined ? [] : sidesOf(outline, traced, ring, named);
    }),
  );
}

function sidesOf(
  outline: Outline,
  { corners }: Extract<Traced, { kind: 'corners' }>,
  ring: number,
  named: readonly NamedPoint[],
): StraightSide[] {
  const runs = straightRuns(corners);
  // A hole's own inside is not the outline's.
  const isInLeft = signedAreaM2(corners) > 0 === (ring === 0);
  return runs.flatMap((run): StraightSide[] => {
    const from = named[run[0] as number];
    const to = named[((run.at(-1) as number) + 1) % corners.length];
    if (from === undefined || to === undefined || distanceM(from.at, to.at) < LEAST_SIDE_M) return [];
    const widths = [outline.keepOffM, ...run.map((edge) => corners[edge]?.keepOffM ?? null)];
    const stripWidthsM = [...new Set(widths.filter((widthM) => widthM !== null && widthM > 0))] as number[];
    return [{ outline, from, to, isInLeft, stripWidthsM }];
  });
}

/** The straight edges of a ring, by the corner each begins in; those in one line together. */
function straightRuns(corners: readonly TracedCorner[]): number[][] {
  const runs: number[][] = [];
  const cornerAt = (i: number): YardPoint => corners[i % corners.length] as YardPoint;
  for (const [edge, corner] of corners.entries()) {
    if (corner.run !== undefined) continue;
    const last = runs.at(-1);
    const goesOn =
      last !== undefined &&
      (last.at(-1) as number) === edge - 1 &&
      [...last.slice(1), edge].every(
        (between) =>
          distanceToEdgeM(cornerAt(last[0] as number), cornerAt(edge + 1), cornerAt(between)) <= IN_LINE_M,
      );
    if (goesOn) last.push(edge);
    else runs.push([edge]);
  }
  return runs;
}

/**
 * The lines cut marks are counted along: the straight sides, and the far edges of the strips kept off along them,
 * counted from the feet of the sides' own corners.
 */
export function tapeSidesOf(yard: Pick<Yard, 'outlines' | 'marks'>): TapeSide[] {
  return straightSides(yard.outlines, yardPoints(yard)).flatMap(
    ({ outline, from, to, isInLeft, stripWidthsM }) => {
      const lengthM = distanceM(from.at, to.at);
      const isLeft = (outline.kind === 'zone') === isInLeft;
      const out = (place: YardPoint, byM: number): YardPoint => ({
        xM: place.xM - ((to.at.yM - from.at.yM) / lengthM) * byM,
        yM: place.yM + ((to.at.xM - from.at.xM) / lengthM) * byM,
      });
      const strips = stripWidthsM.map((widthM) => {
        const byM = isLeft ? widthM : -widthM;
        return { from: out(from.at, byM), to: out(to.at, byM) };
      });
      return [{ from: from.at, to: to.at }, ...strips];
    },
  );
}
