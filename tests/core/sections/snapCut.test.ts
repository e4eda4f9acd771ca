import { describe, expect, test } from 'vitest';
import { distanceM, regionAreaM2 } from '../../../core/kernel/index.ts';
import { findChords } from '../../../core/sections/chords.ts';
import { cornersOf, faceAlong } from '../../../core/sections/facing.ts';
import { snapCut } from '../../../core/sections/snapCut.ts';
import { TapeSides } from '../../../core/sections/TapeSides.ts';
import type { Region } from '../../../core/spaces.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

/** The cut straight north at an easting, facing east. */
function cutAt(ground: Region, eastM: number) {
  const unturned = cornersOf(ground);
  const chords = findChords(faceAlong(unturned, { x: 1, y: 0 }), eastM - (ground.outer[0]?.xM ?? 0));
  if (chords === undefined) throw new Error('no chords');
  return { unturned, chords };
}

describe('a cut moved to tape marks', () => {
  const ground = region(rect(0, 0, 10, 4));

  test('has both ends on marks and the areas that go with them', () => {
    const { unturned, chords } = cutAt(ground, 3.337);
    const room = { belowM2: 4 * 3.337, leastBelowM2: 13, mostBelowM2: 14 };
    const snapped = snapCut(unturned, chords, room, 0.1);
    const [chord] = snapped?.chords ?? [];
    // 3.337 lies between the marks 3.3 and 3.4; 3.3 and 3.4 slanted change 4 × 3.337 = 13.348 m² least: 13.4.
    const eastings = [chord?.start.at.xM ?? Number.NaN, chord?.end.at.xM ?? Number.NaN].sort();
    expectNear(eastings[0] as number, 3.3, 1e-9, 'm');
    expectNear(eastings[1] as number, 3.4, 1e-9, 'm');
    expectNear(snapped ? regionAreaM2(snapped.halves.below) : Number.NaN, 13.4, 1e-9, 'm²'); // trapezoid by hand
  });

  test('never leaves a side more than it has room for', () => {
    const { unturned, chords } = cutAt(ground, 3.337);
    const room = { belowM2: 4 * 3.337, leastBelowM2: 13, mostBelowM2: 13.36 };
    const snapped = snapCut(unturned, chords, room, 0.1);
    expectNear(snapped ? regionAreaM2(snapped.halves.below) : Number.NaN, 13.2, 1e-9, 'm²'); // 4 × 3.3 by hand
    expect(snapCut(unturned, chords, { ...room, leastBelowM2: 13.3 }, 0.1)).toBeUndefined();
  });

  test('counts marks from whichever corner is nearer the mark', () => {
    const odd = region(rect(0, 0, 10.05, 4));
    const { unturned, chords } = cutAt(odd, 3.353);
    const room = { belowM2: 4 * 3.353, leastBelowM2: 13, mostBelowM2: 14 };
    const [chord] = snapCut(unturned, chords, room, 0.1)?.chords ?? [];
    // 6.7 m from the far corner is 3.35 m from the near one: nearer than 3.3 or 3.4.
    expectNear(chord?.start.at.xM ?? Number.NaN, 3.35, 1e-9, 'm');
    expectNear(chord?.end.at.xM ?? Number.NaN, 3.35, 1e-9, 'm');
  });

  test('goes straight on through a hole, its outer ends on marks', () => {
    const holed = region(rect(0, 0, 10, 4), points([2, 1], [5, 1], [5, 2], [2, 2]));
    const { unturned, chords } = cutAt(holed, 3.337);
    expect(chords.length).toBe(2);
    const snapped = snapCut(unturned, chords, { belowM2: 12.011, leastBelowM2: 11, mostBelowM2: 13 }, 0.1);
    const [south, north] = snapped?.chords ?? [];
    if (south === undefined || north === undefined) throw new Error('not snapped');
    const wholeM = distanceM(south.start.at, north.end.at);
    const partsM =
      distanceM(south.start.at, south.end.at) +
      distanceM(south.end.at, north.start.at) +
      distanceM(north.start.at, north.end.at);
    expectNear(partsM, wholeM, 1e-9, 'm'); // a straight line is as long as its parts
  });

  test('of a curve drawn in short steps is left where it is', () => {
    const steps = region(
      points(...Array.from({ length: 40 }, (_, i) => [Math.cos(i * 0.157), Math.sin(i * 0.157)] as const)),
    );
    const { unturned, chords } = cutAt(steps, 0.31);
    expect(snapCut(unturned, chords, { belowM2: 2, leastBelowM2: 0, mostBelowM2: 9 }, 0.1)).toBeUndefined();
  });

  test('is counted from the ends of the side its edge is a part of', () => {
    // The lawn begins where a bed ends, 0.25 m along a fence that begins at x = -0.25.
    const sides = new TapeSides([
      { from: { xM: -0.25, yM: 0 }, to: { xM: 10.08, yM: 0 } },
      { from: { xM: 10.08, yM: 4 }, to: { xM: -0.25, yM: 4 } },
    ]);
    const { unturned, chords } = cutAt(ground, 3.34);
    const room = { belowM2: 4 * 3.34, leastBelowM2: 13, mostBelowM2: 14 };
    const [chord] = snapCut(unturned, chords, room, 0.1, sides)?.chords ?? [];
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
    const { unturned, chords } = cutAt(dome, 3.337);
    const belowM2 = 100;
    const [chord] =
      snapCut(unturned, chords, { belowM2, leastBelowM2: 0, mostBelowM2: 400 }, 0.1, sides)?.chords ?? [];
    expectNear(chord?.start.at.yM ?? Number.NaN, 0, 1e-9, 'm'); // the dome stands on y = 0
    expectNear(chord?.start.at.xM ?? Number.NaN, 3.3, 1e-9, 'm'); // 13.3 m from the corner at -10
    expectNear(chord?.end.at.xM ?? Number.NaN, 3.337, 1e-9, 'm'); // where it was cut
  });
});
