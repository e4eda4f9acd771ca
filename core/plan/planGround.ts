import { hoseDistances, planHose } from '../hose/index.ts';
import { measureCoverage } from '../passes/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Section } from '../sections/index.ts';
import { sum } from '../units/index.ts';
import type { ResolvedYard } from '../zones/index.ts';
import { cancelled, thingOf } from './cancelled.ts';
import { type CutGround, cutZones } from './cutZones.ts';
import { headingDegOf } from './headingDegOf.ts';
import { orderWalk } from './orderWalk.ts';
import { narrowWays } from './narrowGround.ts';
import { packLoads } from './packLoads.ts';
import type { GroundPlan, PlanRequest, SectionFigures } from './plan.ts';
import { type Walked, walkSections } from './walkSections.ts';

/** How a long plan is watched and stopped. Both are called between steps, never within one. */
export interface GroundControl {
  readonly isCancelled?: () => boolean;
  /** From 0 to 1, rising. */
  readonly onProgress?: (fraction: number) => void;
  /** Given a whole, measured plan while a better one is still sought; not called where that takes no time. */
  readonly onBetter?: (plan: GroundPlan) => void;
}

/** Ground of fewer swath squares is planned in a blink: no first plan is handed out. */
const BLINK_SQUARES = 150;

/** What of the whole plan is done once the sections are cut; the passes are laid next, and measured last. */
const SECTIONS_DONE = 0.4;
const PASSES_DONE = 0.8;

/**
 * From resolved ground to what is walked: zones in the order drawn, each cut into sections, each section walked
 * in passes from where the one before ended, and the coverage of the whole measured.
 *
 * @param resolved zones whose treated ground does not overlap
 * @returns figures whose walks off add up: the walk from one section to the next counts as the next one's.
 * `warnings` are the plan's own; those of the outlines stay with `resolved`
 * Problems: value/not-positive, plan/nothing-to-treat, plan/cancelled, and those of planSections
 * Cost: see planSections, planPasses and measureCoverage; timed by `npm run bench:plan`
 */
export function planGround(
  resolved: ResolvedYard,
  request: PlanRequest,
  control: GroundControl = {},
): Result<GroundPlan> {
  const problem = findProblem(resolved, request);
  if (problem !== undefined) return trouble(problem);
  const isCancelled = control.isCancelled ?? (() => false);
  const onProgress = control.onProgress ?? (() => undefined);
  const cut = cutZones(resolved, request, isCancelled, (part) => onProgress(SECTIONS_DONE * part));
  if (!cut.ok) return cut;
  const { sections, cutLines, loads } = orderWalk(
    { ...cut.value, loads: packLoads(cut.value, resolved.zones, request) },
    request,
    request.hose === null ? null : hoseDistances(request.hose, cut.value.sections),
  );
  const planOf = (walked: Walked): GroundPlan => {
    return measured(resolved, request, { ...cut.value, sections, cutLines, loads }, walked);
  };
  const { onBetter } = control;
  const squares = sum(sections.map(({ areaM2 }) => areaM2)) / request.swathM ** 2;
  const walked = walkSections(
    resolved,
    sections,
    request,
    isCancelled,
    (part) => onProgress(SECTIONS_DONE + (PASSES_DONE - SECTIONS_DONE) * part),
    (quick) => {
      if (onBetter !== undefined && squares >= BLINK_SQUARES) onBetter(planOf(quick()));
    },
  );
  if (walked === undefined) return trouble(cancelled(resolved));
  const plan = planOf(walked);
  onProgress(1);
  return ok(plan);
}

/** The plan of a walk, with what it treats measured. */
function measured(
  resolved: ResolvedYard,
  request: PlanRequest,
  { sections, cuts, cutLines, loads, warnings }: CutGround & Pick<GroundPlan, 'loads'>,
  { passes, sectionFigures }: Walked,
): GroundPlan {
  const { swathM, rounds } = request;
  const coverage = measureCoverage({ sections, untreated: resolved.untreated, passes, swathM, rounds });
  const hose = request.hose === null ? null : planHose(request.hose, { sections, passes });
  const unwalked = unwalkedZones(sections, sectionFigures);
  const onLengthM = sum(sectionFigures.map((figures) => figures.onLengthM));
  const offLengthM = sum(sectionFigures.map((figures) => figures.offLengthM));
  return {
    request,
    resolved,
    sections,
    cuts,
    cutLines,
    loads,
    passes,
    coverage,
    hose,
    sectionFigures,
    onLengthM,
    offLengthM,
    wetM: sum(sectionFigures.map((figures) => figures.wetM)),
    timeS: (onLengthM + offLengthM) / request.paceMPerS,
    warnings: [
      ...warnings,
      ...unwalked.map((thing): Problem => {
        return { kind: 'plan/swath-wider-than-zone', where: { thing }, facts: { swathM } };
      }),
      ...narrowWays(resolved, swathM, new Set(unwalked)),
      ...(hose?.warnings ?? []),
    ],
  };
}

function findProblem(resolved: ResolvedYard, request: PlanRequest): Problem | undefined {
  const { swathM, paceMPerS, stepM, loadAreaM2, hose } = request;
  const figures = {
    swath: swathM,
    pace: paceMPerS,
    step: stepM,
    'load area': loadAreaM2,
    ...(hose === null ? {} : { 'length of the hose': hose.lengthM }),
  };
  for (const [field, value] of Object.entries(figures)) {
    if (!(value > 0) || !Number.isFinite(value))
      return { kind: 'value/not-positive', where: { field }, facts: {} };
  }
  const headingDeg = headingDegOf(request.heading);
  if (headingDeg !== null && !Number.isFinite(headingDeg)) {
    return { kind: 'value/not-a-number', where: { field: 'heading' }, facts: { typed: `${headingDeg}` } };
  }
  if (resolved.zones.some((zone) => zone.treated.length > 0)) return undefined;
  return { kind: 'plan/nothing-to-treat', where: { thing: thingOf(resolved) }, facts: {} };
}

/** Names of zones with a section no pass fits in: it is wholly missed. */
function unwalkedZones(sections: readonly Section[], figures: readonly SectionFigures[]): readonly string[] {
  const names = sections.flatMap((section, place) =>
    figures[place]?.passes === 0 ? [section.zoneName] : [],
  );
  return [...new Set(names)];
}
