import Flatbush from 'flatbush';
import { outlineRings } from '../../core/curves/index.ts';
import { distanceM, nearestOnEdge } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Yard } from '../../core/yard.ts';

export interface NearPoint {
  readonly at: YardPoint;
  readonly of: 'corner' | 'mark';
  readonly words: string;
}

export interface NearEdge {
  readonly at: YardPoint;
  readonly from: YardPoint;
  readonly to: YardPoint;
  readonly words: string;
}

interface IndexedPoint extends NearPoint {
  readonly outlineId: string | null;
}

interface IndexedEdge {
  readonly from: YardPoint;
  readonly to: YardPoint;
  readonly outlineId: string;
  readonly name: string;
}

/** Every corner, mark and edge of a yard, found by place. Built once for a yard and read many times. */
export class SnapIndex {
  readonly #points: readonly IndexedPoint[];
  readonly #edges: readonly IndexedEdge[];
  readonly #pointTree: Flatbush | null;
  readonly #edgeTree: Flatbush | null;

  constructor(yard: Yard) {
    const points: IndexedPoint[] = [];
    const edges: IndexedEdge[] = [];
    for (const outline of yard.outlines) {
      const { id: outlineId, name } = outline;
      for (const ring of outlineRings(outline)) {
        for (const [i, from] of ring.entries()) {
          points.push({ at: from, of: 'corner', words: `corner of ${name}`, outlineId });
          const to = ring[(i + 1) % ring.length];
          if (to !== undefined && to !== from) edges.push({ from, to, outlineId, name });
        }
      }
    }
    for (const mark of yard.marks) {
      points.push({ at: mark.at, of: 'mark', words: mark.name, outlineId: null });
    }
    this.#points = points;
    this.#edges = edges;
    this.#pointTree = treeOf(points, ({ at }) => [at, at]);
    this.#edgeTree = treeOf(edges, ({ from, to }) => [from, to]);
  }

  nearestPoint(at: YardPoint, reachM: number, except: string | null): NearPoint | undefined {
    return nearest(around(this.#pointTree, at, reachM), (i) => {
      const point = this.#points[i];
      if (point === undefined || (except !== null && point.outlineId === except)) return undefined;
      return within(reachM, distanceM(point.at, at), point);
    });
  }

  nearestEdge(at: YardPoint, reachM: number, except: string | null): NearEdge | undefined {
    return nearest(around(this.#edgeTree, at, reachM), (i) => {
      const edge = this.#edges[i];
      if (edge === undefined || edge.outlineId === except) return undefined;
      const foot = nearestOnEdge(edge.from, edge.to, at);
      const near = { at: foot, from: edge.from, to: edge.to, words: `edge of ${edge.name}` };
      return within(reachM, distanceM(foot, at), near);
    });
  }
}

const indexes = new WeakMap<Yard, SnapIndex>();

/** The index of a yard, built the first time it is asked for. */
export function snapIndexOf(yard: Yard): SnapIndex {
  const known = indexes.get(yard);
  if (known !== undefined) return known;
  const index = new SnapIndex(yard);
  indexes.set(yard, index);
  return index;
}

function treeOf<T>(
  items: readonly T[],
  boxOf: (item: T) => readonly [YardPoint, YardPoint],
): Flatbush | null {
  if (items.length === 0) return null;
  const tree = new Flatbush(items.length);
  for (const item of items) {
    const [a, b] = boxOf(item);
    tree.add(Math.min(a.xM, b.xM), Math.min(a.yM, b.yM), Math.max(a.xM, b.xM), Math.max(a.yM, b.yM));
  }
  tree.finish();
  return tree;
}

function around(tree: Flatbush | null, at: YardPoint, reachM: number): readonly number[] {
  return tree?.search(at.xM - reachM, at.yM - reachM, at.xM + reachM, at.yM + reachM) ?? [];
}

interface Measured<T> {
  readonly farM: number;
  readonly found: T;
}

function within<T>(reachM: number, farM: number, found: T): Measured<T> | undefined {
  return farM <= reachM ? { farM, found } : undefined;
}

/** Ties go to the one drawn first, so that the same yard always answers the same. */
function nearest<T>(
  indices: readonly number[],
  measure: (index: number) => Measured<T> | undefined,
): T | undefined {
  let best: Measured<T> | undefined;
  for (const index of [...indices].sort((a, b) => a - b)) {
    const measured = measure(index);
    if (measured !== undefined && (best === undefined || measured.farM < best.farM)) best = measured;
  }
  return best?.found;
}
