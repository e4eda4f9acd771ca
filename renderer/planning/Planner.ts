import { proxy, type Remote, wrap } from 'comlink';
import type { JobPlan } from '../../core/plan/index.ts';
import type { Problem } from '../../core/problems.ts';
import type { Yard } from '../../core/yard.ts';
import type { PlanWork } from './planWorker.ts';

/**
 * The plan of the job in hand as the window sees it. `plan` is the newest that was finished; `stale` says it
 * was made from an earlier yard, and is shown as such until the next one is there.
 */
export interface PlanState {
  readonly plan: JobPlan | null;
  readonly problems: readonly Problem[];
  readonly stale: boolean;
  /** 0 to 1 while a plan is under way; null when none is. */
  readonly progress: number | null;
}

/** Edits come in bursts; a plan is begun when none has come for this long, in milliseconds. */
const QUIET_MS = 60;

/** Everything of a yard that a plan is made from: a change to anything else must not start a new one. */
type PlanInputs = readonly unknown[];

/**
 * Keeps one plan up to date with the yard. A newer yard ends the work on an older one, so that a result is
 * never shown for ground that is no longer there. A class because it owns a worker.
 */
export class Planner {
  #state: PlanState = { plan: null, problems: [], stale: false, progress: null };
  readonly #listeners = new Set<() => void>();
  #inputs: PlanInputs | null = null;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #worker: Worker | null = null;
  #work: Remote<PlanWork> | null = null;
  #working = false;
  /** Names the newest request; an answer to an older one is dropped. */
  #request = 0;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly snapshot = (): PlanState => this.#state;

  /** Says which yard and job are in hand; does nothing when the plan would come out the same. */
  want(yard: Yard | null, jobId: string | null): void {
    if (yard === null || jobId === null) {
      this.#inputs = null;
      this.#cancel();
      if (this.#state.plan !== null || this.#state.problems.length > 0) {
        this.#set({ plan: null, problems: [], stale: false, progress: null });
      }
      return;
    }
    const inputs = inputsOf(yard, jobId);
    if (this.#inputs !== null && inputs.every((part, i) => part === this.#inputs?.[i])) return;
    this.#inputs = inputs;
    this.#cancel();
    this.#set({ ...this.#state, stale: true, progress: 0 });
    this.#timer = setTimeout(() => void this.#run(yard, jobId), QUIET_MS);
  }

  close(): void {
    this.#cancel();
    this.#end();
  }

  async #run(yard: Yard, jobId: string): Promise<void> {
    const request = this.#request;
    const work = this.#remote();
    this.#working = true;
    const answer = await work.plan(
      yard,
      jobId,
      proxy((fraction: number) => {
        if (request === this.#request) this.#set({ ...this.#state, progress: fraction });
      }),
    );
    if (request !== this.#request) return;
    this.#working = false;
    if (answer.ok) this.#set({ plan: answer.value, problems: [], stale: false, progress: null });
    else this.#set({ plan: null, problems: answer.problems, stale: false, progress: null });
  }

  #cancel(): void {
    this.#request += 1;
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    if (!this.#working) return;
    // A planner in the middle of its work hears no message: only ending its worker stops it.
    this.#end();
  }

  #remote(): Remote<PlanWork> {
    this.#worker ??= new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' });
    this.#work ??= wrap<PlanWork>(this.#worker);
    return this.#work;
  }

  #end(): void {
    this.#worker?.terminate();
    this.#worker = null;
    this.#work = null;
    this.#working = false;
  }

  #set(state: PlanState): void {
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }
}

function inputsOf(yard: Yard, jobId: string): PlanInputs {
  return [
    yard.outlines,
    yard.pictures,
    yard.elevations,
    yard.products,
    yard.applicators,
    yard.jobs,
    yard.details.cornerSigmaM,
    yard.details.overlapRule,
    yard.details.amountsBy,
    jobId,
  ];
}
