import type { GroundPlan } from '../../core/plan/index.ts';
import {
  type CutEnds,
  cutBed,
  isSameLine,
  type PlannedCuts,
  TapeSides,
  type WholeCut,
  wholeCuts,
} from '../../core/sections/index.ts';
import type { Region } from '../../core/spaces.ts';
import type { Job } from '../../core/yard.ts';

/** What may be done to the walk of a job: its cuts moved and held, its start and finish placed. */
export interface WalkContext {
  readonly job: Job;
  /** The newest that was finished; the job may be an edit ahead of it. */
  readonly plan: GroundPlan | null;
  readonly mayEdit: boolean;
}

/** A cut that can be taken in hand: one the job holds, or one of the plan's own. */
export interface NamedCut extends WholeCut {
  readonly id: string;
}

const known = new WeakMap<WalkContext, readonly NamedCut[]>();

/** Those the job holds, as the plan made them where it knows them, and the plan's own. */
export function cutsOf(walk: WalkContext): readonly NamedCut[] {
  const found = known.get(walk);
  if (found !== undefined) return found;
  const made = findCuts(walk);
  known.set(walk, made);
  return made;
}

function findCuts(walk: WalkContext): readonly NamedCut[] {
  const { job, plan } = walk;
  const planned = plan === null ? [] : wholeCuts({ cuts: plan.cuts, treatedOf: (id) => treatedOf(walk, id) });
  const held = job.heldCuts.map((cut): NamedCut => {
    const asAsked = plan?.request.heldCuts.find(({ id }) => id === cut.id);
    const asMade = asAsked && isSameLine(asAsked, cut) && planned.find(({ heldId }) => heldId === cut.id);
    return asMade ? { ...asMade, id: cut.id } : { ...cut, heldId: cut.id, runs: [] };
  });
  const free = planned.filter(
    (cut) => cut.heldId === null && !job.heldCuts.some((other) => isSameLine(other, cut)),
  );
  const named = [...held, ...free.map((cut): NamedCut => ({ ...cut, id: nameOf(cut) }))];
  // In the plan’s order, so that holding one does not move it in the ledger; those it has not made yet come last.
  const placeOf = ({ runs }: NamedCut): number => runs[0] ?? Number.POSITIVE_INFINITY;
  return named.toSorted((a, b) => (placeOf(a) === placeOf(b) ? 0 : placeOf(a) - placeOf(b)));
}

/** A cut of the plan's own has no id; its place names it as long as it stays there. */
function nameOf({ from, to }: CutEnds): string {
  return [from.xM, from.yM, to.xM, to.yM].map((m) => m.toFixed(2)).join(' ');
}

export function treatedOf({ plan }: WalkContext, zoneId: string): readonly Region[] {
  return plan?.resolved.zones.find((zone) => zone.zoneId === zoneId)?.treated ?? [];
}

/** Map area of a zone's ground that one load treats. */
export function loadAreaM2Of(plan: GroundPlan, zoneId: string): number {
  const zone = plan.resolved.zones.find((each) => each.zoneId === zoneId);
  return plan.request.loadAreaM2 / (zone?.amountFactor ?? 1);
}

/** What the edits of cuts are made from. */
export function plannedCutsOf(walk: WalkContext): PlannedCuts {
  return { cuts: cutsOf(walk), treatedOf: (zoneId) => treatedOf(walk, zoneId) };
}

/** The ground a cut parts. */
export function bedOf(walk: WalkContext, cut: NamedCut): Region | undefined {
  const others = cutsOf(walk).filter((other) => other.zoneId === cut.zoneId && other !== cut);
  return cutBed(treatedOf(walk, cut.zoneId), cut, others);
}

const sidesKnown = new WeakMap<GroundPlan, TapeSides>();
const NO_SIDES = new TapeSides([]);

/** What tape marks are counted along. */
export function tapeSidesIn(plan: GroundPlan | null): TapeSides {
  if (plan === null) return NO_SIDES;
  const made = sidesKnown.get(plan) ?? new TapeSides(plan.request.tapeSides);
  sidesKnown.set(plan, made);
  return made;
}
