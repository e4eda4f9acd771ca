import { describe, expect, test } from 'vitest';
import { setAsideCommon } from '../../../core/compare/setAsideCommon.ts';
import { groundChange } from '../../../core/compare/groundChange.ts';
import { intersectRegions, regionsAreaM2, subtractRegions } from '../../../core/kernel/index.ts';
import type { Region, Ring } from '../../../core/spaces.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, pick, seededRandom } from '../../support/randomYards.ts';

const turned = (ring: Ring, by: number): Ring => [...ring.slice(by), ...ring.slice(0, by)];

test('a region that is the same in both, whichever corner it starts at, needs no overlay', () => {
  const lawn = region(rect(0, 0, 20, 10), rect(2, 2, 3, 3));
  const again = { outer: turned(lawn.outer, 2), holes: lawn.holes.map((hole) => turned(hole, 1)) };
  expect(setAsideCommon([lawn], [again])).toEqual({ before: [], after: [], commonM2: 191 }); // 200 - 9
});

test('holes that are in both are filled and come off what is common', () => {
  const [stays, goes, comes] = [rect(2, 2, 3, 3), rect(8, 2, 2, 2), rect(12, 2, 1, 1)];
  const outer = rect(0, 0, 20, 10);
  // The eastern edge moved, so that the regions stay regions.
  const wider = rect(0, 0, 21, 10);
  const differing = setAsideCommon([region(outer, stays, goes)], [region(wider, stays, comes)]);
  expect([differing.before[0]?.holes.length, differing.after[0]?.holes.length]).toEqual([1, 1]); // each state's own
  expect(differing.commonM2).toBe(-9); // 3 * 3
  const change = groundChange([region(outer, stays, goes)], [region(outer, stays, comes)]);
  expectNear(change.lostM2, 1, 1e-4, 'm²'); // the hole that came: 1 * 1
  expectNear(change.gainedM2, 4, 1e-4, 'm²'); // the one that went: 2 * 2
  expectNear(change.unchangedM2, 186, 1e-4, 'm²'); // 200 - 9 - 4 - 1
});

test('where the edge is the same, the holes of one state stand for the ground of the other', () => {
  const outer = rect(0, 0, 20, 10);
  const [goes, comes] = [rect(8, 2, 2, 2), rect(9, 2, 3, 1)];
  const { before, after, commonM2 } = setAsideCommon([region(outer, goes)], [region(outer, comes)]);
  expect([before, after].map(regionsAreaM2)).toEqual([3, 4]); // 3 * 1 that came, 2 * 2 that went
  expect(commonM2).toBe(193); // 200 - 4 - 3; the one metre under both holes is added by their overlay
  const change = groundChange([region(outer, goes)], [region(outer, comes)]);
  expectNear(change.lostM2, 2, 1e-4, 'm²'); // 3 - 1 * 1 under both
  expectNear(change.gainedM2, 3, 1e-4, 'm²'); // 4 - 1 * 1 under both
  expectNear(change.unchangedM2, 194, 1e-4, 'm²'); // 200 - (4 + 3 - 1)
});

test('a hole with ground in it is kept, so that the ground is seen to come and go', () => {
  const ring = region(rect(0, 0, 20, 20), rect(5, 5, 10, 10));
  const other = region(rect(0, 0, 21, 20), rect(5, 5, 10, 10));
  const island = region(rect(8, 8, 2, 2));
  expect(setAsideCommon([ring, island], [other]).before[0]?.holes).toHaveLength(1); // not filled
  const change = groundChange([ring, island], [other]);
  expectNear(change.lostM2, 4, 1e-4, 'm²'); // the island, 2 * 2
  expectNear(change.gainedM2, 20, 1e-4, 'm²'); // a metre along the eastern edge
});

describe('on random ground', () => {
  /** A lawn with holes on a lattice, some with islands in them: clean by how it is made. */
  function lattice(random: () => number): Region[] {
    const outer = rect(0, 0, 40 + Math.floor(random() * 3), 40);
    const regions: Region[] = [];
    const holes: Ring[] = [];
    for (let i = 0; i < 5; i++) {
      for (let j = 0; j < 5; j++) {
        const sizeM = pick(random, [0, 0, 4, 4, 5]);
        if (sizeM === 0) continue;
        holes.push(rect(1 + 8 * i, 1 + 8 * j, sizeM, 5));
        if (random() < 0.4) regions.push(region(rect(2 + 8 * i, 2 + 8 * j, pick(random, [1, 2]), 2)));
      }
    }
    const apart = region(rect(60, 0, between(random, 5, 5.001), 5));
    return [region(outer, ...holes), ...regions, random() < 0.5 ? apart : region(rect(60, 0, 5, 5))];
  }

  test('the answers are those of plain overlays', () => {
    for (let seed = 1; seed <= 80; seed++) {
      const random = seededRandom(seed);
      const [before, after] = [lattice(random), lattice(random)];
      const change = groundChange(before, after);
      const plainM2 = {
        lost: regionsAreaM2(subtractRegions(before, after)),
        gained: regionsAreaM2(subtractRegions(after, before)),
        unchanged: regionsAreaM2(intersectRegions(before, after)),
      };
      // Perimeters of some 700 m in all, times the grid.
      expectNear(change.lostM2, plainM2.lost, 2e-3, `m² (seed ${seed})`);
      expectNear(change.gainedM2, plainM2.gained, 2e-3, `m² (seed ${seed})`);
      expectNear(change.unchangedM2, plainM2.unchanged, 2e-3, `m² (seed ${seed})`);
    }
  });
});
