import { outlineRings } from '../../../core/curves/index.ts';
import { lonLatToYard, yardToLonLat } from '../../../core/earth/index.ts';
import { ringBounds } from '../../../core/kernel/index.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import { elevationFacts } from '../../../core/slope/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { formatLength, formatNumber } from '../../../core/units/index.ts';
import type { Elevation, PictureCorners, Yard } from '../../../core/yard.ts';
import { nameFromFile } from './firstGuesses.ts';
import { freeIds } from './freeIds.ts';
import { tiffGlobe } from './geoTiff/tiffGlobe.ts';
import type { BroughtHeights } from './pictures.ts';

/** Kept round the outlines, so that an edge may still be moved a little. */
const MARGIN_M = 10;
/** As many heights as an edit and a yard file carry without being felt: 500 m square at 1 m. */
const MOST_KEPT_HEIGHTS = 250_000;

/**
 * The part of an elevation grid that lies over a yard's outlines, as a row of the yard. A height belongs to the
 * middle of its pixel.
 *
 * @returns notes say what was kept
 * Problems: file/yard-has-no-place (a loose yard), file/heights-alone (no outlines yet), file/heights-elsewhere,
 * file/too-many-heights, file/unknown-crs
 * Accuracy: heights to the millimetre; nodes between the four corners are placed evenly, off by less than 1 cm
 * over 500 m (the sagitta of a parallel of latitude, s²/8R)
 */
export function heightsInYard(
  fileName: string,
  brought: BroughtHeights,
  yard: Yard,
): Result<{ readonly elevation: Elevation; readonly notes: readonly string[] }> {
  const where = { fileName };
  const { frame, unitSystem } = yard.details;
  if (frame.kind === 'loose') return trouble({ kind: 'file/yard-has-no-place', where, facts: {} });
  if (yard.outlines.length === 0) return trouble({ kind: 'file/heights-alone', where, facts: {} });
  const { place, widthPx } = brought;
  const globe = tiffGlobe(place, fileName);
  if (globe === null) return trouble({ kind: 'file/unknown-crs', where, facts: { crs: place.crsName } });
  const toNode = (point: YardPoint): readonly [number, number] => {
    const [x, y] = globe.fromLonLat(yardToLonLat(frame.origin, point));
    return nodeOf(place.affine, x, y);
  };
  const toYard = (column: number, row: number): YardPoint => {
    const [a, b, c, d, e, f] = place.affine;
    const [px, py] = [column + 0.5, row + 0.5];
    return lonLatToYard(frame.origin, globe.toLonLat(a * px + b * py + c, d * px + e * py + f));
  };

  const kept = windowOf(roundOutlines(yard).map(toNode), brought);
  if (kept === undefined) return trouble({ kind: 'file/heights-elsewhere', where, facts: {} });
  const { west, east, north, south } = kept;
  const [columns, rows] = [east - west + 1, south - north + 1];
  const heights = columns * rows;
  if (heights > MOST_KEPT_HEIGHTS) {
    return trouble({ kind: 'file/too-many-heights', where, facts: { heights, most: MOST_KEPT_HEIGHTS } });
  }
  const corners: PictureCorners = [
    toYard(west, north),
    toYard(east, north),
    toYard(east, south),
    toYard(west, south),
  ];
  const heightsMm = Array.from({ length: heights }, (_, node) => {
    const [column, row] = [west + (node % columns), north + Math.floor(node / columns)];
    const heightM = brought.heightsM[row * widthPx + column] ?? Number.NaN;
    return Number.isNaN(heightM) ? null : Math.round(heightM * 1000);
  });
  if (heightsMm.every((height) => height === null)) {
    return trouble({ kind: 'file/heights-elsewhere', where, facts: {} });
  }
  const elevation = northFirst({
    id: freeIds(yard.elevations)('elevation'),
    name: nameFromFile(fileName),
    columns,
    rows,
    corners,
    heightsMm,
  });
  const shown = (lengthM: number): string => formatLength(lengthM, unitSystem);
  const { spacingM, lowestM, highestM, missing } = elevationFacts(elevation);
  return ok({
    elevation,
    notes: [
      `Kept of it: ${formatNumber(columns, 0)} × ${formatNumber(rows, 0)} heights, ${shown(spacingM)} apart, from ${shown(lowestM)} to ${shown(highestM)}, over the outlines and ${shown(MARGIN_M)} round them${missing === 0 ? '' : `; ${formatNumber(missing, 0)} of the places have no height in it`}. A zone slopes by it once that is chosen on the Outlines page.`,
    ],
  });
}

/** Where a place of the file's system lies among the pixels' middles, counted from 0. */
function nodeOf(
  [a, b, c, d, e, f]: BroughtHeights['place']['affine'],
  x: number,
  y: number,
): readonly [column: number, row: number] {
  const [dx, dy, across] = [x - c, y - f, a * e - b * d];
  return [(e * dx - b * dy) / across - 0.5, (a * dy - d * dx) / across - 0.5];
}

/** Places on the edge of the box round all outlines and their margin; eight, for systems that lie turned. */
function roundOutlines(yard: Yard): readonly YardPoint[] {
  const { minXM, minYM, maxXM, maxYM } = ringBounds(yard.outlines.flatMap(outlineRings).flat());
  const xs = [minXM - MARGIN_M, (minXM + maxXM) / 2, maxXM + MARGIN_M];
  const ys = [minYM - MARGIN_M, (minYM + maxYM) / 2, maxYM + MARGIN_M];
  return xs.flatMap((xM) => ys.map((yM) => ({ xM, yM })));
}

interface NodeWindow {
  readonly west: number;
  readonly east: number;
  readonly north: number;
  readonly south: number;
}

/** The nodes of the grid needed to hold all the places; undefined where they are not two each way. */
function windowOf(
  nodes: readonly (readonly [number, number])[],
  { widthPx, heightPx }: BroughtHeights,
): NodeWindow | undefined {
  const columns = nodes.map(([column]) => column);
  const rows = nodes.map(([, row]) => row);
  // A place the system of the file cannot hold (the far side of the earth) comes back as no number.
  if (![...columns, ...rows].every(Number.isFinite)) return undefined;
  const west = Math.max(0, Math.floor(Math.min(...columns)));
  const east = Math.min(widthPx - 1, Math.ceil(Math.max(...columns)));
  const north = Math.max(0, Math.floor(Math.min(...rows)));
  const south = Math.min(heightPx - 1, Math.ceil(Math.max(...rows)));
  return east > west && south > north ? { west, east, north, south } : undefined;
}

/** A file may run from south to north; a yard's grid begins in the north. */
function northFirst(elevation: Elevation): Elevation {
  const { columns, rows, heightsMm } = elevation;
  const [northWest, northEast, southEast, southWest] = elevation.corners;
  const turn =
    (northEast.xM - northWest.xM) * (southWest.yM - northWest.yM) -
    (northEast.yM - northWest.yM) * (southWest.xM - northWest.xM);
  if (turn <= 0) return elevation;
  const rowsBack = Array.from({ length: rows }, (_, row) =>
    heightsMm.slice((rows - 1 - row) * columns, (rows - row) * columns),
  );
  return {
    ...elevation,
    corners: [southWest, southEast, northEast, northWest],
    heightsMm: rowsBack.flat(),
  };
}
