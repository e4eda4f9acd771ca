import { expect, test } from 'vitest';
import { makeEdit, applyEdit, putRow } from '../../../core/edits/index.ts';
import { planJob } from '../../../core/plan/index.ts';
import type { Yard } from '../../../core/yard.ts';
import { planInputsOf, sameInputs } from '../../../renderer/planning/planInputs.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { SMALL_SQUARE } from '../../support/handMadeYards.ts';

const made = handMadePlan(SMALL_SQUARE);
const job = {
  ...made.yard.jobs[0],
  hose: { lengthM: 30, spigotIds: null, clearanceM: 0.1 },
} as Yard['jobs'][number];
const spigot = { id: 'tap', kind: 'spigot', name: 'tap', at: { xM: 0, yM: 0 } } as const;
const yard: Yard = { ...made.yard, jobs: [job], marks: [spigot] };

/** The parts of the yard, and the figures of its details, that `read` looks at. */
function partsReadBy(read: (yard: Yard) => unknown): ReadonlySet<string> {
  const seen = new Set<string>();
  const watch = <T extends object>(whole: T, prefix: string): T =>
    new Proxy(whole, {
      get: (from, name) => {
        const value: unknown = Reflect.get(from, name);
        if (prefix === '' && name === 'details') return watch(value as object, 'details.');
        seen.add(`${prefix}${String(name)}`);
        return value;
      },
    });
  read(watch(yard, ''));
  return seen;
}

test('a plan is made from nothing but its inputs', () => {
  const byPlan = partsReadBy((watched) => {
    const plan = planJob(watched, job.id);
    if (!plan.ok) throw new Error(plan.problems[0].kind);
  });
  const byInputs = partsReadBy((watched) => planInputsOf(watched, job.id));
  expect(byPlan).toContain('outlines'); // so that the watch is seen to work
  expect([...byPlan].filter((part) => !byInputs.has(part))).toEqual([]); // every part read is one that is compared
});

test.each<[string, Yard, boolean]>([
  ['another name of the yard', { ...yard, details: { ...yard.details, name: 'New' } }, true],
  [
    'a taped check',
    { ...yard, checks: [{ id: 'c', name: 'c', from: spigot.at, to: spigot.at, tapedM: 1 }] },
    true,
  ],
  [
    'a spigot moved',
    applyEdit(yard, makeEdit('', putRow(yard, 'marks', { ...spigot, at: { xM: 1, yM: 0 } }))),
    false,
  ],
  ['a job changed', applyEdit(yard, makeEdit('', putRow(yard, 'jobs', { ...job, rounds: 2 }))), false],
  [
    'feet for metres',
    { ...yard, details: { ...yard.details, unitSystem: yard.details.unitSystem === 'us' ? 'metric' : 'us' } },
    false,
  ],
])('%s: the plan stands = %s', (_, changed, stands) => {
  const same = sameInputs(planInputsOf(yard, job.id), planInputsOf(changed, job.id));
  expect(same).toBe(stands); // a plan has no names and checks in it; it has spigots, the job, and cuts on tape marks
});

test('nothing wanted before is never the same', () => {
  expect(sameInputs(null, planInputsOf(yard, job.id))).toBe(false); // the first plan has to be made
});
