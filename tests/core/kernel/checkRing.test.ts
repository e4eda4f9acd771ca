import { describe, expect, test } from 'vitest';
import { checkRing } from '../../../core/kernel/index.ts';
import type { Ring } from '../../../core/spaces.ts';
import { moved, points, rect } from '../../support/builders.ts';

function problemOf(ring: Ring) {
  const checked = checkRing(ring, 'front', 'Front lawn');
  return checked.ok ? undefined : checked.problems[0];
}

describe('an outline can be ground when it is a simple ring', () => {
  test('either way round, and is handed back as it was', () => {
    const ring = rect(0, 0, 5, 4).reverse();
    expect(checkRing(ring, 'front', 'Front lawn')).toEqual({ ok: true, value: ring });
  });

  test('up to ten kilometres from the origin', () => {
    expect(problemOf(moved(rect(0, 0, 5, 4), 0, 9_990, -9_990))).toBeUndefined();
  });
});

describe('an outline that cannot be ground says why', () => {
  test.each([
    ['two corners', points([0, 0], [1, 1]), { kind: 'shape/too-few-points', facts: { points: 2 } }],
    [
      'two places',
      points([0, 0], [1, 1], [0, 0], [1, 1]),
      { kind: 'shape/too-few-points', facts: { points: 2 } },
    ],
    ['no corners', [], { kind: 'shape/too-few-points', facts: { points: 0 } }],
    ['a corner that is no number', points([0, 0], [1, Number.NaN], [1, 1]), { kind: 'shape/not-finite' }],
    ['a corner without end', points([0, 0], [Infinity, 0], [1, 1]), { kind: 'shape/not-finite' }],
    ['corners on one line', points([0, 0], [1, 1], [3, 3], [2, 2]), { kind: 'shape/zero-area' }],
    ['less than a square centimetre', rect(0, 0, 0.009, 0.009), { kind: 'shape/zero-area' }],
    ['map sheet coordinates', moved(rect(0, 0, 5, 4), 0, 500_000, 4_000_000), { kind: 'shape/too-large' }],
  ])('%s', (_name, ring, problem) => {
    expect(problemOf(ring)).toMatchObject({ ...problem, where: { outlineId: 'front', name: 'Front lawn' } });
  });

  test('how far across the yard would have to be', () => {
    const far = moved(rect(0, 0, 5, 4), 0, 14_995, 0);
    expect(problemOf(far)?.facts).toEqual({ extentM: 30_000 }); // 15,000 m to either side
  });

  test('a crossing edge, with the place of the crossing, even where its two halves cancel', () => {
    expect(problemOf(points([0, 0], [2, 2], [2, 0], [0, 2]))).toEqual({
      kind: 'shape/self-crossing',
      where: { outlineId: 'front', name: 'Front lawn', at: { xM: 1, yM: 1 } }, // diagonals of a square
      facts: { crossing: { xM: 1, yM: 1 } },
    });
  });
});
