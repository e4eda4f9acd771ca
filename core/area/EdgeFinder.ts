import { BoxIndex, type RingBounds, ringBounds } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { SourceRing } from './edgeSource.ts';

/** A place on an edge of a source: `t` of the way from its corner `from` to its corner `to`. */
export interface OnEdge {
  readonly source: SourceRing;
  readonly from: number;
  readonly to: number;
  readonly t: number;
}

/** How far overlays one after the other move an edge off the one it was cut from: some grid steps. */
const UNDER_M = 1e-5;
/** Round corners of a strip are chords up to 1 mm inside the arc; the rest is for the grid. */
const STRIP_M = 2e-3;
/** A strip's edge runs across the line to what it is kept off; 0.1 = within 6°, more than a chord of the arc bends. */
const ACROSS = 0.1;

/**
 * Finds what an edge of treated ground lies on: an outline's edge, a cut line, or for the far edge of a strip the
 * edge the strip is kept off. Sources given first go first where two lie on one line.
 * Cost: log n an edge, the edges of each source indexed once
 */
export class EdgeFinder {
  readonly #all: readonly SourceRing[];
  readonly #rings: BoxIndex<SourceRing>;
  readonly #strips: BoxIndex<SourceRing>;
  readonly #widestM: number;

  constructor(sources: readonly SourceRing[]) {
    const boundsOf = ({ ring }: SourceRing): RingBounds => ringBounds(ring);
    const stripped = sources.filter(({ stripWidthsM }) => stripWidthsM.length > 0);
    this.#all = sources;
    this.#rings = new BoxIndex(sources, boundsOf);
    this.#strips = new BoxIndex(stripped, boundsOf);
    this.#widestM = Math.max(0, ...stripped.flatMap(({ stripWidthsM }) => stripWidthsM));
  }

  /** @returns undefined only where there is no source at all */
  find(from: YardPoint, to: YardPoint): OnEdge | undefined {
    const middle = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
    return this.#under(middle) ?? this.#besideStrip(middle, from, to) ?? this.#nearest(middle);
  }

  #under(middle: YardPoint): OnEdge | undefined {
    const box = boxRound(middle, UNDER_M);
    let best: Foot | undefined;
    for (const source of this.#rings.meeting(box)) {
      for (const edge of edgesNear(source, box)) {
        const foot = footOn(source, edge, middle);
        // A micrometre nearer is no reason to prefer a later one.
        if (foot.awayM <= UNDER_M && (best === undefined || foot.awayM < best.awayM - UNDER_M / 2))
          best = foot;
      }
    }
    return best;
  }

  #besideStrip(middle: YardPoint, from: YardPoint, to: YardPoint): OnEdge | undefined {
    if (this.#widestM === 0) return undefined;
    const box = boxRound(middle, this.#widestM + STRIP_M);
    const lengthM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
    let best: OnEdge | undefined;
    let bestM = STRIP_M;
    for (const source of this.#strips.meeting(box)) {
      for (const edge of edgesNear(source, box)) {
        const foot = footOn(source, edge, middle);
        const missM = Math.min(...source.stripWidthsM.map((widthM) => Math.abs(foot.awayM - widthM)));
        const along = (foot.byXM * (to.xM - from.xM) + foot.byYM * (to.yM - from.yM)) / lengthM;
        if (missM >= bestM || Math.abs(along) > ACROSS * foot.awayM) continue;
        [best, bestM] = [foot, missM];
      }
    }
    return best;
  }

  /** What no overlay should leave; better a neighbour's error than none. */
  #nearest(middle: YardPoint): OnEdge | undefined {
    let best: Foot | undefined;
    for (const source of this.#all) {
      for (let edge = 0; edge < edgeCount(source); edge++) {
        const foot = footOn(source, edge, middle);
        if (best === undefined || foot.awayM < best.awayM) best = foot;
      }
    }
    return best;
  }
}

interface Foot extends OnEdge {
  readonly awayM: number;
  /** From the foot to the point. */
  readonly byXM: number;
  readonly byYM: number;
}

/** Up to so many edges are looked through sooner than an index of them is built. */
const FEW = 32;

/** The edges whose boxes meet a box, in order. */
function edgesNear(source: SourceRing, box: RingBounds): readonly number[] {
  if (edgeCount(source) > FEW) return indexOf(source).meeting(box);
  const found: number[] = [];
  for (let edge = 0; edge < edgeCount(source); edge++) {
    const a = source.ring[edge] as YardPoint;
    const b = source.ring[(edge + 1) % source.ring.length] as YardPoint;
    const isApart =
      (a.xM < box.minXM && b.xM < box.minXM) ||
      (a.xM > box.maxXM && b.xM > box.maxXM) ||
      (a.yM < box.minYM && b.yM < box.minYM) ||
      (a.yM > box.maxYM && b.yM > box.maxYM);
    if (!isApart) found.push(edge);
  }
  return found;
}

/** Sources do not change; those of outlines that stay are asked again and again. */
const indexes = new WeakMap<SourceRing, BoxIndex<number>>();

function indexOf(source: SourceRing): BoxIndex<number> {
  const known = indexes.get(source);
  if (known !== undefined) return known;
  const places = Array.from({ length: edgeCount(source) }, (_, i) => i);
  const index = new BoxIndex(places, (edge) => {
    const a = source.ring[edge] as YardPoint;
    const b = source.ring[(edge + 1) % source.ring.length] as YardPoint;
    return {
      minXM: Math.min(a.xM, b.xM),
      minYM: Math.min(a.yM, b.yM),
      maxXM: Math.max(a.xM, b.xM),
      maxYM: Math.max(a.yM, b.yM),
    };
  });
  indexes.set(source, index);
  return index;
}

function edgeCount({ ring, isOpen }: SourceRing): number {
  return isOpen ? ring.length - 1 : ring.length;
}

function footOn(source: SourceRing, edge: number, { xM, yM }: YardPoint): Foot {
  const { ring } = source;
  const to = (edge + 1) % ring.length;
  const a = ring[edge] as YardPoint;
  const b = ring[to] as YardPoint;
  const dx = b.xM - a.xM;
  const dy = b.yM - a.yM;
  const length2 = dx * dx + dy * dy;
  const along = length2 === 0 ? 0 : ((xM - a.xM) * dx + (yM - a.yM) * dy) / length2;
  const t = Math.min(1, Math.max(0, along));
  const byXM = xM - a.xM - t * dx;
  const byYM = yM - a.yM - t * dy;
  return { source, from: edge, to, t, awayM: Math.hypot(byXM, byYM), byXM, byYM };
}

function boxRound({ xM, yM }: YardPoint, reachM: number): RingBounds {
  return { minXM: xM - reachM, minYM: yM - reachM, maxXM: xM + reachM, maxYM: yM + reachM };
}
