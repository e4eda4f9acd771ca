import { edgeOfVertex, type OwnPoint, ownPoints, tracedRing } from '../../core/curves/index.ts';
import { distanceM } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Traced } from '../../core/yard.ts';
import type { Handle } from './drawing.ts';
import { middle } from './plane.ts';

/** A point of a ring that a hand may take hold of. */
export interface RingHandle {
  readonly of: Handle['of'];
  readonly at: number;
  readonly place: YardPoint;
}

interface RingHandles {
  /** In the order the keys go through them: round the ring, an arc's point after the corner its edge begins at. */
  readonly own: readonly RingHandle[];
  /** The middles of edges that can take another corner; an arc has its point instead. */
  readonly edges: readonly RingHandle[];
}

/** Traced edges do not change, so their handles are found once. */
const known = new WeakMap<Traced, RingHandles>();

export function handlesOf(traced: Traced): RingHandles {
  const found = known.get(traced);
  if (found !== undefined) return found;
  const made = findHandles(traced);
  known.set(traced, made);
  return made;
}

/** The corner or, failing that, another own point or the middle of an edge within reach. */
export function handleNear(
  rings: readonly Traced[],
  at: YardPoint,
  reachM: number,
): (Handle & { readonly place: YardPoint }) | undefined {
  const among = (part: keyof RingHandles, withinM: number) => {
    let best: (Handle & { readonly place: YardPoint }) | undefined;
    let bestM = withinM;
    for (const [ring, traced] of rings.entries()) {
      for (const handle of handlesOf(traced)[part]) {
        const farM = distanceM(handle.place, at);
        if (farM > bestM || (farM === bestM && best !== undefined)) continue;
        best = { ...handle, ring };
        bestM = farM;
      }
    }
    return best;
  };
  return among('own', reachM) ?? among('edges', reachM * 0.8);
}

/** Where a handle is drawn: on its own point, or in the middle of its edge. */
export function handlePlace(rings: readonly Traced[], { of, ring, at }: Handle): YardPoint | undefined {
  const traced = rings[ring];
  if (traced === undefined) return undefined;
  if (of === 'corner') return traced.kind === 'corners' ? traced.corners[at] : undefined;
  const handles = handlesOf(traced);
  return (of === 'edge' ? handles.edges : handles.own).find((one) => one.of === of && one.at === at)?.place;
}

/** The own point a handle stands for; undefined for the middle of an edge, and when there is none any more. */
export function ownPointOf(rings: readonly Traced[], handle: Handle): OwnPoint | undefined {
  const place = handlePlace(rings, handle);
  if (place === undefined || handle.of === 'edge') return undefined;
  if (handle.of === 'corner') return { kind: 'corner', at: handle.at, place };
  return handle.of === 'via' ? { kind: 'via', of: handle.at, place } : { kind: handle.of, place };
}

/** The next own point round the outline, through its holes and back to the start. */
export function handleAfter(rings: readonly Traced[], chosen: Handle | null, by: 1 | -1): Handle | null {
  const all = rings.flatMap((traced, ring) =>
    handlesOf(traced).own.map(({ of, at }): Handle => ({ of, ring, at })),
  );
  const now = all.findIndex(
    ({ of, ring, at }) => ring === chosen?.ring && at === chosen.at && of === chosen.of,
  );
  const next = now < 0 ? (by > 0 ? 0 : all.length - 1) : (now + by + all.length) % all.length;
  return all[next] ?? null;
}

function findHandles(traced: Traced): RingHandles {
  if (traced.kind !== 'corners') {
    return { own: ownPoints(traced).map(({ kind, place }) => ({ of: kind, at: 0, place })), edges: [] };
  }
  const { corners } = traced;
  const own: RingHandle[] = [];
  const edges: RingHandle[] = [];
  const middles = smoothMiddles(traced);
  for (const [at, corner] of corners.entries()) {
    own.push({ of: 'corner', at, place: corner });
    const { run } = corner;
    if (run?.kind === 'arc') own.push({ of: 'via', at, place: run.via });
    else {
      const next = corners[(at + 1) % corners.length] ?? corner;
      edges.push({ of: 'edge', at, place: middles.get(at) ?? middle(corner, next) });
    }
  }
  return { own, edges };
}

/** A corner half way along each smooth edge. */
function smoothMiddles(traced: Extract<Traced, { kind: 'corners' }>): ReadonlyMap<number, YardPoint> {
  const found = new Map<number, YardPoint>();
  if (!traced.corners.some(({ run }) => run?.kind === 'smooth')) return found;
  const ring = tracedRing(traced);
  const edgeOf = edgeOfVertex(traced);
  let from = 0;
  for (let to = 1; to <= ring.length; to++) {
    if (edgeOf[to] === edgeOf[from]) continue;
    const edge = edgeOf[from] as number;
    const half = ring[Math.ceil((from + to) / 2)];
    // A smooth edge between corners in line is drawn straight and has no corners of its own.
    if (traced.corners[edge]?.run?.kind === 'smooth' && to - from > 1 && half) found.set(edge, half);
    from = to;
  }
  return found;
}
