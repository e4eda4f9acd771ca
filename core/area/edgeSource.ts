import { ringSensitivity, tracedRing, type VertexMove } from '../curves/index.ts';
import { GRID_M } from '../kernel/index.ts';
import { Defect } from '../result.ts';
import type { Ring, YardPoint } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';
import { type PlacedPoint, placedPointsOf } from './placedPoints.ts';

/** How a corner that is computed with moves as a placed point moves: d(corner)/d(point), x east, y north. */
export interface Mover {
  readonly point: PlacedPoint;
  readonly xx: number;
  readonly xy: number;
  readonly yx: number;
  readonly yy: number;
}

/** A ring, or the two ends of a cut line, that edges of treated ground lie on, and what moves its corners. */
export interface SourceRing {
  readonly ring: Ring;
  readonly isOpen: boolean;
  /** For each corner the placed point it is, or the points it follows. */
  readonly moves: readonly (PlacedPoint | readonly Mover[])[];
  /** Widths of the strips kept off along it. */
  readonly stripWidthsM: readonly number[];
}

/**
 * What the edges of an outline lie on.
 *
 * @param rings the outline's rings as they are overlaid: on the kernel grid, either direction, outer first
 */
export function outlineSources(outline: Outline, rings: readonly Ring[]): readonly SourceRing[] {
  const placed = placedPointsOf(outline);
  return [outline.outer, ...outline.holes].flatMap((traced, at): readonly SourceRing[] => {
    const ring = rings[at];
    if (ring === undefined) return [];
    const stripWidthsM = [
      ...(outline.keepOffM === null ? [] : [outline.keepOffM]),
      ...(traced.kind === 'corners' ? traced.corners.flatMap(({ keepOffM }) => keepOffM ?? []) : []),
    ].filter((widthM) => widthM > 0);
    const points = placed[at] ?? [];
    return [{ ring, isOpen: false, moves: movesOf(ring, traced, points), stripWidthsM }];
  });
}

/** What the pieces along a cut line lie on: its two ends are flagged, each with its own error. */
export function cutLineSource(from: YardPoint, to: YardPoint): SourceRing {
  const moves = [from, to].map((at, own): PlacedPoint => ({ at, outlineId: null, ring: 0, own, from: null }));
  return { ring: [from, to], isOpen: true, moves, stripWidthsM: [] };
}

/**
 * Corners on the grid found again among those they were made from: they stand in the same order or in the other, less
 * those that fell on their neighbour.
 */
function movesOf(ring: Ring, traced: Traced, points: readonly PlacedPoint[]): SourceRing['moves'] {
  const drawn = tracedRing(traced);
  const places = inOrder(ring, drawn, 1) ?? inOrder(ring, drawn, -1);
  if (places === undefined) throw new Defect('a ring on the grid is not the one that was traced');
  const isStraight = traced.kind === 'corners' && traced.corners.every(({ run }) => run === undefined);
  if (isStraight) return places.map((place) => points[place] as PlacedPoint);
  const followed = ringSensitivity(traced).map((moves) => moves.map((move) => moverOf(move, points)));
  return places.map((place) => followed[place] ?? []);
}

function moverOf({ own, dxdx, dxdy, dydx, dydy }: VertexMove, points: readonly PlacedPoint[]): Mover {
  return { point: points[own] as PlacedPoint, xx: dxdx, xy: dxdy, yx: dydx, yy: dydy };
}

function inOrder(ring: Ring, traced: Ring, step: 1 | -1): readonly number[] | undefined {
  const places: number[] = [];
  let place = step === 1 ? 0 : traced.length - 1;
  for (const corner of ring) {
    while (place >= 0 && place < traced.length && !onGrid(traced[place] as YardPoint, corner)) place += step;
    if (place < 0 || place >= traced.length) return undefined;
    places.push(place);
    place += step;
  }
  return places;
}

/** Whether a corner goes to this place on the grid: no further than rounding takes it. */
function onGrid(corner: YardPoint, place: YardPoint): boolean {
  return Math.abs(corner.xM - place.xM) < HALF_STEP_M && Math.abs(corner.yM - place.yM) < HALF_STEP_M;
}

/** Half a step, and a hair for the arithmetic. */
const HALF_STEP_M = 0.501 * GRID_M;
