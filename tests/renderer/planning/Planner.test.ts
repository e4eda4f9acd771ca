import type { Remote } from 'comlink';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { JobPlan } from '../../../core/plan/index.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import type { Yard } from '../../../core/yard.ts';
import { Planner } from '../../../renderer/planning/Planner.ts';
import type { PlanWork } from '../../../renderer/planning/planWorker.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { SMALL_SQUARE } from '../../support/handMadeYards.ts';

const { yard, plan } = handMadePlan(SMALL_SQUARE);
const jobId = yard.jobs[0]?.id ?? '';
const better: JobPlan = { ...plan };

/** One plan under way: what a worker would send, sent by hand. */
interface Asked {
  readonly yard: Yard;
  readonly onProgress: (fraction: number) => void;
  readonly onBetter: (plan: JobPlan) => void;
  readonly answer: (answer: Result<JobPlan>) => Promise<void>;
}

class Hands {
  readonly asked: Asked[] = [];
  started = 0;
  ended = 0;

  readonly start = () => {
    this.started += 1;
    const work = {
      plan: (of: Yard, _: string, onProgress: Asked['onProgress'], onBetter: Asked['onBetter']) =>
        new Promise<Result<JobPlan>>((resolve) => {
          const answer = async (result: Result<JobPlan>): Promise<void> => {
            resolve(result);
            await vi.advanceTimersByTimeAsync(0);
          };
          this.asked.push({ yard: of, onProgress, onBetter, answer });
        }),
    };
    const end = (): void => {
      this.ended += 1;
    };
    return { work: work as unknown as Remote<PlanWork>, end };
  };

  get last(): Asked {
    const last = this.asked.at(-1);
    if (last === undefined) throw new Error('no plan was asked for');
    return last;
  }
}

let hands = new Hands();
let planner = new Planner(hands.start);
const changed = (): Yard => ({ ...yard, outlines: [...yard.outlines] });
/** Longer than any pause the planner waits for. */
const LONG_MS = 1000;

beforeEach(() => {
  vi.useFakeTimers();
  hands = new Hands();
  planner = new Planner(hands.start);
});
afterEach(() => {
  planner.close();
  vi.useRealTimers();
});

async function planned(): Promise<void> {
  planner.want(yard, jobId);
  await vi.advanceTimersByTimeAsync(LONG_MS);
  await hands.last.answer(ok(plan));
}

describe('the plan in hand', () => {
  test('is worked out once the edits have come to rest, and stands until the next change', async () => {
    planner.want(yard, jobId);
    expect(hands.asked).toHaveLength(0); // edits come in bursts
    planner.want(changed(), jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(hands.asked).toHaveLength(1); // two changes in a burst, one plan
    hands.last.onProgress(0.5);
    expect(planner.snapshot()).toMatchObject({ plan: null, progress: 0.5 });
    await hands.last.answer(ok(plan));
    expect(planner.snapshot()).toEqual({ plan, problems: [], stale: false, isFirst: false, progress: null });
  });

  test('is marked as old from the moment the ground changes', async () => {
    await planned();
    planner.want(changed(), jobId);
    expect(planner.snapshot()).toMatchObject({ plan, stale: true, progress: 0 });
  });

  test('stays as it is when nothing that matters has changed', async () => {
    await planned();
    planner.want({ ...yard, checks: [] }, jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(hands.asked).toHaveLength(1);
    expect(planner.snapshot().stale).toBe(false);
  });

  test('gives way to what is wrong, and comes back when it is mended', async () => {
    await planned();
    planner.want(changed(), jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    await hands.last.answer(trouble({ kind: 'plan/nothing-to-treat', where: { thing: 'lawn' }, facts: {} }));
    expect(planner.snapshot()).toMatchObject({
      plan: null,
      stale: false,
      problems: [{ kind: 'plan/nothing-to-treat' }],
    });
    await planned();
    expect(planner.snapshot()).toMatchObject({ plan, problems: [] });
  });

  test('is gone with the yard', async () => {
    await planned();
    planner.want(null, null);
    expect(planner.snapshot()).toEqual({
      plan: null,
      problems: [],
      stale: false,
      isFirst: false,
      progress: null,
    });
  });
});

describe('a first plan', () => {
  test('is shown as first until a better one ends the search', async () => {
    planner.want(yard, jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    hands.last.onBetter(plan);
    expect(planner.snapshot()).toMatchObject({ plan, stale: false, isFirst: true });
    await hands.last.answer(ok(better));
    expect(planner.snapshot().plan).toBe(better);
    expect(planner.snapshot()).toMatchObject({ isFirst: false, progress: null });
  });

  test('that is heard of only after the last one changes nothing any more', async () => {
    await planned();
    hands.last.onBetter(better);
    hands.last.onProgress(1);
    expect(planner.snapshot()).toEqual({ plan, problems: [], stale: false, isFirst: false, progress: null }); // as answered
  });

  test('of ground that has changed meanwhile is never shown', async () => {
    await planned();
    planner.want(changed(), jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    const old = hands.last;
    planner.want(changed(), jobId);
    old.onBetter(better);
    old.onProgress(0.9);
    await old.answer(ok(better));
    expect(planner.snapshot().plan).toBe(plan); // the last that was finished
    expect(planner.snapshot()).toMatchObject({ stale: true, progress: 0 });
  });
});

describe('work under way', () => {
  test('is ended with its worker by a newer yard, and an idle worker is kept', async () => {
    await planned();
    planner.want(changed(), jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect([hands.started, hands.ended]).toEqual([1, 0]); // the first was idle
    planner.want(changed(), jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect([hands.started, hands.ended]).toEqual([2, 1]); // the second plan was not finished
  });

  test('waits for the hand to pause while it drags', async () => {
    for (let move = 0; move < 10; move++) {
      planner.want(changed(), jobId, true);
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(hands.asked).toHaveLength(0); // a move every 100 ms is no pause
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(hands.asked).toHaveLength(1);
  });

  test('is stopped on request, keeping what is shown, and taken up again', async () => {
    await planned();
    planner.want(changed(), jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    planner.stop();
    expect(hands.ended).toBe(1);
    expect(planner.snapshot()).toMatchObject({ plan, stale: true, progress: null });
    planner.goOn();
    expect(planner.snapshot().progress).toBe(0);
    await hands.last.answer(ok(better));
    expect(planner.snapshot()).toMatchObject({ plan: better, stale: false });
  });
});
