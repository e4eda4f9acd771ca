import { Clipper64, ClipperOffset, ClipType, EndType, FillRule, JoinType, type Paths64 } from 'clipper2-ts';
import { Defect } from '../result.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import { findCrossing } from './crossing.ts';
import { ringPerimeterM, signedAreaM2 } from './measure.ts';
import { nestRings } from './nestRings.ts';

/**
 * The one file that knows the clipping library. It works on whole numbers: yard metres are put on a grid of
 * `GRID_M` on the way in. Its tree of holes misnests where edges are shared, so flat paths are taken and
 * nested by `nestRings`.
 */

/**
 * Kernel grid, in metres. Rounding a yard of 100 m² onto 10 µm was measured to cost up to 1.6e-6 of its net area,
 * onto 1 µm 9e-8. Products of differences are exact in a double's 53 bits up to 95 m; beyond, the library decides
 * by rounded products, and tests/oracle/netArea.test.ts goes to kilometres for that.
 */
export const GRID_M = 1e-6;
const PER_M = 1e6;
/** Past this no yard reaches (`checkRing` stops at half of it); a coordinate beyond is a broken contract of ours. */
const FURTHEST_M = 20_000;

/** The library asks for one; every join here is round. */
const MITER_LIMIT = 2;
/** How far a round join's chords may lie inside the true arc: 1 mm in grid steps. */
const ARC_TOLERANCE = 0.001 * PER_M;

export type Overlay = 'union' | 'subtract' | 'intersect';
const CLIP_TYPE = {
  union: ClipType.Union,
  subtract: ClipType.Difference,
  intersect: ClipType.Intersection,
} as const;

/** Regions on the grid, as a person sees them: a crossing outline counts by even-odd. */
export type GridPaths = Paths64;

/**
 * Puts regions on the grid. Each is unioned even-odd on its own first: a bow-tie whose two halves run opposite
 * ways would cancel under the non-zero rule used afterwards.
 */
export function toGrid(regions: readonly Region[]): GridPaths {
  return regions.flatMap((region) => {
    const paths = rings(region).map(ringToGrid);
    const [only, ...more] = paths;
    if (only !== undefined && more.length === 0 && only.length >= LONG_RING) {
      const clean = cleanPath(only);
      if (clean !== undefined) return [clean];
    }
    return run(ClipType.Union, paths, [], FillRule.EvenOdd);
  });
}

/** From so many corners on it is quicker to see that a ring crosses itself nowhere than to union it. */
const LONG_RING = 64;

/** A simple path as the library would hand it back, counter-clockwise; undefined when it is not simple. */
function cleanPath(path: GridPaths[number]): GridPaths[number] | undefined {
  const apart = withoutRepeats(path);
  // In whole grid steps, on which the predicates are asked about the very corners that are overlaid.
  const ring = apart.map(({ x, y }) => ({ xM: x, yM: y }));
  if (ring.length < 3 || findCrossing(ring) !== undefined) return undefined;
  return signedAreaM2(ring) < 0 ? apart.reverse() : apart;
}

function withoutRepeats(path: GridPaths[number]): GridPaths[number] {
  return path.filter((corner, i) => {
    const next = path[(i + 1) % path.length];
    return corner.x !== next?.x || corner.y !== next.y;
  });
}

/** A ring with its corners moved to the grid, those that fall together taken as one. */
export function snapRing(ring: Ring): YardPoint[] {
  return ringFromGrid(withoutRepeats(ringToGrid(ring)));
}

/** Rings of fewer than three corners hold no ground, and the library trips over an empty one. */
function rings(region: Region): Ring[] {
  return [region.outer, ...region.holes].filter((ring) => ring.length >= 3);
}

/** Overlay of two sets on the grid. */
export function overlayGrid(overlay: Overlay, subject: GridPaths, clip: GridPaths): GridPaths {
  return run(CLIP_TYPE[overlay], subject, clip, FillRule.NonZero);
}

