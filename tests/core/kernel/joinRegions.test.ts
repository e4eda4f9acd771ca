import { describe, expect, test } from 'vitest';
import { gridAreaM2 } from '../../../core/kernel/clipper.ts';
import { intersectRegions, regionsAreaM2, subtractRegions } from '../../../core/kernel/index.ts';
import { joinRegions } from '../../../core/kernel/joinRegions.ts';
import { overlayBySecondKernel } from '../../../core/kernel/secondKernel.ts';
import nearCorners from '../../fixtures/kernel/union-of-near-corners-2026-11-25.json' with { type: 'json' };
import wrongFrame from '../../fixtures/kernel/union-wrong-frame-2026-11-25.json' with { type: 'json' };
import spotInHole from '../../fixtures/kernel/union-spot-in-hole-2026-11-25.json' with { type: 'json' };
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

describe('regions joined', () => {
  test('count shared ground once', () => {
    const joined = joinRegions([region(rect(0, 0, 10, 10)), region(rect(5, 5, 10, 10))]);
    expectNear(gridAreaM2(joined), 175, 1e-9, 'm²'); // 100 + 100 - 25
    expect(joined.length).toBe(1);
  });

  test('stay as they are when apart, and when there are none', () => {
    const joined = joinRegions([region(rect(0, 0, 2, 2)), region(rect(5, 5, 3, 3), rect(6, 6, 1, 1))]);
    expectNear(gridAreaM2(joined), 4 + 9 - 1, 1e-9, 'm²'); // by hand
    expect(joinRegions([])).toEqual([]);
  });

  test('are right where the first library is wrong, at several sizes and places', () => {
    const rings = [nearCorners.zone, ...nearCorners.beds];
    for (const [k, offsetM] of [
      [1, 0],
      [1, 500],
      [10, 0],
      [0.5, -3],
      [30, 2000],
    ] as const) {
      const regions = rings.map((ring) =>
        region(ring.map(({ xM, yM }) => ({ xM: k * xM + offsetM, yM: k * yM - offsetM }))),
      );
      // polyclip-ts 0.16.8; and on its own, the first region and what the others add to it.
      const theirs = regionsAreaM2(overlayBySecondKernel('union', regions, []));
      const [lawn, ...beds] = regions;
      const added = lawn ? regionsAreaM2([lawn]) + regionsAreaM2(subtractRegions(beds, [lawn])) : Number.NaN;
      expectNear(gridAreaM2(joinRegions(regions)), theirs, 1e-6 * theirs, 'm²');
      expectNear(gridAreaM2(joinRegions(regions)), added, 1e-6 * theirs, 'm²');
    }
  });

  test('are right where the first library is wrong about what they leave', () => {
    const regions = wrongFrame.beds.map((ring) => region(ring));
    const theirs = regionsAreaM2(overlayBySecondKernel('union', regions, [])); // polyclip-ts 0.16.8
    expectNear(gridAreaM2(joinRegions(regions)), theirs, 1e-6 * theirs, 'm²');
  });

  test('gain no ground that was in none of them, though what a frame leaves says so too', () => {
    const { regions } = spotInHole;
    // They share no ground (their intersection is empty), so together they weigh what they weigh apart.
    expectNear(regionsAreaM2(intersectRegions(regions.slice(0, 1), regions.slice(1))), 0, 1e-9, 'm²');
    const apartM2 = regionsAreaM2(regions);
    expectNear(gridAreaM2(joinRegions(regions)), apartM2, 1e-6 * apartM2, 'm²');
  });
});
