import { describe, expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { cutBed, cutUnder } from '../../../core/sections/cutBed.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const line = (a: readonly [number, number], b: readonly [number, number]) => ({
  from: { xM: a[0], yM: a[1] },
  to: { xM: b[0], yM: b[1] },
});

describe('the ground a cut parts', () => {
  const lawn = region(rect(0, 0, 10, 6));
  const bar = line([0, 4], [10, 4]);
  const stem = line([3, 0], [3, 4]);
  const twig = line([3, 2], [10, 2]);
  const cuts = [bar, stem, twig];
  const bedM2 = (cut: (typeof cuts)[number], ground = lawn): number => {
    const bed = cutBed(
      [ground],
      cut,
      cuts.filter((other) => other !== cut),
    );
    return bed ? regionAreaM2(bed) : Number.NaN;
  };

  test('is the whole lawn for a cut from edge to edge', () => {
    expectNear(bedM2(bar), 60, 1e-9, 'm²'); // 10 × 6 by hand
  });

  test('is what the cut it rests on leaves on its side', () => {
    expectNear(bedM2(stem), 40, 1e-9, 'm²'); // 10 × 4 by hand
  });

  test('is found through a chain of cuts', () => {
    expectNear(bedM2(twig), 28, 1e-9, 'm²'); // 7 × 4 by hand
  });

  test('is the piece of the zone the cut lies on', () => {
    const other = region(rect(20, 0, 5, 5));
    const bed = cutBed([other, lawn], stem, [bar]);
    expectNear(bed ? regionAreaM2(bed) : Number.NaN, 40, 1e-9, 'm²'); // 10 × 4 by hand
    expect(cutBed([other], stem, [bar])).toBeUndefined();
  });

  test('keeps its side where the middle of the cut lies in a bed', () => {
    const bedded = region(rect(0, 0, 10, 6), rect(2, 1, 2, 2));
    expectNear(bedM2(stem, bedded), 36, 1e-9, 'm²'); // 10 × 4 − 2 × 2 by hand
  });
});

describe('what an end of a cut rests on', () => {
  const lawn = region(rect(0, 0, 10, 6));
  const bar = line([0, 4], [10, 4]);

  test('is the cut it stands on, and nothing on the edge of the ground', () => {
    expect(cutUnder([lawn], { xM: 3, yM: 4 }, [bar])).toBe(bar);
    expect(cutUnder([lawn], { xM: 0, yM: 4 }, [bar])).toBeUndefined();
    expect(cutUnder([lawn], { xM: 3, yM: 2 }, [bar])).toBeUndefined();
  });
});
