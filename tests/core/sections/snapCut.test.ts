import { describe, expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { findChords } from '../../../core/sections/chords.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { snapCut } from '../../../core/sections/snapCut.ts';
import { TapeSides } from '../../../core/sections/TapeSides.ts';
import type { Region } from '../../../core/spaces.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

/** The cut straight north at an easting, facing east. */
function cutAt(ground: Region, eastM: number) {
  const facing = faceAlong(cornersOf(ground), { x: 1, y: 0 });
  const chords = findChords(facing, eastM - (ground.outer[0]?.xM ?? 0));
  if (chords === undefined) throw new Error('no chords');
  return { facing, chords };
}

describe('a cut moved to tape marks', () => {
  const ground = region(rect(0, 0, 10, 4));

  test('has both ends on marks and the areas that go with them', () => {
    const { facing, chords } = cutAt(ground, 3.337);
    const room = { belowM2: 4 * 3.337, leastBelowM2: 13, mostBelowM2: 14 };
    const snapped = snapCut(facing, chords, room, 0.1);
    const [chord] = snapped?.chords ?? [];
    // 3.337 lies between the marks 3.3 and 3.4; 3.3 and 3.4 slanted change 4 × 3.337 = 13.348 m² least: 13.4.
    const eastings = [chord?.start.at.xM ?? Number.NaN, chord?.end.at.xM ?? Number.NaN].sort();
    expectNear(eastings[0] as number, 3.3, 1e-9, 'm');
    expectNear(eastings[1] as number, 3.4, 1e-9, 'm');
    expectNear(snapped ? regionAreaM2(snapped.halves.below) : Number.NaN, 13.4, 1e-9, 'm²'); // trapezoid by hand
  });

  test('never leaves a side more than it has room for', () => {
    const { facing, chords } = cutAt(ground, 3.337);
    const room = { belowM2: 4 * 3.337, leastBelowM2: 13, mostBelowM2: 13.36 };
    const snapped = snapCut(facing, chords, room, 0.1);
    expectNear(snapped ? regionAreaM2(snapped.halves.below) : Number.NaN, 13.2, 1e-9, 'm²'); // 4 × 3.3 by hand
    expect(snapCut(facing, chords, { ...room, leastBelowM2: 13.3 }, 0.1)).toBeUndefined();
  });

  test('counts marks from whichever corner is nearer the mark', () => {
    const odd = region(rect(0, 0, 10.05, 4));
    const { facing, chords } = cutAt(odd, 3.353);
    const room = { belowM2: 4 * 3.353, leastBelowM2: 13, mostBelowM2: 14 };
    const [chord] = snapCut(facing, chords, room, 0.1)?.chords ?? [];
    // 6.7 m from the far corner is 3.35 m from the near one: nearer than 3.3 or 3.4.
    expectNear(chord?.start.at.xM ?? Number.NaN, 3.35, 1e-9, 'm');
    expectNear(chord?.end.at.xM ?? Number.NaN, 3.35, 1e-9, 'm');
  });

  test('stands on marks at the beds it meets too, each of its runs straight', () => {
    const holed = region(rect(0, 0, 10, 4), points([2, 1], [5, 1], [5, 2], [2, 2]));
    const { facing, chords } = cutAt(holed, 3.337);
    expect(chords.length).toBe(2);
    const snapped = snapCut(facing, chords, { belowM2: 12.011, leastBelowM2: 11, mostBelowM2: 13 }, 0.1);
    const eastings = snapped?.chords.flatMap(({ start, end }) => [start.at.xM, end.at.xM]) ?? [];
    expect(eastings.length).toBe(4);
    for (const xM of eastings) expectNear(xM, Math.round(xM * 10) / 10, 1e-9, 'm'); // every corner is on a whole metre
    // By hand: the bed's 1 m by the part of it below, x - 2, is not ground; both runs moved by less than 0.1 m.
    expectNear(snapped ? regionAreaM2(snapped.halves.below) : Number.NaN, 12.011, 0.3, 'm²');
  });

  test('of a curve drawn in short steps is left where it is', () => {
    const steps = region(
      points(...Array.from({ length: 40 }, (_, i) => [Math.cos(i * 0.157), Math.sin(i * 0.157)] as const)),
    );
    const { facing, chords } = cutAt(steps, 0.31);
    expect(snapCut(facing, chords, { belowM2: 2, leastBelowM2: 0, mostBelowM2: 9 }, 0.1)).toBeUndefined();
  });

  test('is counted from the ends of the side its edge is a part of', () => {
    // The lawn begins where a bed ends, 0.25 m along a fence that begins at x = -0.25.
    const sides = new TapeSides([
      { from: { xM: -0.25, yM: 0 }, to: { xM: 10.08, yM: 0 } },
      { from: { xM: 10.08, yM: 4 }, to: { xM: -0.25, yM: 4 } },
    ]);
    const { facing, chords } = cutAt(ground, 3.34);
    const room = { belowM2: 4 * 3.34, leastBelowM2: 13, mostBelowM2: 14 };
    const [chord] = snapCut(facing, chords, room, 0.1, sides)?.chords ?? [];
    // 3.35 is 3.6 m from x = -0.25; 3.38, which is 6.7 m from x = 10.08, is further off.
    expectNear(chord?.start.at.xM ?? Number.NaN, 3.35, 1e-9, 'm');
    expectNear(chord?.end.at.xM ?? Number.NaN, 3.35, 1e-9, 'm');
  });

  test('has a mark at its straight end alone where the other is on a curve', () => {
    const arc = Array.from({ length: 60 }, (_, i) => {
      const rad = (Math.PI * i) / 59;
      return [10 * Math.cos(rad), 10 * Math.sin(rad)] as const;
    });
    const dome = region(points(...arc));
    const sides = new TapeSides([{ from: { xM: -10, yM: 0 }, to: { xM: 10, yM: 0 } }]);
    const { facing, chords } = cutAt(dome, 3.337);
    const belowM2 = 100;
    const [chord] =
      snapCut(facing, chords, { belowM2, leastBelowM2: 0, mostBelowM2: 400 }, 0.1, sides)?.chords ?? [];
    expectNear(chord?.start.at.yM ?? Number.NaN, 0, 1e-9, 'm'); // the dome stands on y = 0
    expectNear(chord?.start.at.xM ?? Number.NaN, 3.3, 1e-9, 'm'); // 13.3 m from the corner at -10
    expectNear(chord?.end.at.xM ?? Number.NaN, 3.337, 1e-9, 'm'); // where it was cut
  });
});
