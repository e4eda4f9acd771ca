import { distanceM } from '../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import { nearestOnLine } from './plane.ts';
import type { SnapIndex } from './snapIndex.ts';

export type SnapTo = 'nothing' | 'first-corner' | 'corner' | 'mark' | 'edge' | 'square' | 'straight';

/** Where a corner would go, and what drew it there, in words for the foot line ('' when nothing did). */
export interface Snap {
  readonly at: YardPoint;
  readonly to: SnapTo;
  readonly words: string;
}

export interface SnapAsk {
  readonly at: YardPoint;
  readonly reachM: number;
  /** Corners placed so far, oldest first; empty when nothing is being traced. */
  readonly chain: Ring;
  /** Whether the first corner closes; left out: from three corners on. */
  readonly closes?: boolean;
  /** An outline that must not snap to itself. */
  readonly except: string | null;
}

/** A point that snaps to nothing. */
export function unsnapped(at: YardPoint): Snap {
  return { at, to: 'nothing', words: '' };
}

/**
 * Draws a point to what it is near: the first corner (which closes), then corners and marks, then an edge met
 * square to or in line with the last edge, then an edge, then the square or straight line alone. Never
 * moves a point further than `reachM`.
 */
export function snapPoint(index: SnapIndex, ask: SnapAsk): Snap {
  const { at, reachM, chain, except } = ask;
  const first = chain[0];
  if (first !== undefined && (ask.closes ?? chain.length >= 3) && distanceM(first, at) <= reachM) {
    return { at: first, to: 'first-corner', words: 'the first corner: closes' };
  }
  const point = index.nearestPoint(at, reachM, except);
  if (point !== undefined) return { at: point.at, to: point.of, words: point.words };

  const edge = index.nearestEdge(at, reachM, except);
  const line = nearestDirection(chain, at, reachM);
  if (edge !== undefined && line !== undefined) {
    const both = crossingOf(line.through, line.dx, line.dy, edge.from, edge.to);
    if (both !== undefined && distanceM(both, at) <= reachM) {
      return { at: both, to: line.to, words: `${line.words}, on ${edge.words}` };
    }
  }
  if (edge !== undefined) return { at: edge.at, to: 'edge', words: edge.words };
  if (line !== undefined) return { at: line.at, to: line.to, words: line.words };
  return unsnapped(at);
}

interface DirectionLine {
  readonly to: 'square' | 'straight';
  readonly words: string;
  readonly through: YardPoint;
  readonly dx: number;
  readonly dy: number;
  readonly at: YardPoint;
}

/** The line from the last corner, square to or in line with the last edge (or square to the first), nearest the point. */
function nearestDirection(chain: Ring, at: YardPoint, reachM: number): DirectionLine | undefined {
  const last = chain[chain.length - 1];
  const previous = chain[chain.length - 2];
  if (last === undefined || previous === undefined) return undefined;
  const dx = last.xM - previous.xM;
  const dy = last.yM - previous.yM;
  const lines: DirectionLine[] = [];
  const tryLine = (to: 'square' | 'straight', words: string, lx: number, ly: number): void => {
    const foot = nearestOnLine(last, lx, ly, at);
    if (foot !== undefined && distanceM(foot, at) <= reachM) {
      lines.push({ to, words, through: last, dx: lx, dy: ly, at: foot });
    }
  };
  tryLine('square', 'square to the last edge', -dy, dx);
  tryLine('straight', 'straight on', dx, dy);
  const first = chain[0];
  const second = chain[1];
  if (chain.length >= 3 && first !== undefined && second !== undefined) {
    tryLine('straight', 'along the first edge', second.xM - first.xM, second.yM - first.yM);
    tryLine('square', 'square to the first edge', -(second.yM - first.yM), second.xM - first.xM);
  }
  return lines.reduce<DirectionLine | undefined>(
    (best, line) => (best === undefined || distanceM(line.at, at) < distanceM(best.at, at) ? line : best),
    undefined,
  );
}

/** Where the endless line through a point meets a piece of edge; undefined when it runs along it or misses. */
function crossingOf(
  through: YardPoint,
  dx: number,
  dy: number,
  from: YardPoint,
  to: YardPoint,
): YardPoint | undefined {
  const ex = to.xM - from.xM;
  const ey = to.yM - from.yM;
  const across = dx * ey - dy * ex;
  if (Math.abs(across) < 1e-9 * Math.hypot(dx, dy) * Math.hypot(ex, ey)) return undefined;
  const along = (dx * (through.yM - from.yM) - dy * (through.xM - from.xM)) / across;
  if (along < 0 || along > 1) return undefined;
  return { xM: from.xM + along * ex, yM: from.yM + along * ey };
}
