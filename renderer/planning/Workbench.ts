import { type Remote, wrap } from 'comlink';
import type { PlanWork } from './planWorker.ts';

/** A worker that has the planner, and how to be rid of it. */
export interface PlanHand {
  readonly work: Remote<PlanWork>;
  readonly end: () => void;
}

export function startPlanHand(): PlanHand {
  const worker = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' });
  return { work: wrap<PlanWork>(worker), end: () => worker.terminate() };
}

/**
 * One worker that does one thing at a time. It is begun when it is first needed and kept while it is idle; one in the
 * middle of its work hears no message, so only ending it stops it.
 */
export class Workbench {
  readonly #start: () => PlanHand;
  #hand: PlanHand | null = null;
  #busy = false;
  /** Names the newest task; what becomes of an older one is dropped. */
  #task = 0;

  constructor(start: () => PlanHand) {
    this.#start = start;
  }

  /**
   * Gives up what is under way and does this instead.
   *
   * @param task is also told whether it is still wanted, for what it says on the way
   * @returns undefined when it was given up for something newer
   */
  async do<T>(task: (work: Remote<PlanWork>, isWanted: () => boolean) => Promise<T>): Promise<T | undefined> {
    this.giveUp();
    const mine = this.#task;
    // What is said on the way comes by another port than the answer, and may come after it.
    const isWanted = (): boolean => this.#busy && mine === this.#task;
    this.#hand ??= this.#start();
    this.#busy = true;
    const answer = await task(this.#hand.work, isWanted);
    if (!isWanted()) return undefined;
    this.#busy = false;
    return answer;
  }

  giveUp(): void {
    this.#task += 1;
    if (this.#busy) this.close();
  }

  close(): void {
    this.#task += 1;
    this.#hand?.end();
    this.#hand = null;
    this.#busy = false;
  }
}
