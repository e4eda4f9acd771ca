import { proxy } from 'comlink';
import type { JobPlan } from '../../core/plan/index.ts';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import { type PlanInputs, planInputsOf, sameInputs } from './planInputs.ts';
import { type PlanHand, startPlanHand, Workbench } from './Workbench.ts';

/** The plan of the job in hand as the window sees it. */
export interface PlanState {
  /** The newest there is. */
  readonly plan: JobPlan | null;
  readonly problems: readonly Problem[];
  /** It was made from an earlier yard or job, and is shown as such until the next one is there. */
  readonly stale: boolean;
  /** It is of this yard, but quickly made: a better one is being looked for. */
  readonly isFirst: boolean;
  /** 0 to 1 while a plan is under way; null when none is. */
  readonly progress: number | null;
}

const NOTHING: PlanState = { plan: null, problems: [], stale: false, isFirst: false, progress: null };

/** Edits come in bursts; a plan is begun when none has come for this long, in milliseconds. */
const QUIET_MS = 60;
/** A hand that drags pauses longer than that between two moves without having come to rest. */
const QUIET_IN_HAND_MS = 200;

/**
 * Keeps one plan up to date with the yard. A newer yard ends the work on an older one, so that a result is
 * never shown for ground that is no longer there. A class because it owns a worker.
 */
export class Planner {
  #state: PlanState = NOTHING;
  readonly #listeners = new Set<() => void>();
  readonly #bench: Workbench;
  #wanted: { readonly yard: Yard; readonly jobId: string; readonly inputs: PlanInputs } | null = null;
  #timer: ReturnType<typeof setTimeout> | null = null;

  constructor(start: () => PlanHand = startPlanHand) {
    this.#bench = new Workbench(start);
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly snapshot = (): PlanState => this.#state;

  /**
   * Says which yard and job are in hand; does nothing when the plan would come out the same.
   *
   * @param inHand the yard is changing under a hand that has not let go: the plan waits for a pause
   */
  want(yard: Yard | null, jobId: string | null, inHand = false): void {
    if (yard === null || jobId === null) {
      this.#wanted = null;
      this.#giveUp();
      if (this.#state !== NOTHING) this.#set(NOTHING);
      return;
    }
    const inputs = planInputsOf(yard, jobId);
    if (sameInputs(this.#wanted?.inputs ?? null, inputs)) return;
    this.#wanted = { yard, jobId, inputs };
    this.#giveUp();
    this.#set({ ...this.#state, stale: true, isFirst: false, progress: 0 });
    this.#timer = setTimeout(() => void this.#run(yard, jobId), inHand ? QUIET_IN_HAND_MS : QUIET_MS);
  }

  /** Ends the work under way; the plan that is shown stays as it is. */
  readonly stop = (): void => {
    this.#giveUp();
    if (this.#state.progress !== null) this.#set({ ...this.#state, progress: null });
  };

  /** Takes up again what was stopped. */
  readonly goOn = (): void => {
    if (this.#wanted === null || this.#state.progress !== null) return;
    this.#set({ ...this.#state, progress: 0 });
    void this.#run(this.#wanted.yard, this.#wanted.jobId);
  };

  close(): void {
    this.#giveUp();
    this.#bench.close();
  }

  async #run(yard: Yard, jobId: string): Promise<void> {
    const answer = await this.#bench.do(
      async (work, isWanted): Promise<Result<JobPlan>> =>
        work.plan(
          yard,
          jobId,
          proxy((fraction: number) => {
            if (isWanted()) this.#set({ ...this.#state, progress: fraction });
          }),
          proxy((plan: JobPlan) => {
            if (isWanted()) this.#set({ ...this.#state, plan, problems: [], stale: false, isFirst: true });
          }),
        ),
    );
    if (answer === undefined) return;
    if (answer.ok) this.#set({ ...NOTHING, plan: answer.value });
    else this.#set({ ...NOTHING, problems: answer.problems });
  }

  #giveUp(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    this.#bench.giveUp();
  }

  #set(state: PlanState): void {
    this.#state = state;
    for (const listener of this.#listeners) listener();
  }
}
