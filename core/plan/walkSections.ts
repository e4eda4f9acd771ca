import { distanceM, interiorPoint, nearestOnEdge } from '../kernel/index.ts';
import { layPasses, makeWalkable, orderPasses, type Pass, passesOf, type Walk } from '../passes/index.ts';
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
 * @returns undefined when cancelled; the walk from one section to the next counts as the next one's, that to where
 * the person wants to end as the last one's
 */
export function walkSections(
  resolved: ResolvedYard,
  sections: readonly Section[],
  request: PlanRequest,
  isCancelled: () => boolean,
  onProgress: (fraction: number) => void,
): { passes: Pass[]; sectionFigures: SectionFigures[] } | undefined {
  const turns: Turn[] = [];
  for (const [place, section] of sections.entries()) {
    if (isCancelled()) return undefined;
    turns.push(...turnsOf(section, request));
    onProgress((LAID * (place + 1)) / sections.length);
  }
  for (let sweep = 1; sweep <= SWEEPS; sweep++) {
    for (const [place, turn] of turns.entries()) {
      if (isCancelled()) return undefined;
      turn.walks = orderPasses(turn.walks, {
        from: leaveOf(turns.slice(0, place)) ?? request.startAt,
        to:
          (sweep === 1 ? towards(turn, turns[place + 1]) : enterOf(turns.slice(place + 1))) ??
          request.finishAt,
      });
      onProgress(LAID + (1 - LAID) * (((sweep - 1) * turns.length + place + 1) / (SWEEPS * turns.length)));
    }
  }
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
  { startAt, finishAt, paceMPerS }: PlanRequest,
): SectionFigures[] {
  const offM = offLengths(resolved, sections, passes, startAt, finishAt);
  return sections.map(({ id, areaM2 }, place) => {
    const own = passes.filter((pass) => pass.sectionId === id);
    const onLengthM = sum(own.map((pass) => pass.lengthM));
    const offLengthM = offM[place] as number;
    const headingDeg = turns.find((turn) => turn.section.id === id)?.headingDeg ?? 0;
    return {
      sectionId: id,
      areaM2,
      passes: own.length,
      onLengthM,
      offLengthM,
      timeS: (onLengthM + offLengthM) / paceMPerS,
      headingDeg,
    };
  });
}

/** The walk while off that counts for each section. */
function offLengths(
  { zones }: ResolvedYard,
  sections: readonly Section[],
  passes: readonly Pass[],
  startAt: YardPoint | null,
  finishAt: YardPoint | null,
): number[] {
  const places = new Map(sections.map(({ id }, place) => [id, place]));
  const zoneOf = (pass: Pass | undefined): string | undefined =>
    sections[places.get(pass?.sectionId ?? '') ?? -1]?.zoneId;
  const walkables = new Map(zones.map((zone) => [zone.zoneId, makeWalkable(zone.turf)]));
  // Between zones the turf of all of them is the ground that is known; where that joins nothing, straight across.
  const everywhere = makeWalkable(zones.flatMap((zone) => zone.turf));
  const offM = sections.map(() => 0);
  const add = (pass: Pass, from: YardPoint | null, to: YardPoint | null, before: Pass | undefined): void => {
    if (from === null || to === null) return;
    const zoneId = zoneOf(pass);
    const walkable = zoneId === zoneOf(before) ? walkables.get(zoneId as string) : everywhere;
    const place = places.get(pass.sectionId) as number;
    offM[place] = (offM[place] as number) + (walkable ?? everywhere).wayM(from, to);
  };
  passes.forEach((pass, i) => {
    const before = passes[i - 1];
    add(pass, before?.line.at(-1) ?? startAt, pass.line[0] as YardPoint, before);
  });
  const last = passes.at(-1);
  if (last !== undefined) add(last, last.line.at(-1) as YardPoint, finishAt, undefined);
  return offM;
}
