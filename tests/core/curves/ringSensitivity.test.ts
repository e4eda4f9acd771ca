import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  moveOwnPoint,
  type OwnPoint,
  ownPoints,
  ringSensitivity,
  straight,
  tracedRing,
} from '../../../core/curves/index.ts';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import type { Traced, TracedCorner } from '../../../core/yard.ts';
import { expectNear } from '../../support/expectNear.ts';

const EDGES: Traced = {
  kind: 'corners',
  corners: [
    { xM: 0, yM: 0, run: { kind: 'arc', via: { xM: 4, yM: -3 } } },
    { xM: 8, yM: 0, run: { kind: 'smooth' } },
    { xM: 10, yM: 3, run: { kind: 'smooth' } },
    { xM: 8, yM: 6, run: { kind: 'smooth' } },
    { xM: 4, yM: 9, run: { kind: 'arc', via: { xM: 1, yM: 7.9 } } },
    { xM: 0, yM: 6 },
  ],
};
const THREE: Traced = {
  kind: 'corners',
  corners: [0, 7, 3].map((xM, i): TracedCorner => ({ xM, yM: [0, 1, 6][i] ?? 0, run: { kind: 'smooth' } })),
};
const CIRCLE: Traced = { kind: 'circle', centre: { xM: 3, yM: 4 }, radiusM: 5 };
const ELLIPSE: Traced = {
  kind: 'ellipse',
  centre: { xM: 3, yM: 4 },
  halfLengthM: 5,
  halfWidthM: 2,
  bearingDeg: 25,
};

test('a straight corner moves with itself and nothing else', () => {
  const corners = [0, 4, 0].map((xM, i) => ({ xM, yM: i }));
  expect(ringSensitivity(straight(corners))).toStrictEqual(
    corners.map((_, own) => [{ own, dxdx: 1, dxdy: 0, dydx: 0, dydy: 1 }]), // identity
  );
});

test('corners of a curve follow the points of their own edge and its smooth neighbours alone', () => {
  const ring = tracedRing(EDGES);
  const moves = ringSensitivity(EDGES);
  expect(moves.length).toBe(ring.length);
  // Own points: corners 0 to 5, then the points of the arcs of edge 0 and of edge 4.
  expect(moves[1]?.map(({ own }) => own)).toStrictEqual([0, 6, 1]);
  expect(moves.at(-2)?.map(({ own }) => own)).toStrictEqual([4, 7, 5]);
  const between = moves.slice(ring.findIndex(({ xM, yM }) => xM === 10 && yM === 3) + 1)[0];
  expect(between?.map(({ own }) => own)).toStrictEqual([1, 2, 3, 4]);
});

describe('the area changes as the corners do that follow a point', () => {
  // dA = Σ dA/dv · dv/dp with the shoelace formula's dA/dv, against the area of the edge with the point moved.
  test.each([
    ['arcs and smooth runs', EDGES],
    ['three smooth edges', THREE],
    ['a circle', CIRCLE],
    ['an ellipse', ELLIPSE],
  ])('%s', (_, traced) => {
    const ring = tracedRing(traced);
    const moves = ringSensitivity(traced);
    for (const [own, point] of ownPoints(traced).entries()) {
      const gradient = { east: 0, north: 0 };
      for (const [i, list] of moves.entries()) {
        const before = ring[(i + ring.length - 1) % ring.length] as (typeof ring)[0];
        const after = ring[(i + 1) % ring.length] as (typeof ring)[0];
        const [byX, byY] = [(after.yM - before.yM) / 2, (before.xM - after.xM) / 2];
        for (const move of list.filter((each) => each.own === own)) {
          gradient.east += byX * move.dxdx + byY * move.dydx;
          gradient.north += byX * move.dxdy + byY * move.dydy;
        }
      }
      expectNear(gradient.east, areaSlope(traced, point, 1, 0), 2e-5, 'm');
      expectNear(gradient.north, areaSlope(traced, point, 0, 1), 2e-5, 'm');
    }
  });
});

/** Central difference of the area, which is the curve's own whatever the count of corners. */
function areaSlope(traced: Traced, point: OwnPoint, east: number, north: number): number {
  const stepM = 1e-4;
  const areaM2 = (sign: number): number => {
    const to = { xM: point.place.xM + sign * stepM * east, yM: point.place.yM + sign * stepM * north };
    return signedAreaM2(tracedRing(moveOwnPoint(traced, point, to)));
  };
  return (areaM2(1) - areaM2(-1)) / (2 * stepM);
}

test('what is moved as a whole moves each corner as much: the moves by corners and points of arcs add up to one', () => {
  for (const list of ringSensitivity(EDGES)) {
    const sum = (of: (move: (typeof list)[0]) => number) => list.reduce((total, move) => total + of(move), 0);
    expectNear(
      sum(({ dxdx }) => dxdx),
      1,
      1e-6,
      '',
    );
    expectNear(
      sum(({ dydy }) => dydy),
      1,
      1e-6,
      '',
    );
    expectNear(
      sum(({ dxdy }) => dxdy),
      0,
      1e-6,
      '',
    );
    expectNear(
      sum(({ dydx }) => dydx),
      0,
      1e-6,
      '',
    );
  }
});

test('degenerate edges give numbers, one list a corner', () => {
  const coordinate = fc.integer({ min: -2, max: 2 });
  const run = fc.oneof(
    fc.constant({}),
    fc.constant({ run: { kind: 'smooth' as const } }),
    fc.record({ xM: coordinate, yM: coordinate }).map((via) => ({ run: { kind: 'arc' as const, via } })),
  );
  const corner = fc
    .tuple(coordinate, coordinate, run)
    .map(([xM, yM, how]): TracedCorner => ({ xM, yM, ...how }));
  fc.assert(
    fc.property(fc.array(corner, { minLength: 1, maxLength: 5 }), (corners) => {
      const traced: Traced = { kind: 'corners', corners };
      const moves = ringSensitivity(traced);
      expect(moves.length).toBe(tracedRing(traced).length);
      const numbers = moves.flat().flatMap((move) => Object.values(move));
      expect(numbers.every(Number.isFinite)).toBe(true);
    }),
    { seed: 20261125, numRuns: 200 },
  );
});
