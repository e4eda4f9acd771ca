import { expect, test } from 'vitest';
import { newJob } from '../../../core/edits/index.ts';
import { checkRow } from '../../../core/yardFile/checkRow.ts';

const SAID = { id: 'j', name: 'May', productId: 'p', applicatorId: 'a' };

test('a new job treats every zone once, is whole, and asks for nothing that was not said', () => {
  const job = newJob(SAID);
  expect(checkRow('jobs', job)).toBeNull();
  expect(job.zoneIds).toBeNull();
  expect(job.rounds).toBe(1);
  expect([job.hose, job.startAt, job.finishAt]).toEqual([null, null, null]);
});

test('what is said stands', () => {
  expect(newJob({ ...SAID, policy: 'fewest', rounds: 2 })).toEqual({
    ...newJob(SAID),
    policy: 'fewest',
    rounds: 2,
  });
});
