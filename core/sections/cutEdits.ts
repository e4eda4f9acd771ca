import { distanceM } from '../kernel/index.ts';
import type { HeldCut, Job } from '../yard.ts';
import { cutUnder } from './cutBed.ts';
import type { Cut } from './section.ts';
import type { CutEnds } from './splitAlong.ts';
import type { PlannedCuts } from './wholeCuts.ts';

/** A held cut lies here already when both its ends are this near. */
const SAME_M = 1e-5;

/**
 * Holds a cut where it is; `planned.cuts` are whole cuts. A cut that rests on another stands only as long as that one does, so what it rests on is
 * held with it.
 *
 * @returns the very same job when all of them are held already
 */
export function holdCut(job: Job, cut: Cut, planned: PlannedCuts, makeId: () => string): Job {
  const held = restsOn(cut, planned).reduce((done, under) => withHeld(done, under, makeId), job);
  return withHeld(held, cut, makeId);
}

/**
 * Moves a whole cut: it is held at its new place, by the id it had if it was held before, and so is what its ends now
 * rest on. The parts later cuts made of it go with it.
 *
 * @returns the job, and the id the cut has in it
 */
export function moveCut(
  job: Job,
  cut: Cut,
  to: CutEnds,
  planned: PlannedCuts,
  makeId: () => string,
): { readonly job: Job; readonly id: string } {
  const others = planned.cuts.filter((other) => other !== cut);
  const moved: Cut = { ...cut, from: to.from, to: to.to };
  const rested = restsOn(moved, { ...planned, cuts: others }).reduce(
    (done, under) => withHeld(done, under, makeId),
    job,
  );
  const known = job.heldCuts.find(({ id }) => id === cut.heldId);
  const id = known?.id ?? makeId();
  const row: HeldCut = { id, zoneId: cut.zoneId, from: to.from, to: to.to };
  const heldCuts =
    known === undefined
      ? [...rested.heldCuts, row]
      : rested.heldCuts.map((each) => (each.id === id ? row : each));
  return { job: { ...rested, heldCuts }, id };
}

/** Adds a cut of the person's own. */
export function addCut(job: Job, zoneId: string, { from, to }: CutEnds, id: string): Job {
  return { ...job, heldCuts: [...job.heldCuts, { id, zoneId, from, to }] };
}

/** Lets one cut go: the plan may place it anew, or do without it. */
export function letCutGo(job: Job, id: string): Job {
  const heldCuts = job.heldCuts.filter((held) => held.id !== id);
  return heldCuts.length === job.heldCuts.length ? job : { ...job, heldCuts };
}

export function letAllCutsGo(job: Job): Job {
  return job.heldCuts.length === 0 ? job : { ...job, heldCuts: [] };
}

/** The cuts a cut hangs from, the last of the chain first. */
function restsOn(cut: Cut, { cuts, treatedOf }: PlannedCuts): readonly Cut[] {
  const treated = treatedOf(cut.zoneId);
  const found: Cut[] = [];
  const follow = (hanging: Cut): void => {
    for (const end of [hanging.from, hanging.to]) {
      const others = cuts.filter((other) => other.zoneId === cut.zoneId && other !== cut);
      const under = cutUnder(
        treated,
        end,
        others.filter((other) => other !== hanging && !found.includes(other)),
      );
      if (under === undefined) continue;
      found.unshift(under);
      follow(under);
    }
  };
  follow(cut);
  return found;
}

function withHeld(job: Job, { zoneId, from, to }: Cut, makeId: () => string): Job {
  const isHeld = job.heldCuts.some((held) => held.zoneId === zoneId && isSameLine(held, { from, to }));
  return isHeld ? job : addCut(job, zoneId, { from, to }, makeId());
}

/** Whether two lines have the same ends, whichever way they run. */
export function isSameLine(a: CutEnds, b: CutEnds): boolean {
  const same = distanceM(a.from, b.from) <= SAME_M && distanceM(a.to, b.to) <= SAME_M;
  return same || (distanceM(a.from, b.to) <= SAME_M && distanceM(a.to, b.from) <= SAME_M);
}
