import { describe, expect, test } from 'vitest';
import { newJob } from '../../../core/edits/index.ts';
import type { Cut, CutLine, Section } from '../../../core/sections/index.ts';
import { joinSections } from '../../../core/sections/joinSections.ts';
import type { Job } from '../../../core/yard.ts';
import { rect, region } from '../../support/builders.ts';

const JOB = newJob({ id: 'job', name: 'Feed', productId: 'p', applicatorId: 'a' });
const section = (id: string, xM: number, yM: number, widthM: number, heightM: number): Section => ({
  id,
  zoneId: 'lawn',
  zoneName: 'Lawn',
  region: region(rect(xM, yM, widthM, heightM)),
  areaM2: widthM * heightM,
});
const ends = (a: readonly [number, number], b: readonly [number, number]) => ({
  from: { xM: a[0], yM: a[1] },
  to: { xM: b[0], yM: b[1] },
});
const ids = (): (() => string) => {
  let made = 0;
  return () => {
    made += 1;
    return `new ${made}`;
  };
};

/**
 * A lawn of 10 × 6: a bar at 4 m north, under it two stems at 3 and 6 m east.
 *
 *     |   A4           |
 *     |----------------|
 *     | A1 | A2 |  A3  |
 */
const sections = [
  section('A1', 0, 0, 3, 4),
  section('A2', 3, 0, 3, 4),
  section('A3', 6, 0, 4, 4),
  section('A4', 0, 4, 10, 2),
];
const cuts: Cut[] = [
  { zoneId: 'lawn', ...ends([0, 4], [10, 4]), heldId: null },
  { zoneId: 'lawn', ...ends([3, 0], [3, 4]), heldId: null },
  { zoneId: 'lawn', ...ends([6, 0], [6, 4]), heldId: null },
];
const cutLines: CutLine[] = [
  { ...ends([0, 4], [3, 4]), between: ['A4', 'A1'], cut: 0 },
  { ...ends([3, 4], [6, 4]), between: ['A4', 'A2'], cut: 0 },
  { ...ends([6, 4], [10, 4]), between: ['A4', 'A3'], cut: 0 },
  { ...ends([3, 0], [3, 4]), between: ['A1', 'A2'], cut: 1 },
  { ...ends([6, 0], [6, 4]), between: ['A2', 'A3'], cut: 2 },
];
const loads = (loadAreaM2: number) => ({
  sections,
  cuts,
  cutLines,
  treatedOf: () => [region(rect(0, 0, 10, 6))],
  loadAreaM2Of: () => loadAreaM2,
});

function heldOf(job: Job) {
  return job.heldCuts.map(({ from, to }) => [from.xM, from.yM, to.xM, to.yM]);
}

describe('two sections joined', () => {
  test('hold every other cut line that borders them, and none between', () => {
    const joined = joinSections(JOB, ['A1', 'A2'], loads(24), ids());
    // The bar over both in one piece, and the stem on their right; the stem between them is the plan’s no longer held.
    expect(joined.ok && heldOf(joined.value)).toEqual([
      [0, 4, 6, 4],
      [6, 0, 6, 4],
    ]);
  });

  test('of a held cut keep its parts that do not lie between them', () => {
    // A1 and A2 over the whole height: the bar is held and parts them from nothing but each other’s neighbours.
    const held = cuts.map((cut, i) => (i === 1 ? { ...cut, heldId: 'stem' } : cut));
    const job = { ...JOB, heldCuts: [{ id: 'stem', zoneId: 'lawn', ...ends([3, 0], [3, 4]) }] };
    const joined = joinSections(job, ['A1', 'A2'], { ...loads(24), cuts: held }, ids());
    expect(joined.ok && heldOf(joined.value)).toEqual([
      [0, 4, 6, 4],
      [6, 0, 6, 4],
    ]);
    expect(joined.ok && joined.value.heldCuts.some(({ id }) => id === 'stem')).toBe(false);
  });

  test('must be one piece between straight cuts from edge to edge', () => {
    // A2 with the strip over all three: the stems beside A2 would run on through the strip.
    const joined = joinSections(JOB, ['A4', 'A2'], loads(32), ids());
    expect(!joined.ok && joined.problems[0].kind).toBe('plan/join-not-straight');
  });

  test('leave a held cut that borders them as the person’s own', () => {
    const held = cuts.map((cut, i) => (i === 0 ? { ...cut, heldId: 'bar' } : cut));
    const job = { ...JOB, heldCuts: [{ id: 'bar', zoneId: 'lawn', ...ends([0, 4], [10, 4]) }] };
    const joined = joinSections(job, ['A1', 'A2'], { ...loads(24), cuts: held }, ids());
    expect(joined.ok && joined.value.heldCuts.map(({ id }) => id)).toEqual(['bar', 'new 1']);
    expect(joined.ok && heldOf(joined.value)).toEqual([
      [0, 4, 10, 4],
      [6, 0, 6, 4],
    ]);
  });

  test('must fit one load together', () => {
    // 12 + 12 m² by hand
    expect(joinSections(JOB, ['A1', 'A2'], loads(23.9), ids())).toEqual({
      ok: false,
      problems: [
        {
          kind: 'plan/join-over-load',
          where: { thing: 'A1 and A2' },
          facts: { togetherM2: 24, loadAreaM2: 23.9 },
        },
      ],
    });
  });

  test('must border each other', () => {
    const apart = joinSections(JOB, ['A1', 'A3'], loads(100), ids());
    expect(!apart.ok && apart.problems[0].kind).toBe('plan/sections-apart');
    const unknown = joinSections(JOB, ['A1', 'B7'], loads(100), ids());
    expect(!unknown.ok && unknown.problems[0].kind).toBe('plan/sections-apart');
  });
});
