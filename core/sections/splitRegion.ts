import { regionContains, signedAreaM2 } from '../kernel/index.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import type { Chord, Crossing } from './chords.ts';
import { cleanRing } from './cleanRing.ts';
import type { Facing } from './facing.ts';

/** The two connected parts a cut makes. */
export interface Halves {
  readonly below: Region;
  readonly above: Region;
}

/**
 * Cuts a region along chosen chords of one line. Both parts share the very same cut points, so nothing is lost or
 * counted twice between them.
 *
 * @param chords neighbouring runs of one cut, all of which become border
 * @returns undefined when the chords do not part the ground into exactly two connected parts
 * Source: walk the ground's edge; on reaching a cut point cross along the chord to its other end and walk on from
 *   there. Each closed walk is a ring; two walks are two parts. Own work.
 */
export function splitRegion(facing: Facing, chords: readonly Chord[]): Halves | undefined {
  const walks = closedWalks(chords);
  const [one, other] = walks;
  if (one === undefined || other === undefined || walks.length > 2) return undefined;
  const [belowRing, aboveRing] = one.arrivesRising ? [one, other] : [other, one];
  if (!belowRing.arrivesRising || aboveRing.arrivesRising) return undefined;
  const cutRings = new Set(chords.flatMap((chord) => [chord.start.edge.ring, chord.end.edge.ring]));
  const holes = facing.region.holes.filter((_, index) => !cutRings.has(index + 1));
  return nest(facing.region, cleanRing(belowRing.ring), cleanRing(aboveRing.ring), holes, cutRings.has(0));
}

interface Walk {
  readonly ring: Ring;
  /** Whether the walk reaches its cut points from below: then it is the part below. */
  readonly arrivesRising: boolean;
}

function closedWalks(chords: readonly Chord[]): Walk[] {
  const across = new Map<Crossing, Crossing>();
  for (const { start, end } of chords) across.set(start, end).set(end, start);
  const byRing = new Map<number, Crossing[]>();
  for (const crossing of [...across.keys()].sort((a, b) => a.edge.index - b.edge.index)) {
    const onRing = byRing.get(crossing.edge.ring);
    if (onRing === undefined) byRing.set(crossing.edge.ring, [crossing]);
    else onRing.push(crossing);
  }
  const waiting = new Set(across.keys());
  const walks: Walk[] = [];
  for (const first of across.keys()) {
    if (!waiting.has(first)) continue;
    const ring: YardPoint[] = [];
    let arrived = first;
    do {
      waiting.delete(arrived);
      const leaving = across.get(arrived) as Crossing;
      ring.push(arrived.at, leaving.at);
      arrived = walkOn(ring, leaving, byRing.get(leaving.edge.ring) ?? []);
    } while (arrived !== first);
    walks.push({ ring, arrivesRising: first.rising });
  }
  return walks;
}

/** Adds the corners from a cut point to the next one on the same ring, and gives that one. */
function walkOn(ring: YardPoint[], leaving: Crossing, onRing: readonly Crossing[]): Crossing {
  const place = onRing.indexOf(leaving);
  const arriving = onRing[(place + 1) % onRing.length] as Crossing;
  let corner = leaving.edge;
  do {
    corner = corner.next;
    ring.push(corner.at);
  } while (corner !== arriving.edge);
  return arriving;
}

/** Sorts the rings into two regions: two outer rings, or a pocket closed off within what was a hole. */
function nest(
  whole: Region,
  belowRing: Ring,
  aboveRing: Ring,
  holes: readonly Ring[],
  outerWasCut: boolean,
): Halves | undefined {
  if (belowRing.length < 3 || aboveRing.length < 3) return undefined;
  const belowTurnsLeft = signedAreaM2(belowRing) > 0;
  const aboveTurnsLeft = signedAreaM2(aboveRing) > 0;
  if (!belowTurnsLeft && !aboveTurnsLeft) return undefined;
  const pocket = belowTurnsLeft ? belowRing : aboveRing;
  const inPocket = holes.filter((hole) => {
    const at = hole[0];
    return at !== undefined && regionContains({ outer: pocket, holes: [] }, at);
  });
  const others = holes.filter((hole) => !inPocket.includes(hole));
  const near = { outer: pocket, holes: inPocket };
  let far: Region;
  if (belowTurnsLeft && aboveTurnsLeft) {
    if (!outerWasCut) return undefined;
    far = { outer: aboveRing, holes: others };
  } else {
    if (outerWasCut) return undefined;
    far = { outer: whole.outer, holes: [belowTurnsLeft ? aboveRing : belowRing, ...others] };
  }
  return belowTurnsLeft ? { below: near, above: far } : { below: far, above: near };
}
