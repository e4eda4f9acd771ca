import { expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { findChords } from '../../../core/sections/chords.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { partingRuns } from '../../../core/sections/partingRuns.ts';
import { areaBelowRunM2 } from '../../../core/sections/runArea.ts';
import { splitRegion } from '../../../core/sections/splitRegion.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { HARD_GROUND } from '../../support/hardGround.ts';
import { seededRandom } from '../../support/randomYards.ts';

const UP = { x: 0, y: 1 };

test('a run past a hole leaves the hole on its side', () => {
  const facing = faceAlong(cornersOf(region(rect(0, 0, 10, 10), rect(4, 2, 2, 2))), UP);
  expectNear(areaBelowRunM2(facing, 6, findChords(facing, 6) ?? []) ?? Number.NaN, 56, 1e-9, 'm²'); // 10 x 6 - 2 x 2
});

test('a run within a hole closes off a pocket of ground', () => {
  // A hole like a U that is 8 wide, with a prong of ground 2 wide and 5 deep between its arms.
  const hole = points([1, 1], [9, 1], [9, 8], [6, 8], [6, 3], [4, 3], [4, 8], [1, 8]);
  const facing = faceAlong(cornersOf(region(rect(0, 0, 10, 10), hole)), UP);
  const chords = findChords(facing, 5) ?? [];
  expectNear(areaBelowRunM2(facing, 5, chords.slice(1, 2)) ?? Number.NaN, 4, 1e-9, 'm²'); // 2 wide from 3 to 5
});

test.each(HARD_GROUND)('on $name every run leaves below it what a split does', ({ make }) => {
  const ground = make(seededRandom(5));
  const corners = cornersOf(ground);
  let runs = 0;
  for (const turn of [0.1, 0.9, 2.2]) {
    const facing = faceAlong(corners, { x: Math.cos(turn), y: Math.sin(turn) });
    const { levelsM } = facing;
    for (let place = 0; place + 1 < levelsM.length; place += Math.ceil(levelsM.length / 12)) {
      const levelM = ((levelsM[place] as number) + (levelsM[place + 1] as number)) / 2;
      for (const run of partingRuns(findChords(facing, levelM) ?? [], Infinity)) {
        const areaM2 = areaBelowRunM2(facing, levelM, run);
        const halves = splitRegion(facing, run);
        expect(areaM2 === undefined).toBe(halves === undefined);
        if (halves === undefined) continue;
        runs++;
        expectNear(areaM2 ?? Number.NaN, regionAreaM2(halves.below), 1e-9 * regionAreaM2(ground), 'm²');
      }
    }
  }
  expect(runs).toBeGreaterThan(20); // 3 directions, some 12 levels each
});