/**
 * Ground under two or more of some paths, each of which covers its own ground once. A frame round everything that
 * runs the other way takes one from every count; what is still positive was covered twice.
 */
export function deepGrid(paths: GridPaths): GridPaths {
  let [west, south, east, north] = [0, 0, 0, 0];
  for (const path of paths) {
    for (const { x, y } of path) {
      [west, south] = [Math.min(west, x), Math.min(south, y)];
      [east, north] = [Math.max(east, x), Math.max(north, y)];
    }
  }
  const frame = [
    { x: west - 1, y: south - 1 },
    { x: west - 1, y: north + 1 },
    { x: east + 1, y: north + 1 },
    { x: east + 1, y: south - 1 },
  ];
  return run(ClipType.Union, [...paths, frame], [], FillRule.Positive);
}

/** The same ground with x and y changed about, each ring still running its own way: the library sweeps it otherwise. */
export function changedAbout(paths: GridPaths): GridPaths {
  return paths.map((path) => path.map(({ x, y }) => ({ x: y, y: x })).reverse());
}

/** Back to yard metres, with every hole in the ring it belongs to. */
export function fromGrid(paths: GridPaths): Region[] {
  return nestRings(paths.map(ringFromGrid));
}

/** Area of flat, non-overlapping paths, in m². */
export function gridAreaM2(paths: GridPaths): number {
  return paths.reduce((areaM2, path) => areaM2 + signedAreaM2(ringFromGrid(path)), 0);
}

/** Length of all edges, in metres. */
export function gridPerimeterM(paths: GridPaths): number {
  return paths.reduce((lengthM, path) => lengthM + ringPerimeterM(ringFromGrid(path)), 0);
}

/** Grown (positive) or shrunk (negative) by a distance, round at the corners. */
export function offsetGrid(paths: GridPaths, deltaM: number): GridPaths {
  const work = new ClipperOffset(MITER_LIMIT, ARC_TOLERANCE);
  work.addPaths(paths, JoinType.Round, EndType.Polygon);
  const grown: Paths64 = [];
  work.execute(deltaM * PER_M, grown);
  return grown;
}

/** The ground within a distance of a walked line. */
export function bufferGrid(
  line: readonly YardPoint[],
  halfWidthM: number,
  ends: 'flat' | 'round',
): GridPaths {
  if (line.length === 0) return [];
  const work = new ClipperOffset(MITER_LIMIT, ARC_TOLERANCE);
  const first = line[0];
  const last = line.at(-1);
  const closed = line.length > 3 && first?.xM === last?.xM && first?.yM === last?.yM;
  const path = ringToGrid(closed ? line.slice(0, -1) : line);
  const open = ends === 'round' ? EndType.Round : EndType.Butt;
  work.addPath(path, JoinType.Round, closed ? EndType.Joined : open);
  const swath: Paths64 = [];
  work.execute(halfWidthM * PER_M, swath);
  return swath;
}

function ringToGrid(ring: Ring): { x: number; y: number }[] {
  return ring.map(({ xM, yM }) => {
    // Written so that NaN fails too: the library does not end on one.
    if (!(Math.abs(xM) <= FURTHEST_M && Math.abs(yM) <= FURTHEST_M)) {
      throw new Defect(`the kernel was given a corner at ${xM}, ${yM}`);
    }
    return { x: Math.round(xM * PER_M), y: Math.round(yM * PER_M) };
  });
}

export function ringFromGrid(path: Paths64[number]): YardPoint[] {
  return path.map(({ x, y }) => ({ xM: x / PER_M, yM: y / PER_M }));
}

function run(type: ClipType, subject: Paths64, clip: Paths64, rule: FillRule): Paths64 {
  const work = new Clipper64();
  work.addSubject(subject);
  if (clip.length > 0) work.addClip(clip);
  const paths: Paths64 = [];
  work.execute(type, rule, paths);
  return paths;
}
