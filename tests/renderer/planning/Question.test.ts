import type { Remote } from 'comlink';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { ok, type Result, trouble } from '../../../core/result.ts';
import type { Yard } from '../../../core/yard.ts';
import type { PlanWork } from '../../../renderer/planning/planWorker.ts';
import { Question } from '../../../renderer/planning/Question.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { SMALL_SQUARE } from '../../support/handMadeYards.ts';

const { yard } = handMadePlan(SMALL_SQUARE);
const jobId = yard.jobs[0]?.id ?? '';
const changed = (): Yard => ({ ...yard, outlines: [...yard.outlines] });
const LONG_MS = 1000;

let answers: ((answer: Result<string>) => void)[] = [];
let ended = 0;
let question: Question<string>;

beforeEach(() => {
  vi.useFakeTimers();
  answers = [];
  ended = 0;
  const end = (): void => {
    ended += 1;
  };
  question = new Question<string>(
    () => new Promise((resolve) => answers.push(resolve)),
    () => ({ work: {} as Remote<PlanWork>, end }),
  );
});
afterEach(() => {
  question.close();
  vi.useRealTimers();
});

async function answered(given: Result<string>): Promise<void> {
  await vi.advanceTimersByTimeAsync(LONG_MS);
  answers.at(-1)?.(given);
  await vi.advanceTimersByTimeAsync(0);
}

describe('what is asked beside the plan', () => {
  test('is asked once for the same yard', async () => {
    question.want(yard, jobId);
    await answered(ok('one'));
    question.want({ ...yard, checks: [] }, jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    expect(answers).toHaveLength(1); // a taped check is no input of a plan
    expect(question.snapshot()).toEqual({ value: 'one', problems: [], stale: false });
  });

  test('keeps its old answer, marked as old, until the new one is there', async () => {
    question.want(yard, jobId);
    await answered(ok('one'));
    question.want(changed(), jobId);
    expect(question.snapshot()).toMatchObject({ value: 'one', stale: true });
    await answered(ok('two'));
    expect(question.snapshot()).toMatchObject({ value: 'two', stale: false });
  });

  test('has no answer where there is trouble', async () => {
    question.want(yard, jobId);
    await answered(trouble({ kind: 'value/missing', where: { field: 'job' }, facts: {} }));
    expect(question.snapshot()).toMatchObject({ value: null, problems: [{ kind: 'value/missing' }] });
  });

  test('ends its worker when nobody looks, and begins anew when somebody does', async () => {
    question.want(yard, jobId);
    await vi.advanceTimersByTimeAsync(LONG_MS);
    question.close();
    expect(ended).toBe(1);
    question.want(yard, jobId);
    await answered(ok('again'));
    expect(answers).toHaveLength(2); // the first was given up
    expect(question.snapshot().value).toBe('again');
  });
});
