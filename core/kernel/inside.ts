import type { Region, Ring, YardPoint } from '../spaces.ts';
import { distanceToEdgeM } from './distance.ts';
import { ringBounds } from './measure.ts';
import { placeInRing } from './nestRings.ts';

/** Whether a point is in a region; its edge belongs to it. */
export function regionContains(region: Region, point: YardPoint): boolean {
  const place = placeInRing(region.outer, point);
  if (place !== 'inside') return place === 'on';
  return region.holes.every((hole) => placeInRing(hole, point) !== 'inside');
}

/** Cells the search for the roomiest point may open: ample for any yard, a bound for any hostile one. */
const MOST_CELLS = 2000;
/** Good enough for a label: within this share of the smaller side of the region's box. */
const PRECISION_SHARE = 0.01;

/**
 * The roomiest point of a region, within a hundredth of its box: a good place for a label.
 * Always inside, however thin the region. Deterministic.
 *
 * Source: quadtree search for the pole of inaccessibility (Garcia-Castellanos & Lombardo 2007 pose the problem;
 * the cell bound distance + half diagonal is ours)
 */
export function interiorPoint(region: Region): YardPoint {
  const { minXM, minYM, maxXM, maxYM } = ringBounds(region.outer);
  const [widthM, heightM] = [maxXM - minXM, maxYM - minYM];
  const sizeM = Math.min(widthM, heightM);
  const rings = [region.outer, ...region.holes];
  const cellAt = (xM: number, yM: number, halfM: number): Cell => {
    const depthM = signedDepthM(region, rings, { xM, yM });
    return { xM, yM, halfM, depthM, mostM: depthM + halfM * Math.SQRT2 };
  };
  let open: Cell[] = [];
  const step = Math.max(sizeM, Math.max(widthM, heightM) / 50) || 1;
  for (let xM = minXM; xM < maxXM; xM += step) {
    for (let yM = minYM; yM < maxYM; yM += step) open.push(cellAt(xM + step / 2, yM + step / 2, step / 2));
  }
  let best = cellAt((minXM + maxXM) / 2, (minYM + maxYM) / 2, 0);
  for (const cell of open) if (cell.depthM > best.depthM) best = cell;
  for (let opened = 0; opened < MOST_CELLS && open.length > 0; opened++) {
    open.sort((a, b) => a.mostM - b.mostM);
    const cell = open.pop() as Cell;
    if (cell.mostM - best.depthM <= sizeM * PRECISION_SHARE) break;
    const half = cell.halfM / 2;
    const parts = [-half, half].flatMap((dx) =>
      [-half, half].map((dy) => cellAt(cell.xM + dx, cell.yM + dy, half)),
    );
    for (const part of parts) if (part.depthM > best.depthM) best = part;
    open = [...open, ...parts].filter((part) => part.mostM > best.depthM);
  }
  // A sliver thinner than the search is fine has no cell middle in it.
  return best.depthM > 0 ? { xM: best.xM, yM: best.yM } : chordMiddle(rings);
}

/** Heights the last resort looks at, the widest gaps between corners first. */
const MOST_CHORDS = 64;

/** The middle of the longest run of ground straight east to west, halfway between corners' heights. */
function chordMiddle(rings: readonly Ring[]): YardPoint {
  const heights = [...new Set(rings.flatMap((ring) => ring.map(({ yM }) => yM)))].sort((a, b) => a - b);
  let best = { xM: rings[0]?.[0]?.xM ?? 0, yM: rings[0]?.[0]?.yM ?? 0, lengthM: -1 };
  const gaps = heights.map((low, i) => ({ low, gapM: (heights[i + 1] ?? low) - low }));
  for (const { low, gapM } of gaps.sort((a, b) => b.gapM - a.gapM).slice(0, MOST_CHORDS)) {
    const yM = low + gapM / 2;
    const xs = rings.flatMap((ring) => crossingsAt(ring, yM)).sort((a, b) => a - b);
    for (let k = 0; k + 1 < xs.length; k += 2) {
      const [west, east] = [xs[k] as number, xs[k + 1] as number];
      if (east - west > best.lengthM) best = { xM: (west + east) / 2, yM, lengthM: east - west };
    }
  }
  return { xM: best.xM, yM: best.yM };
}

function crossingsAt(ring: Ring, yM: number): number[] {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] as YardPoint;
    if (a.yM > yM === b.yM > yM) return [];
    return [a.xM + ((yM - a.yM) / (b.yM - a.yM)) * (b.xM - a.xM)];
  });
}

interface Cell {
  readonly xM: number;
  readonly yM: number;
  readonly halfM: number;
  readonly depthM: number;
  /** No point of the cell can be deeper than this. */
  readonly mostM: number;
}

/** Distance to the nearest edge, negative outside. */
function signedDepthM(region: Region, rings: readonly Ring[], point: YardPoint): number {
  let nearest = Infinity;
  for (const ring of rings) {
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
      nearest = Math.min(nearest, distanceToEdgeM(ring[j] as YardPoint, ring[i] as YardPoint, point));
    }
  }
  return regionContains(region, point) ? nearest : -nearest;
}
