import { describe, expect, test } from 'vitest';
import type { Cut } from '../../../core/sections/index.ts';
import { wholeCuts } from '../../../core/sections/wholeCuts.ts';
import { rect, region } from '../../support/builders.ts';

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
const bedded = region(rect(0, 0, 10, 6), rect(2, 2, 2, 2));
const whole = (...cuts: Cut[]) =>
  wholeCuts({ cuts, treatedOf: () => [bedded] }).map(({ from, to, runs }) => [
    [from.xM, from.yM, to.xM, to.yM],
    runs,
  ]);

describe('cuts as a hand takes hold of them', () => {
  test('go over a bed in one line', () => {
    expect(whole(cut([3, 0], [3, 2]), cut([3, 4], [3, 6]))).toEqual([
      [
        [3, 0, 3, 6],
        [0, 1],
      ],
    ]);
    expect(whole(cut([3, 4], [3, 6]), cut([3, 0], [3, 2]))).toEqual([
      [
        [3, 0, 3, 6],
        [0, 1],
      ],
    ]);
  });

  test('go over a bed in one line where each run was moved to a tape mark by itself', () => {
    expect(whole(cut([3, 0], [3, 2]), cut([3.1, 4], [3.1, 6]))).toEqual([
      [
        [3, 0, 3.1, 6],
        [0, 1],
      ],
    ]); // one mark apart
  });

  test('are two where ground lies between them, or another cut, or they are not in line', () => {
    expect(whole(cut([6, 0], [6, 2]), cut([6, 4], [6, 6]))).toHaveLength(2);
    expect(whole(cut([6, 0], [6, 3]), cut([6, 3], [6, 6]))).toHaveLength(2);
    expect(whole(cut([3, 0], [3, 2]), cut([4, 4], [4, 6]))).toHaveLength(2);
  });

  test('held by the person are one by their id', () => {
    expect(whole(cut([3, 0], [3, 2], 'a'), cut([3, 4], [3, 6], 'a'), cut([7, 0], [7, 6], 'b'))).toEqual([
      [
        [3, 0, 3, 6],
        [0, 1],
      ],
      [[7, 0, 7, 6], [2]],
    ]);
  });
});
