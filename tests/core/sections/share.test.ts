import { describe, expect, test } from 'vitest';
import { loadCount, type Rest, roomM2, shareAfterSnap } from '../../../core/sections/share.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const head: Rest = { end: 'head', areaM2: 30, mostM2: 30 };
const tail: Rest = { end: 'tail', areaM2: 20, mostM2: 100 };

test('every smaller section counts', () => {
  expect(loadCount({ loads: 2, rests: [head, tail] })).toBe(4); // 2 + 2
  expect(roomM2({ loads: 2, rests: [head, tail] }, 100)).toBe(330); // 2 x 100 + 30 + 100 m²
});

describe('after a cut was moved to marks', () => {
  const areasOf = (widthM: number, rests: readonly Rest[]): (readonly [string, number])[] =>
    shareAfterSnap(region(rect(0, 0, widthM, 10)), { loads: 1, rests }, 100).rests.map(
      ({ end, areaM2 }) => [end, areaM2] as const,
    );

  test('the tail takes up what is over or short', () => {
    expect(areasOf(15.5, [head, tail])).toEqual([
      ['head', 30], // the load before is filled to the brim
      ['tail', 25], // 155 m² - 100 - 30
    ]);
    expect(areasOf(12.5, [tail])).toEqual([['tail', 25]]); // 125 m² - 100
  });

  test('the head gives way once the tail is used up, and the tail is then gone', () => {
    expect(areasOf(12.5, [head, tail])).toEqual([['head', 25]]); // 125 m² - 100: nothing left for a tail
  });

  test('full loads alone share alike what they have', () => {
    const { loads, rests } = shareAfterSnap(region(rect(0, 0, 19, 10)), { loads: 2, rests: [] }, 100);
    expect({ loads, rests }).toEqual({ loads: 2, rests: [] }); // 190 m² in two, within 100 m² each
  });

  test('a section alone keeps its name', () => {
    const [only] = shareAfterSnap(region(rect(0, 0, 3, 10)), { loads: 0, rests: [tail] }, 100).rests;
    expectNear(only?.areaM2 ?? Number.NaN, 20, 0, 'm²'); // as it was meant: nothing is left to cut
  });
});
