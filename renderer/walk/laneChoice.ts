import { type GroundPlan, headingDegOf } from '../../core/plan/index.ts';
import { counted, formatAngle } from '../../core/units/index.ts';
import type { Job, LaneHeading, Yard } from '../../core/yard.ts';

/** How the lanes run, as the person chooses it. */
export type LaneChoice = 'best' | 'picked' | 'turned-45' | 'turned-90';

export const LANE_CHOICES = [
  ['best', 'as the plan picks'],
  ['picked', 'at a bearing'],
  ['turned-45', '45° from last time'],
  ['turned-90', '90° from last time'],
] as const;

export function laneChoiceOf(heading: LaneHeading): LaneChoice {
  return heading.kind === 'turned' ? `turned-${heading.byDeg}` : heading.kind;
}

/**
 * The heading for a choice, with bearings to begin from until others are typed.
 *
 * @param nowDeg what the lanes run at now; null = not known
 * @param lastDeg what they ran at last time; null = not known, and then what they run at now stands for it
 */
export function headingFor(choice: LaneChoice, nowDeg: number | null, lastDeg: number | null): LaneHeading {
  if (choice === 'best') return { kind: 'best' };
  if (choice === 'picked') return { kind: 'picked', deg: nowDeg ?? 0 };
  return { kind: 'turned', lastDeg: lastDeg ?? nowDeg ?? 0, byDeg: choice === 'turned-45' ? 45 : 90 };
}

/** The yard's other jobs whose bearing is known without planning them, the newest first. */
export function bearingsOfOtherJobs(yard: Yard, job: Job): readonly { name: string; deg: number }[] {
  return yard.jobs
    .filter(({ id }) => id !== job.id)
    .flatMap(({ name, heading }) => {
      const deg = headingDegOf(heading);
      return deg === null ? [] : [{ name, deg }];
    })
    .reverse();
}

/**
 * A bearing as it is set with a compass, to the whole degree; lanes are walked both ways, so that 270° is 90°.
 */
export function laneDeg(headingDeg: number): number {
  return Math.round(headingDeg) % 180;
}

/** What the lanes of the first section walked run at; null without one. */
export function firstLaneDeg(ground: GroundPlan | null): number | null {
  const first = ground?.sectionFigures.find(({ passes }) => passes > 0);
  return first === undefined ? null : laneDeg(first.headingDeg);
}

/** "90°", "3 bearings" where sections differ, "none fits" without a pass: as much as a head has room for. */
export function bearingsInShort(ground: GroundPlan): string {
  const bearings = sectionsByBearing(ground);
  const [only] = bearings.keys();
  if (only === undefined) return 'none fits';
  return bearings.size > 1 ? counted(bearings.size, 'bearing') : formatAngle(only);
}

/** "90° in A1 and A2, 45° in B1". */
export function bearingWords(ground: GroundPlan): string {
  return [...sectionsByBearing(ground)]
    .map(([deg, ids]) => `${formatAngle(deg)} in ${listed(ids)}`)
    .join(', ');
}

function sectionsByBearing({ sectionFigures }: GroundPlan): ReadonlyMap<number, readonly string[]> {
  const sections = new Map<number, string[]>();
  for (const { sectionId, headingDeg, passes } of sectionFigures) {
    if (passes === 0) continue;
    const deg = laneDeg(headingDeg);
    sections.set(deg, [...(sections.get(deg) ?? []), sectionId]);
  }
  return sections;
}

function listed(ids: readonly string[]): string {
  const last = ids.at(-1) ?? '';
  return ids.length < 2 ? last : `${ids.slice(0, -1).join(', ')} and ${last}`;
}
