import type { YardPoint } from '../spaces.ts';

/** A straight edge of the ground. */
export interface Edge {
  readonly a: YardPoint;
  readonly b: YardPoint;
}

/** A line meets the cells this near to it too, so that rounding hides no edge. */
const NEAR_M = 1e-5;
/** Most cells to a side. */
const MOST_CELLS = 128;
/** Rows of one column are numbered within this, however far outside the ground a line runs. */
const ROWS = 1 << 20;

/** Edges sorted into square cells; gives those in the cells that the box of a line meets, column by column. */
export function edgeGrid(edges: readonly Edge[]): (a: YardPoint, b: YardPoint) => Edge[] {
  const xs = edges.map((edge) => edge.a.xM);
  const ys = edges.map((edge) => edge.a.yM);
  const westM = Math.min(...xs);
  const southM = Math.min(...ys);
  const side = Math.max(1, Math.min(MOST_CELLS, Math.ceil(Math.sqrt(edges.length))));
  const cellM = Math.max(Math.max(...xs) - westM, Math.max(...ys) - southM, 1e-3) / side;
  const cells = new Map<number, Edge[]>();
  const cellsOf = (a: YardPoint, b: YardPoint, visit: (cell: number) => void): void => {
    const [left, right] = a.xM <= b.xM ? [a, b] : [b, a];
    const slope = (right.yM - left.yM) / (right.xM - left.xM || 1);
    const first = Math.floor((left.xM - westM) / cellM);
    const last = Math.floor((right.xM - westM) / cellM);
    for (let column = first; column <= last; column++) {
      const enterM = column === first ? left.yM : left.yM + (westM + column * cellM - left.xM) * slope;
      const leaveM = column === last ? right.yM : left.yM + (westM + (column + 1) * cellM - left.xM) * slope;
      const low = Math.floor((Math.min(enterM, leaveM) - southM - NEAR_M) / cellM);
      const high = Math.floor((Math.max(enterM, leaveM) - southM + NEAR_M) / cellM);
      for (let row = low; row <= high; row++) visit(column * ROWS + row);
    }
  };
  for (const edge of edges) {
    cellsOf(edge.a, edge.b, (cell) => {
      const list = cells.get(cell);
      if (list === undefined) cells.set(cell, [edge]);
      else list.push(edge);
    });
  }
  return (a, b) => {
    const found = new Set<Edge>();
    cellsOf(a, b, (cell) => {
      for (const edge of cells.get(cell) ?? []) found.add(edge);
    });
    return [...found];
  };
}
