import { orientRegion, regionsAreaM2 } from '../kernel/index.ts';
import type { Region, Ring } from '../spaces.ts';
import type { Elevation } from '../yard.ts';
import { cellSums } from './cellSums.ts';
import { type ElevationGrid, elevationGrid } from './elevationGrid.ts';
import { cellFacets, type Facet } from './facets.ts';
import { STEEP_GRADE, surfaceFactor } from './grade.ts';
import { clipRings, type FlatRing, flatAreaM2, type Line } from './ringClip.ts';

/** Regions laid over an elevation grid. Areas other than `surfaceM2` are the map's. */
export interface SlopedGround {
  readonly planM2: number;
  /** Ground with no height counts as level. */
  readonly surfaceM2: number;
  /** The part the grid has heights for. */
  readonly coveredM2: number;
  /** Of that part, what is steeper than `STEEP_GRADE`. */
  readonly steepM2: number;
  /** 0 where the grid covers nothing. */
  readonly steepestGrade: number;
  /** By the map's area, of the part covered; 0 where the grid covers nothing. */
  readonly meanGrade: number;
}

/** Ground a part of the grid does not hold to this share is none at all, or all of it. */
const NONE = 1e-12;
/** A facet's slope counts for the steepest only where more than a square centimetre of it is used. */
const SPECK_M2 = 1e-4;

/**
 * The surface of sloping ground: each cell of the grid makes two flat triangles (see `cellFacets`), each cut to
 * the regions, area × √(1 + grade²).
 *
 * @param regions that do not overlap, in yard metres
 * Accuracy: exact for the faceted ground, to 1e-10 of the grid's area. Against smooth ground the error falls with
 * the square of the grid's spacing. Heights are whole millimetres; noise in them always adds surface: σ of a
 * height over a spacing s, (σ/s)² of the area at most
 * Cost: (corners + cells on an edge) × log(cells), and a few operations for each cell that lies whole inside
 * Source: the grid is halved until a part is full, empty or one cell, and rings are clipped at each halving; ours
 */
export function surfaceByFacets(regions: readonly Region[], elevation: Elevation): SlopedGround {
  const grid = elevationGrid(elevation);
  const tally = new Tally();
  const whole: Part = { west: 0, east: grid.columns - 1, north: 0, south: grid.rows - 1 };
  const turn = turnOf(grid);
  let rings: readonly FlatRing[] = regions
    .map(orientRegion)
    .flatMap(({ outer, holes }) => [outer, ...holes].map(flat));
  rings = clipRings(rings, columnLine(grid, whole.west), turn);
  rings = clipRings(rings, columnLine(grid, whole.east), flipped(turn));
  rings = clipRings(rings, rowLine(grid, whole.north), flipped(turn));
  rings = clipRings(rings, rowLine(grid, whole.south), turn);
  measure(grid, turn, rings, whole, tally);
  return tally.over(regionsAreaM2(regions));
}

/** Nodes from west to east and from north to south, both ends in. */
interface Part {
  readonly west: number;
  readonly east: number;
  readonly north: number;
  readonly south: number;
}

/** Sums as they grow; a class because it lives as long as one measuring. */
class Tally {
  #coveredM2 = 0;
  #surfaceM2 = 0;
  #steepM2 = 0;
  #gradeM2 = 0;
  #steepest = 0;

  add(grade: number, planM2: number): void {
    if (Number.isNaN(grade)) return;
    this.#coveredM2 += planM2;
    this.#surfaceM2 += planM2 * surfaceFactor(grade);
    this.#gradeM2 += planM2 * grade;
    if (planM2 < SPECK_M2) return;
    if (grade > STEEP_GRADE) this.#steepM2 += planM2;
    this.#steepest = Math.max(this.#steepest, grade);
  }

  /** Whole cells of one row. */
  addCells(grid: ElevationGrid, from: number, to: number): void {
    const { coveredM2, surfaceM2, gradeM2, steepM2, steepest } = cellSums(grid);
    for (let cell = from; cell < to; cell++) {
      this.#coveredM2 += coveredM2[cell] as number;
      this.#surfaceM2 += surfaceM2[cell] as number;
      this.#gradeM2 += gradeM2[cell] as number;
      this.#steepM2 += steepM2[cell] as number;
      this.#steepest = Math.max(this.#steepest, steepest[cell] as number);
    }
  }

