import { describe, expect, test } from 'vitest';
import type { GroundPlan } from '../../../core/plan/index.ts';
import { newJob } from '../../../core/edits/index.ts';
import {
  bearingsInShort,
  bearingsOfOtherJobs,
  bearingWords,
  firstLaneDeg,
  headingFor,
  LANE_CHOICES,
  laneChoiceOf,
  laneDeg,
} from '../../../renderer/walk/laneChoice.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS } from '../../support/handMadeYards.ts';

const { yard, plan } = handMadePlan(NINE_SECTIONS);

function withHeadings(...headings: readonly number[]): GroundPlan {
  const [row] = plan.ground.sectionFigures;
  if (row === undefined) throw new Error('no section');
  const sectionFigures = headings.map((headingDeg, i) => ({
    ...row,
    sectionId: `A${i + 1}`,
    headingDeg,
    passes: 1,
  }));
  return { ...plan.ground, sectionFigures };
}

describe('how the lanes run', () => {
  test.each(LANE_CHOICES)('%s is read back from the heading it makes', (choice) => {
    expect(laneChoiceOf(headingFor(choice, 10, 20))).toBe(choice); // what is chosen stands chosen
  });

  test('begins from what is known', () => {
    expect(headingFor('picked', 33, null)).toEqual({ kind: 'picked', deg: 33 }); // as they run now
    expect(headingFor('turned-45', 33, 80)).toEqual({ kind: 'turned', lastDeg: 80, byDeg: 45 }); // last time's goes first
    expect(headingFor('turned-90', 33, null)).toEqual({ kind: 'turned', lastDeg: 33, byDeg: 90 }); // as now, for want of it
  });

  test('of another job is offered where its bearing is known, the newest first', () => {
    const job = (id: string, part: Parameters<typeof newJob>[0] | object) =>
      newJob({ id, name: id, productId: 'p', applicatorId: 'a', ...part });
    const now = job('now', {});
    const jobs = [
      job('spring', { heading: { kind: 'picked', deg: 10 } }),
      job('free', {}),
      job('summer', { heading: { kind: 'turned', lastDeg: 300, byDeg: 90 } }),
      now,
    ];
    expect(bearingsOfOtherJobs({ ...yard, jobs }, now)).toEqual([
      { name: 'summer', deg: 30 }, // 300 + 90 - 360
      { name: 'spring', deg: 10 },
    ]);
  });
});

describe('the bearing shown', () => {
  test.each([
    [90.4, 90],
    [270, 90], // walked the other way
    [179.6, 0], // rounded up to 180, which is 0
  ])('%f is %i as lanes are walked both ways', (deg, shown) => {
    expect(laneDeg(deg)).toBe(shown);
  });

  test('is one where all sections have it, and told by section where they differ', () => {
    expect(bearingsInShort(withHeadings(90, 270))).toBe('90°'); // one line, two ways
    expect(bearingsInShort(withHeadings(90, 45, 90))).toBe('2 bearings');
    expect(bearingsInShort(withHeadings())).toBe('none fits'); // no section, so no lane
    expect(bearingWords(withHeadings(90, 45, 90))).toBe('90° in A1 and A3, 45° in A2');
  });

  test('of a plan without a pass is none', () => {
    const none = { ...plan.ground, sectionFigures: [] };
    expect(bearingWords(none)).toBe('');
    expect(firstLaneDeg(none)).toBeNull();
    expect(firstLaneDeg(null)).toBeNull();
  });
});
