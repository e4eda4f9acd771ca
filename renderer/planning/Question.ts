import type { Remote } from 'comlink';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import { type PlanInputs, planInputsOf, sameInputs } from './planInputs.ts';
import type { PlanWork } from './planWorker.ts';
import { type PlanHand, startPlanHand, Workbench } from './Workbench.ts';

export interface Answer<T> {
  /** The newest there is; null until the first, or when there is trouble. */
  readonly value: T | null;
  readonly problems: readonly Problem[];
  /** A newer one is being worked out. */
  readonly stale: boolean;
}

export type Ask<T> = (work: Remote<PlanWork>, yard: Yard, jobId: string) => Promise<Result<T>>;

/** A plan goes before what is asked beside it, in milliseconds. */
const QUIET_MS = 300;

/**
 * Something worked out of the same inputs as the plan, but only while somebody looks at it, and by a worker of its own:
 * the plan never waits for it. A class because it owns that worker.
 */
export class Question<T> {
  #answer: Answer<T> = { value: null, problems: [], stale: false };
  readonly #listeners = new Set<() => void>();
  readonly #ask: Ask<T>;
  readonly #bench: Workbench;
  #inputs: PlanInputs | null = null;
  #timer: ReturnType<typeof setTimeout> | null = null;

  constructor(ask: Ask<T>, start: () => PlanHand = startPlanHand) {
    this.#ask = ask;
    this.#bench = new Workbench(start);
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly snapshot = (): Answer<T> => this.#answer;

  /** Asks about a yard and job; does nothing when the answer would be the same. */
  want(yard: Yard, jobId: string): void {
    const inputs = planInputsOf(yard, jobId);
    if (sameInputs(this.#inputs, inputs)) return;
    this.#giveUp();
    this.#inputs = inputs;
    this.#set({ ...this.#answer, stale: true });
    this.#timer = setTimeout(() => void this.#run(yard, jobId), QUIET_MS);
  }

  /** Nobody looks any more. Asked again, it begins anew. */
  close(): void {
    this.#giveUp();
    this.#bench.close();
    this.#inputs = null;
  }

  async #run(yard: Yard, jobId: string): Promise<void> {
    const answer = await this.#bench.do(async (work): Promise<Result<T>> => this.#ask(work, yard, jobId));
    if (answer === undefined) return;
    if (answer.ok) this.#set({ value: answer.value, problems: [], stale: false });
    else this.#set({ value: null, problems: answer.problems, stale: false });
  }

  #giveUp(): void {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    this.#bench.giveUp();
  }

  #set(answer: Answer<T>): void {
    this.#answer = answer;
    for (const listener of this.#listeners) listener();
  }
}