  over(planM2: number): SlopedGround {
    const coveredM2 = this.#coveredM2;
    return {
      planM2,
      surfaceM2: planM2 - coveredM2 + this.#surfaceM2,
      coveredM2,
      steepM2: this.#steepM2,
      steepestGrade: this.#steepest,
      meanGrade: coveredM2 > 0 ? this.#gradeM2 / coveredM2 : 0,
    };
  }
}

function measure(
  grid: ElevationGrid,
  turn: 1 | -1,
  rings: readonly FlatRing[],
  part: Part,
  tally: Tally,
): void {
  const areaM2 = flatAreaM2(rings);
  const partM2 = partAreaM2(grid, part);
  if (areaM2 <= partM2 * NONE) return;
  const { west, east, north, south } = part;
  if (areaM2 >= partM2 * (1 - NONE)) {
    for (let row = north; row < south; row++) {
      tally.addCells(grid, row * grid.columns + west, row * grid.columns + east);
    }
    return;
  }
  if (east - west === 1 && south - north === 1) {
    const { diagonal, left, right } = cellFacets(grid, north * grid.columns + west);
    const [from, to] = diagonal === 'nw-se' ? [west, east] : [east, west];
    const line = lineBetween(grid, nodeAt(grid, from, north), nodeAt(grid, to, south));
    const addClipped = ({ grade }: Facet, side: 1 | -1): void =>
      tally.add(grade, flatAreaM2(clipRings(rings, line, side)));
    addClipped(left, turn);
    addClipped(right, flipped(turn));
    return;
  }
  if (east - west >= south - north) {
    const middle = (west + east) >> 1;
    const line = columnLine(grid, middle);
    measure(grid, turn, clipRings(rings, line, flipped(turn)), { ...part, east: middle }, tally);
    measure(grid, turn, clipRings(rings, line, turn), { ...part, west: middle }, tally);
    return;
  }
  const middle = (north + south) >> 1;
  const line = rowLine(grid, middle);
  measure(grid, turn, clipRings(rings, line, turn), { ...part, south: middle }, tally);
  measure(grid, turn, clipRings(rings, line, flipped(turn)), { ...part, north: middle }, tally);
}

function nodeAt({ columns }: ElevationGrid, column: number, row: number): number {
  return row * columns + column;
}

function lineBetween({ xM, yM }: ElevationGrid, from: number, to: number): Line {
  const [x, y] = [xM[from] as number, yM[from] as number];
  return { x, y, dx: (xM[to] as number) - x, dy: (yM[to] as number) - y };
}

/** From north to south: east of it is its left, in a grid that is not mirrored. */
function columnLine(grid: ElevationGrid, column: number): Line {
  return lineBetween(grid, nodeAt(grid, column, 0), nodeAt(grid, column, grid.rows - 1));
}

/** From west to east: north of it is its left, in a grid that is not mirrored. */
function rowLine(grid: ElevationGrid, row: number): Line {
  return lineBetween(grid, nodeAt(grid, 0, row), nodeAt(grid, grid.columns - 1, row));
}

/** 1 for a grid as it lies on a map, -1 for one whose rows run the other way. */
function turnOf(grid: ElevationGrid): 1 | -1 {
  const { dx, dy } = rowLine(grid, 0);
  const down = columnLine(grid, 0);
  return dx * down.dy - dy * down.dx <= 0 ? 1 : -1;
}

function flipped(turn: 1 | -1): 1 | -1 {
  return turn === 1 ? -1 : 1;
}

function partAreaM2(grid: ElevationGrid, { west, east, north, south }: Part): number {
  const ring = [
    nodeAt(grid, west, north),
    nodeAt(grid, west, south),
    nodeAt(grid, east, south),
    nodeAt(grid, east, north),
  ].flatMap((node) => [grid.xM[node] as number, grid.yM[node] as number]);
  return Math.abs(flatAreaM2([ring]));
}

function flat(ring: Ring): FlatRing {
  return ring.flatMap(({ xM, yM }) => [xM, yM]);
}
