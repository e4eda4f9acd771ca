import { distanceM, interiorPoint, lineLengthM, nearestOnEdge } from '../kernel/index.ts';
import {
  dryOrder,
  layPasses,
  makeWalkable,
  orderPasses,
  type Pass,
  passesOf,
  type Walk,
  wetWalkM,
} from '../passes/index.ts';
import type { Section } from '../sections/index.ts';
import { sum } from '../units/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { ResolvedYard } from '../zones/index.ts';
import { headingDegOf } from './headingDegOf.ts';
import type { PlanRequest, SectionFigures } from './plan.ts';

/** A section walked once with the applicator on: every section in one round, or in two. */
interface Turn {
  readonly section: Section;
  readonly round: Pass['round'];
  readonly headingDeg: number;
  walks: readonly Walk[];
}

/** Passes in walking order, and what each section's come to. */
export interface Walked {
  readonly passes: readonly Pass[];
  readonly sectionFigures: readonly SectionFigures[];
}

/** Times the order of a section's passes is sought: anew once it is known where the next one begins. */
const SWEEPS = 2;
/** What of the work is done once all passes are laid. */
const LAID = 0.6;

/**
 * Passes for every section in turn, each begun where the one before ended and ended where the next begins.
 *
 * In two rounds a section is walked in both before the next: one fill at half the rate is meant for both, and no
 * section is come back to. The lanes of the second are square to those of the first. That a spreader puts down half
 * each way is common practice (UMass Amherst, "Rotary Spreader Calibration Procedures").
 *
 * @param sections in walking order
 * @param onProgress told the part done, from 0 to 1
 * @param onQuick given the walk as it stands before orders are sought anew, worked out only where it is asked for
 * @returns undefined when cancelled; the walk from one section to the next counts as the next one's, that to where
 * the person wants to end as the last one's
 */
export function walkSections(
  resolved: ResolvedYard,
  sections: readonly Section[],
  request: PlanRequest,
  isCancelled: () => boolean,
  onProgress: (fraction: number) => void,
  onQuick: (walked: () => Walked) => void = () => undefined,
): Walked | undefined {
  const turns: Turn[] = [];
  for (const [place, section] of sections.entries()) {
    if (isCancelled()) return undefined;
    turns.push(...turnsOf(section, request));
    onProgress((LAID * (place + 1)) / sections.length);
  }
  for (let sweep = 1; sweep <= SWEEPS; sweep++) {
    if (sweep === SWEEPS) onQuick(() => walkedOf(resolved, sections, turns, request));
    for (const [place, turn] of turns.entries()) {
      if (isCancelled()) return undefined;
      const ends = {
        from: leaveOf(turns.slice(0, place)) ?? request.startAt,
        to:
          (sweep === 1 ? towards(turn, turns[place + 1]) : enterOf(turns.slice(place + 1))) ??
          request.finishAt,
      };
      turn.walks = sweep === 1 ? orderPasses(turn.walks, ends) : dryOrder(turn.walks, ends, request.swathM);
      onProgress(LAID + (1 - LAID) * (((sweep - 1) * turns.length + place + 1) / (SWEEPS * turns.length)));
    }
  }
  return walkedOf(resolved, sections, turns, request);
}

function walkedOf(
  resolved: ResolvedYard,
  sections: readonly Section[],
  turns: readonly Turn[],
  request: PlanRequest,
): Walked {
  const passes: Pass[] = [];
  for (const { section, round, walks } of turns) {
    passes.push(...passesOf(walks, section.id, round, passes.length + 1));
  }
  return { passes, sectionFigures: figuresOf(resolved, sections, turns, passes, request) };
}

function turnsOf(section: Section, { swathM, heading, rounds }: PlanRequest): Turn[] {
  const first = layPasses(section.region, swathM, headingDegOf(heading));
  const turns: Turn[] = [{ section, round: 1, ...first }];
  if (rounds === 2) {
    turns.push({ section, round: 2, ...layPasses(section.region, swathM, first.headingDeg + 90) });
  }
  return turns;
}

function leaveOf(turns: readonly Turn[]): YardPoint | null {
  return (
    turns
      .findLast(({ walks }) => walks.length > 0)
      ?.walks.at(-1)
      ?.line.at(-1) ?? null
  );
}

function enterOf(turns: readonly Turn[]): YardPoint | null {
  return turns.find(({ walks }) => walks.length > 0)?.walks[0]?.line[0] ?? null;
}

/** Where a section is left for the next one, as long as that has no order: the place on its edge that is nearest. */
function towards({ section }: Turn, next: Turn | undefined): YardPoint | null {
  if (next === undefined || next.section === section) return null;
  const middle = interiorPoint(section.region);
  const { outer } = next.section.region;
  let best: YardPoint | null = null;
  let bestM = Infinity;
  outer.forEach((a, i) => {
    const at = nearestOnEdge(a, outer[(i + 1) % outer.length] as YardPoint, middle);
    const apartM = distanceM(at, middle);
    if (apartM >= bestM) return;
    bestM = apartM;
    best = at;
  });
  return best;
}

function figuresOf(
  resolved: ResolvedYard,
  sections: readonly Section[],
  turns: readonly Turn[],
  passes: readonly Pass[],
  request: PlanRequest,
): SectionFigures[] {
  const ways = waysOf(resolved, sections, passes, request);
  const wetM = wetWalkM(passes, ways, request.swathM);
  return sections.map(({ id, areaM2 }) => {
    const own = passes.filter((pass) => pass.sectionId === id);
    const onLengthM = sum(own.map((pass) => pass.lengthM));
    // The way on from the last pass of all counts as its section's.
    const isOwn = (place: number): boolean => passes[Math.min(place, passes.length - 1)]?.sectionId === id;
    const offLengthM = sum(ways.map((way, place) => (isOwn(place) && way !== null ? lineLengthM(way) : 0)));
    return {
      sectionId: id,
      areaM2,
      passes: own.length,
      onLengthM,
      offLengthM,
      wetM: sum(wetM.filter((_, place) => isOwn(place))),
      timeS: (onLengthM + offLengthM) / request.paceMPerS,
      headingDeg: turns.find((turn) => turn.section.id === id)?.headingDeg ?? 0,
    };
  });
}

/** The way to each pass from the one before or from the start, and the way to the finish; null where none is asked. */
function waysOf(
  { zones }: ResolvedYard,
  sections: readonly Section[],
  passes: readonly Pass[],
  { startAt, finishAt }: PlanRequest,
): (readonly YardPoint[] | null)[] {
  const zoneIds = new Map(sections.map(({ id, zoneId }) => [id, zoneId]));
  const walkables = new Map(zones.map((zone) => [zone.zoneId, makeWalkable(zone.turf)]));
  // Between zones the turf of all of them is the ground that is known; where that joins nothing, straight across.
  const everywhere = makeWalkable(zones.flatMap((zone) => zone.turf));
  const way = (from: YardPoint | null, to: YardPoint | null, zoneId?: string): readonly YardPoint[] | null =>
    from === null || to === null ? null : (walkables.get(zoneId ?? '') ?? everywhere).way(from, to);
  const zoneOf = (place: number): string | undefined => zoneIds.get(passes[place]?.sectionId ?? '');
  const endOf = (place: number): YardPoint | null => passes[place]?.line.at(-1) ?? null;
  return [
    ...passes.map(({ line }, place) => {
      const zoneId = zoneOf(place) === zoneOf(place - 1) ? zoneOf(place) : undefined;
      return way(endOf(place - 1) ?? startAt, line[0] ?? null, zoneId);
    }),
    way(endOf(passes.length - 1), finishAt),
  ];
}
