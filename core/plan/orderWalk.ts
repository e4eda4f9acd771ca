import type { HoseDistance } from '../hose/index.ts';
import { distanceM, interiorPoint } from '../kernel/index.ts';
import type { CutLine, Section } from '../sections/index.ts';
import type { YardPoint } from '../spaces.ts';
import { orderStops, type StepM, type Stop } from './orderStops.ts';
import type { PlanLoad, PlanRequest } from './plan.ts';

/** Ground cut and packed into loads. */
export interface PackedGround {
  readonly sections: readonly Section[];
  readonly cutLines: readonly CutLine[];
  readonly loads: readonly PlanLoad[];
}

/** Across a cut line the walk goes on; to any other section it goes over ground. A rule of thumb of our own. */
const NEIGHBOUR_PART = 0.5;

/**
 * Puts loads and their sections in the order they are walked, and names both anew so that numbers rise on the way:
 * sections within their zone, loads through the whole plan. The sections of one load follow each other.
 *
 * With a hose, the loads of one spigot follow each other, that farthest from it first, so that neither
 * feet nor hose cross turf already treated. Without one, the way between the middles of sections is kept short, and
 * begins and ends where the person wants.
 *
 * @param needs the hose each section needs, in the order of `ground.sections`; null = no hose
 */
export function orderWalk(
  ground: PackedGround,
  { startAt, finishAt }: Pick<PlanRequest, 'startAt' | 'finishAt'>,
  needs: readonly HoseDistance[] | null,
): PackedGround {
  const places = new Map(ground.sections.map(({ id }, place) => [id, place]));
  const stops = ground.loads.map(({ sectionIds }) => sectionIds.map((id) => places.get(id) as number));
  const stepM = stepsBetween(ground, startAt, finishAt);
  const order = needs === null ? nearStops(stops, stepM) : farStops(stops, stepM, needs);
  return renamed(ground, order);
}

function stepsBetween(
  { sections, cutLines }: PackedGround,
  startAt: YardPoint | null,
  finishAt: YardPoint | null,
): StepM {
  const middles = sections.map(({ region }) => interiorPoint(region));
  const placeOf = new Map(sections.map(({ id }, place) => [id, place]));
  const pair = (a: number, b: number): number => Math.min(a, b) * sections.length + Math.max(a, b);
  const neighbours = new Set(
    cutLines.map(({ between: [left, right] }) =>
      pair(placeOf.get(left) as number, placeOf.get(right) as number),
    ),
  );
  return (from, to) => {
    const a = from === null ? startAt : (middles[from] as YardPoint);
    const b = to === null ? finishAt : (middles[to] as YardPoint);
    if (a === null || b === null) return 0;
    const isNeighbour = from !== null && to !== null && neighbours.has(pair(from, to));
    return distanceM(a, b) * (isNeighbour ? NEIGHBOUR_PART : 1);
  };
}

/** The sections of each load among themselves first, then the loads. */
function nearStops(stops: readonly Stop[], stepM: StepM): Stop[] {
  const anywhere: StepM = (from, to) => (from === null || to === null ? 0 : stepM(from, to));
  return orderStops(
    stops.map((stop) =>
      orderStops(
        stop.map((place) => [place]),
        anywhere,
      ).flat(),
    ),
    stepM,
  );
}

/**
 * Far to near by the place of a section a hose comes to first: a hose on its shortest way to one section comes over
 * another only where that is nearer, so from one spigot, with a load for each section, it never lies on turf treated before. Worked out here.
 */
function farStops(stops: readonly Stop[], stepM: StepM, needs: readonly HoseDistance[]): Stop[] {
  const farFirst = (a: number, b: number): number =>
    offM(needs[b]?.nearestM) - offM(needs[a]?.nearestM) || offM(needs[b]?.neededM) - offM(needs[a]?.neededM);
  const loads = stops.map((stop) => stop.toSorted(farFirst));
  const bySpigot = new Map<string, Stop[]>();
  for (const load of loads) {
    const spigotId = needs[load[0] as number]?.spigotId ?? '';
    bySpigot.set(spigotId, [...(bySpigot.get(spigotId) ?? []), load]);
  }
  const spigots = [...bySpigot.values()].map((own) =>
    // Of a load of several sections the one nearest to the spigot is crossed most: it says when the load's turn is.
    own.toSorted((a, b) => farFirst(a.at(-1) as number, b.at(-1) as number)),
  );
  // Which spigot comes first is free; its loads are not turned round.
  const ends = spigots.map((own) => [own[0]?.[0] as number, own.at(-1)?.at(-1) as number] as const);
  return inFixedDirection(ends, stepM).flatMap((i) => spigots[i] as Stop[]);
}

/** A section no hose gets to is done without one, first of all. */
function offM(lengthM: number | undefined): number {
  return Math.min(lengthM ?? 0, Number.MAX_VALUE);
}

/** Always on to the nearest of what is come to at its first place and left at its last. */
function inFixedDirection(ends: readonly (readonly [number, number])[], stepM: StepM): number[] {
  const left = ends.map((_, i) => i);
  const order: number[] = [];
  let here: number | null = null;
  while (left.length > 0) {
    const from: number | null = here;
    const next = left.reduce((best, i) =>
      stepM(from, (ends[i] as Stop)[0] as number) < stepM(from, (ends[best] as Stop)[0] as number) ? i : best,
    );
    left.splice(left.indexOf(next), 1);
    order.push(next);
    here = (ends[next] as Stop)[1] as number;
  }
  return order;
}

function renamed({ sections, cutLines, loads }: PackedGround, order: readonly Stop[]): PackedGround {
  const walked = order.flat().map((place) => sections[place] as Section);
  const names = new Map<string, string>();
  const counts = new Map<string, number>();
  for (const { id } of walked) {
    const letter = id.replace(/\d+$/, '');
    const count = (counts.get(letter) ?? 0) + 1;
    counts.set(letter, count);
    names.set(id, `${letter}${count}`);
  }
  const nameOf = (id: string): string => names.get(id) as string;
  const loadOf = new Map(loads.flatMap((load) => load.sectionIds.map((id) => [id, load] as const)));
  return {
    sections: walked.map((section) => ({ ...section, id: nameOf(section.id) })),
    cutLines: cutLines.map((line) => {
      return { ...line, between: [nameOf(line.between[0]), nameOf(line.between[1])] as const };
    }),
    loads: order.map((stop, place) => {
      const ids = stop.map((i) => (sections[i] as Section).id);
      return {
        ...(loadOf.get(ids[0] as string) as PlanLoad),
        number: place + 1,
        sectionIds: ids.map(nameOf),
      };
    }),
  };
}
