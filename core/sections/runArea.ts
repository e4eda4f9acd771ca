import type { Chord, Crossing } from './chords.ts';
import type { Corner, Facing } from './facing.ts';
import type { HoleTie } from './holeTies.ts';

/**
 * Area of the part below a run of chords of the line at `levelM`, without making either part a region.
 *
 * @returns undefined when the run does not part the ground into exactly two
 * Source: area = closed integral of (u - level) dv. On the cut u - level is zero, so the stretches of the ground's
 *   rings between crossings are all of it, and those are differences of sums along each ring. A hole the run misses
 *   lies where its tie ends, or on the other side when its tie goes over the run. Own work.
 * Cost: the run's chords and the region's holes, not its corners
 */
export function areaBelowRunM2(facing: Facing, levelM: number, run: readonly Chord[]): number | undefined {
  const byRing = crossingsByRing(run);
  const walks = walksOf(run, byRing);
  if (walks.length !== 2) return undefined;
  const below = walks.find(([first]) => first?.rising);
  const above = walks.find(([first]) => !first?.rising);
  if (below === undefined || above === undefined) return undefined;
  const belowM2 = walkM2(facing, levelM, below, byRing);
  if (byRing.has(0)) return belowM2 + missedHolesM2(facing, levelM, run, byRing, true);
  // Within a hole: one walk goes round the pocket that is closed off, the other round the hole that is left.
  if (belowM2 > 0) return belowM2 + missedHolesM2(facing, levelM, run, byRing, false);
  const wholeM2 = facing.ringM2.reduce((sum, ringM2) => sum + ringM2, 0);
  const aboveM2 = walkM2(facing, levelM, above, byRing);
  const holesBelowM2 = missedHolesM2(facing, levelM, run, byRing, true);
  let missedM2 = 0;
  facing.ringM2.forEach((ringM2, ring) => {
    if (ring > 0 && !byRing.has(ring)) missedM2 += ringM2;
  });
  return wholeM2 - aboveM2 - (missedM2 - holesBelowM2);
}

type ByRing = ReadonlyMap<number, readonly Crossing[]>;

function crossingsByRing(run: readonly Chord[]): ByRing {
  const byRing = new Map<number, Crossing[]>();
  for (const crossing of run.flatMap(({ start, end }) => [start, end])) {
    const onRing = byRing.get(crossing.edge.ring);
    if (onRing === undefined) byRing.set(crossing.edge.ring, [crossing]);
    else onRing.push(crossing);
  }
  for (const onRing of byRing.values()) onRing.sort((a, b) => a.edge.index - b.edge.index);
  return byRing;
}

/** The crossings each closed walk arrives at: over a chord, and along the ring to the next crossing, again and again. */
function walksOf(run: readonly Chord[], byRing: ByRing): Crossing[][] {
  const across = new Map<Crossing, Crossing>();
  for (const { start, end } of run) across.set(start, end).set(end, start);
  const waiting = new Set(across.keys());
  const walks: Crossing[][] = [];
  for (const first of across.keys()) {
    if (!waiting.has(first)) continue;
    const walk: Crossing[] = [];
    let arrived = first;
    do {
      waiting.delete(arrived);
      walk.push(arrived);
      arrived = nextOnRing(across.get(arrived) as Crossing, byRing);
    } while (arrived !== first);
    walks.push(walk);
  }
  return walks;
}

function nextOnRing(crossing: Crossing, byRing: ByRing): Crossing {
  const onRing = byRing.get(crossing.edge.ring) as readonly Crossing[];
  return onRing[(onRing.indexOf(crossing) + 1) % onRing.length] as Crossing;
}

/** Integral of (u - level) dv along the stretches of ring that end at the crossings of a walk. */
function walkM2(facing: Facing, levelM: number, walk: readonly Crossing[], byRing: ByRing): number {
  let areaM2 = 0;
  for (const to of walk) {
    const onRing = byRing.get(to.edge.ring) as readonly Crossing[];
    const from = onRing.at(onRing.indexOf(to) - 1) as Crossing;
    const [first, last] = [from.edge.next, to.edge];
    areaM2 += ((first.uM - levelM) / 2) * (first.vM - from.vM);
    areaM2 += sweptM2(facing, first, last) - levelM * (last.vM - first.vM);
    areaM2 += ((last.uM - levelM) / 2) * (to.vM - last.vM);
  }
  return areaM2;
}

/** Integral of u dv along a ring from one corner on to another. */
function sweptM2({ sweptM2: sums, ringM2 }: Facing, first: Corner, last: Corner): number {
  const betweenM2 = (sums[last.index] as number) - (sums[first.index] as number);
  return last.index < first.index ? betweenM2 + (ringM2[first.ring] as number) : betweenM2;
}

/** The holes below the run that it does not cross; their areas count negative. */
function missedHolesM2(
  facing: Facing,
  levelM: number,
  run: readonly Chord[],
  byRing: ByRing,
  isOuterBelow: boolean,
): number {
  const isBelow = new Map<number, boolean>([[0, isOuterBelow]]);
  let areaM2 = 0;
  for (const tie of facing.ties()) {
    if (byRing.has(tie.ring)) continue;
    const edge = facing.corners[tie.toEdge] as Corner;
    const onRing = byRing.get(edge.ring);
    const endsBelow =
      onRing === undefined ? (isBelow.get(edge.ring) ?? false) : isStretchBelow(levelM, edge, tie, onRing);
    const below = goesOver(facing, levelM, run, tie, edge) ? !endsBelow : endsBelow;
    isBelow.set(tie.ring, below);
    if (below) areaM2 += facing.ringM2[tie.ring] as number;
  }
  return areaM2;
}

/** On which side the stretch of a crossed ring lies that a tie ends on: that of the crossing it leads to. */
function isStretchBelow(levelM: number, edge: Corner, tie: HoleTie, onRing: readonly Crossing[]): boolean {
  const uM = endLevelM(edge, tie);
  const isBefore = (crossing: Crossing): boolean =>
    edge.index === crossing.edge.index ? uM <= levelM === crossing.rising : edge.index < crossing.edge.index;
  return (onRing.find(isBefore) ?? (onRing[0] as Crossing)).rising;
}

function goesOver(
  { corners }: Facing,
  levelM: number,
  run: readonly Chord[],
  tie: HoleTie,
  edge: Corner,
): boolean {
  const from = corners[tie.fromCorner] as Corner;
  const toM = endLevelM(edge, tie);
  if (from.uM <= levelM === toM <= levelM) return false;
  const toVM = edge.vM + tie.part * (edge.next.vM - edge.vM);
  const vM = from.vM + ((levelM - from.uM) / (toM - from.uM)) * (toVM - from.vM);
  return run.some(({ start, end }) => start.vM <= vM && vM <= end.vM);
}

function endLevelM(edge: Corner, { part }: HoleTie): number {
  return edge.uM + part * (edge.next.uM - edge.uM);
}
