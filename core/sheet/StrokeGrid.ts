import type { PagePoint } from '../spaces.ts';
import type { PageBox } from './drawing.ts';
import type { PageSubpath } from './page.ts';
import { strokeMeetsBox } from './pageGeometry.ts';

/** About the size of a label: a box then looks into few cells, and a cell holds few strokes. */
const CELL_MM = 6;

interface Stroke {
  readonly line: number;
  readonly from: PagePoint;
  readonly to: PagePoint;
}

/**
 * The lines of one map, found by place: a label asks what crosses it at hundreds of places, and a traced lawn
 * has thousands of corners. Strokes outside the frame are not kept.
 */
export class StrokeGrid {
  private readonly cells = new Map<number, Stroke[]>();
  private lines = 0;
  private readonly frame: PageBox;

  constructor(frame: PageBox) {
    this.frame = frame;
  }

  add({ points, closed }: PageSubpath): void {
    const line = this.lines++;
    points.forEach((from, i) => {
      const to = i + 1 < points.length ? points[i + 1] : closed ? points[0] : undefined;
      if (to !== undefined && strokeMeetsBox(from, to, this.frame)) this.addStroke({ line, from, to });
    });
  }

  /** How many different lines touch a box. */
  countMeeting(box: PageBox): number {
    const met = new Set<number>();
    for (const cell of this.cellsOf(box)) {
      for (const { line, from, to } of this.cells.get(cell) ?? []) {
        if (!met.has(line) && strokeMeetsBox(from, to, box)) met.add(line);
      }
    }
    return met.size;
  }

  private addStroke(stroke: Stroke): void {
    const { from, to } = stroke;
    const box = {
      xMm: Math.min(from.xMm, to.xMm),
      yMm: Math.min(from.yMm, to.yMm),
      widthMm: Math.abs(from.xMm - to.xMm),
      heightMm: Math.abs(from.yMm - to.yMm),
    };
    for (const cell of this.cellsOf(box)) {
      const strokes = this.cells.get(cell);
      if (strokes === undefined) this.cells.set(cell, [stroke]);
      else strokes.push(stroke);
    }
  }

  /** Cells of the frame a box reaches into, as row and column in one number. */
  private cellsOf(box: PageBox): number[] {
    const { xMm, yMm, widthMm, heightMm } = this.frame;
    const column = (x: number) => Math.floor((Math.min(Math.max(x, xMm), xMm + widthMm) - xMm) / CELL_MM);
    const row = (y: number) => Math.floor((Math.min(Math.max(y, yMm), yMm + heightMm) - yMm) / CELL_MM);
    const cells: number[] = [];
    for (let r = row(box.yMm); r <= row(box.yMm + box.heightMm); r++) {
      for (let c = column(box.xMm); c <= column(box.xMm + box.widthMm); c++) cells.push(r * 4096 + c);
    }
    return cells;
  }
}
