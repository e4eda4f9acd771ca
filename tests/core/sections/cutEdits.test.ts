import { describe, expect, test } from 'vitest';
import { newJob } from '../../../core/edits/index.ts';
import {
  addCut,
  holdCut,
  isSameLine,
  letAllCutsGo,
  letCutGo,
  moveCut,
} from '../../../core/sections/cutEdits.ts';
import type { Cut } from '../../../core/sections/index.ts';
import { rect, region } from '../../support/builders.ts';

const JOB = newJob({ id: 'job', name: 'Feed', productId: 'p', applicatorId: 'a' });
const cut = (
  a: readonly [number, number],
  b: readonly [number, number],
  heldId: string | null = null,
): Cut => ({
  zoneId: 'lawn',
  from: { xM: a[0], yM: a[1] },
  to: { xM: b[0], yM: b[1] },
  heldId,
});

/** Ids in turn: 'new 1', 'new 2'. */
function ids(): () => string {
  let made = 0;
  return () => {
    made += 1;
    return `new ${made}`;
  };
}

const bar = cut([0, 4], [10, 4]);
const stem = cut([3, 0], [3, 4]);
const planned = { cuts: [bar, stem], treatedOf: () => [region(rect(0, 0, 10, 6))] };

describe('a cut held where it is', () => {
  test('becomes a line of the job', () => {
    const job = holdCut(JOB, bar, planned, ids());
    expect(job.heldCuts).toEqual([{ id: 'new 1', zoneId: 'lawn', from: bar.from, to: bar.to }]);
  });

  test('is held with the cut it rests on, which would otherwise leave it in mid-ground', () => {
    const job = holdCut(JOB, stem, planned, ids());
    expect(job.heldCuts.map(({ from, to }) => [from, to])).toEqual([
      [bar.from, bar.to],
      [stem.from, stem.to],
    ]);
  });

  test('held once is held: again changes nothing', () => {
    const once = holdCut(JOB, stem, planned, ids());
    expect(holdCut(once, stem, planned, ids())).toBe(once);
    expect(holdCut(once, cut([10, 4], [0, 4]), planned, ids())).toBe(once);
  });
});

describe('a cut moved', () => {
  const to = { from: { xM: 4, yM: 0 }, to: { xM: 4, yM: 4 } };

  test('that was the plan’s is held at its new place, with what it rests on there', () => {
    const { job, id } = moveCut(JOB, stem, to, planned, ids());
    expect(id).toBe('new 2');
    expect(job.heldCuts).toEqual([
      { id: 'new 1', zoneId: 'lawn', from: bar.from, to: bar.to },
      { id: 'new 2', zoneId: 'lawn', ...to },
    ]);
  });

  test('that was held keeps its id and its place in the list', () => {
    const first = { id: 'mine', zoneId: 'lawn', from: bar.from, to: bar.to };
    const second = { id: 'other', zoneId: 'lawn', from: { xM: 0, yM: 5 }, to: { xM: 10, yM: 5 } };
    const held = { ...JOB, heldCuts: [first, second] };
    const line = { from: { xM: 0, yM: 3 }, to: { xM: 10, yM: 3 } };
    const { job, id } = moveCut(held, { ...bar, heldId: 'mine' }, line, planned, ids());
    expect(id).toBe('mine');
    expect(job.heldCuts).toEqual([{ ...first, ...line }, second]);
  });

  test('whose id the job no longer knows gets a new one', () => {
    const line = { from: { xM: 0, yM: 3 }, to: { xM: 10, yM: 3 } };
    const { job, id } = moveCut(JOB, { ...bar, heldId: 'gone' }, line, planned, ids());
    expect([id, job.heldCuts.length]).toEqual(['new 1', 1]);
  });
});

describe('cuts added and let go', () => {
  test('a line of the person’s own is held for its zone', () => {
    const job = addCut(JOB, 'lawn', { from: stem.from, to: stem.to }, 'mine');
    expect(job.heldCuts).toEqual([{ id: 'mine', zoneId: 'lawn', from: stem.from, to: stem.to }]);
  });

  test('one is let go, or all; letting go of nothing changes nothing', () => {
    const job = addCut(addCut(JOB, 'lawn', bar, 'one'), 'lawn', stem, 'two');
    expect(letCutGo(job, 'one').heldCuts.map(({ id }) => id)).toEqual(['two']);
    expect(letAllCutsGo(job).heldCuts).toEqual([]);
    expect(letCutGo(job, 'three')).toBe(job);
    expect(letAllCutsGo(JOB)).toBe(JOB);
  });

  test('two lines are the same whichever way they run', () => {
    expect(isSameLine(bar, { from: bar.to, to: bar.from })).toBe(true);
    expect(isSameLine(bar, stem)).toBe(false);
  });
});
