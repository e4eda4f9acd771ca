import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { straight, tracedRing, uncrossed } from '../../../core/curves/index.ts';
import { findCrossing, ringPerimeterM } from '../../../core/kernel/index.ts';
import type { Ring } from '../../../core/spaces.ts';
import type { Traced } from '../../../core/yard.ts';
import { points, rect } from '../../support/builders.ts';

function sorted(ring: Ring): readonly string[] {
  return ring.map(({ xM, yM }) => `${xM} ${yM}`).sort();
}

describe('an edge that crosses itself', () => {
  test('a bow-tie becomes the square of its corners, from the same first corner', () => {
    expect(uncrossed(straight(points([0, 0], [2, 2], [2, 0], [0, 2])))).toEqual(
      straight(points([0, 0], [2, 0], [2, 2], [0, 2])), // the two crossing sides walked the other way round
    );
  });

  test('one that does not cross comes back as the very same', () => {
    const square = straight(rect(0, 0, 3, 2));
    expect(uncrossed(square)).toBe(square);
  });

  test('keeps every corner, crosses nowhere and is no longer than before', () => {
    const place = fc.integer({ min: 0, max: 1e6 }).map((n) => n / 1000);
    const corner = fc.record({ xM: place, yM: place });
    fc.assert(
      fc.property(fc.array(corner, { minLength: 4, maxLength: 40 }), (ring) => {
        const mended = uncrossed(straight(ring));
        // Corners thrown at random may lie in line or upon each other: those it may refuse, none it may spoil.
        if (mended === null) return;
        expect(sorted(tracedRing(mended))).toEqual(sorted(ring));
        expect(tracedRing(mended)[0]).toEqual(ring[0]);
        expect(findCrossing(tracedRing(mended))).toBeUndefined();
        expect(ringPerimeterM(tracedRing(mended))).toBeLessThanOrEqual(ringPerimeterM(ring));
      }),
    );
  });

  test('of places no three of which are in line it refuses none', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 199 }), { minLength: 4, maxLength: 60 }),
        (turns) => {
          // All on one circle, so no three are in line, visited in any order.
          const on = (turn: number) => (2 * Math.PI * turn) / 200;
          const ring = turns.map((turn) => ({ xM: 20 * Math.cos(on(turn)), yM: 20 * Math.sin(on(turn)) }));
          expect(uncrossed(straight(ring))).not.toBeNull();
        },
      ),
    );
  });

  test('a spike that runs back over itself is opened', () => {
    expect(uncrossed(straight(points([0, 0], [4, 0], [2, 0], [2, 3])))).toEqual(
      straight(points([0, 0], [2, 0], [4, 0], [2, 3])), // the two corners of the spike change places
    );
  });

  test('the curves and strips of a stretch turned go with their edges', () => {
    const traced: Traced = {
      kind: 'corners',
      corners: [
        { xM: 0, yM: 0 },
        { xM: 10, yM: 10, run: { kind: 'arc', via: { xM: 11, yM: 5 } }, keepOffM: 1 },
        { xM: 10, yM: 0 },
        { xM: 0, yM: 10 },
      ],
    };
    expect(uncrossed(traced)).toEqual({
      kind: 'corners',
      corners: [
        { xM: 0, yM: 0 },
        { xM: 10, yM: 0, run: { kind: 'arc', via: { xM: 11, yM: 5 } }, keepOffM: 1 },
        { xM: 10, yM: 10 },
        { xM: 0, yM: 10 },
      ], // the arc still bulges east between the same two corners
    });
  });
});

describe('what turning a stretch cannot mend is refused', () => {
  test('three corners in line', () => {
    expect(uncrossed(straight(points([0, 0], [4, 0], [2, 0])))).toBeNull();
  });

  test('a corner visited twice', () => {
    expect(uncrossed(straight(points([0, 0], [2, 2], [4, 0], [4, 4], [2, 2], [0, 4])))).toBeNull();
  });

  test('a curve that crosses', () => {
    const via = { xM: 5, yM: 8 };
    const [first, ...rest] = rect(0, 0, 10, 6);
    const traced = { kind: 'corners', corners: [{ ...first, run: { kind: 'arc', via } }, ...rest] } as Traced;
    expect(findCrossing(tracedRing(traced))).toBeDefined();
    expect(uncrossed(traced)).toBeNull();
  });

  test('sizes cross nothing', () => {
    expect(uncrossed({ kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 2 })).toBeNull();
  });
});
