import { describe, expect, test } from 'vitest';
import { moveOwnPoint, type OwnPoint, ownPoints, tracedRing } from '../../../core/curves/index.ts';
import type { Traced } from '../../../core/yard.ts';
import { expectNear } from '../../support/expectNear.ts';

const EDGES = {
  kind: 'corners',
  corners: [
    { xM: 0, yM: 0, run: { kind: 'arc', via: { xM: 4, yM: -3 } }, keepOffM: 1 },
    { xM: 8, yM: 0, run: { kind: 'smooth' } },
    { xM: 8, yM: 6, run: { kind: 'arc', via: { xM: 4, yM: 7 } } },
    { xM: 0, yM: 6 },
  ],
} as const satisfies Traced;
const CIRCLE: Traced = { kind: 'circle', centre: { xM: 3, yM: 4 }, radiusM: 5 };
const ELLIPSE: Traced = {
  kind: 'ellipse',
  centre: { xM: 3, yM: 4 },
  halfLengthM: 5,
  halfWidthM: 2,
  bearingDeg: 0,
};
const own = (traced: Traced, kind: OwnPoint['kind']): OwnPoint => {
  const found = ownPoints(traced).find((point) => point.kind === kind);
  if (found === undefined) throw new Error(`no ${kind}`);
  return found;
};

test('corners come first and in order, then the points on arcs', () => {
  expect(
    ownPoints(EDGES).map((point) => [point.kind, point.kind === 'via' ? point.of : undefined]),
  ).toStrictEqual([...Array.from({ length: 4 }, () => ['corner', undefined]), ['via', 0], ['via', 2]]);
  expect(ownPoints(EDGES)[1]).toStrictEqual({ kind: 'corner', at: 1, place: { xM: 8, yM: 0 } });
});

test('the ends of an ellipse lie on its bearing and to the left of it', () => {
  // Bearing 0: north of (3, 4) by 5, and west of it by 2
  expect(own(ELLIPSE, 'length-end').place).toStrictEqual({ xM: 3, yM: 9 });
  expect(own(ELLIPSE, 'width-end').place).toStrictEqual({ xM: 1, yM: 4 });
});

describe('a point put where it is already changes nothing', () => {
  test.each([EDGES, CIRCLE, ELLIPSE])('%o', (traced) => {
    for (const point of ownPoints(traced)) {
      const [before, after] = [tracedRing(traced), tracedRing(moveOwnPoint(traced, point, point.place))];
      expect(after.length).toBe(before.length);
      for (const [i, corner] of after.entries()) {
        expectNear(corner.xM, before[i]?.xM ?? Number.NaN, 1e-12, 'm');
        expectNear(corner.yM, before[i]?.yM ?? Number.NaN, 1e-12, 'm');
      }
    }
  });
});

test('a corner moves alone: its run, its strip and the points on arcs stay', () => {
  const moved = moveOwnPoint(EDGES, ownPoints(EDGES)[0] as OwnPoint, { xM: -1, yM: -2 });
  expect(moved).toStrictEqual({
    kind: 'corners',
    corners: [{ ...EDGES.corners[0], xM: -1, yM: -2 }, ...EDGES.corners.slice(1)],
  });
});

test('the point on an arc moves alone', () => {
  const moved = moveOwnPoint(EDGES, own(EDGES, 'via'), { xM: 4, yM: -1 });
  expect(ownPoints(moved)[4]).toStrictEqual({ kind: 'via', of: 0, place: { xM: 4, yM: -1 } });
  expect(ownPoints(moved).filter((_, i) => i !== 4)).toStrictEqual(
    ownPoints(EDGES).filter((_, i) => i !== 4),
  );
});

test('the centre takes the whole along; the rim changes the radius', () => {
  const away = { xM: 10, yM: 10 };
  expect(moveOwnPoint(CIRCLE, own(CIRCLE, 'centre'), away)).toStrictEqual({ ...CIRCLE, centre: away });
  expect(moveOwnPoint(ELLIPSE, own(ELLIPSE, 'centre'), away)).toStrictEqual({ ...ELLIPSE, centre: away });
  // (3, 4) to (3, 11) is 7 m
  expect(moveOwnPoint(CIRCLE, own(CIRCLE, 'rim'), { xM: 3, yM: 11 })).toStrictEqual({
    ...CIRCLE,
    radiusM: 7,
  });
});

test('the end of the length turns and lengthens, the end of the width widens by what it is off the length', () => {
  // From (3, 4) to (0, 4) is 3 m due west
  const west = moveOwnPoint(ELLIPSE, own(ELLIPSE, 'length-end'), { xM: 0, yM: 4 });
  expect(west).toStrictEqual({ ...ELLIPSE, halfLengthM: 3, bearingDeg: 270 });
  // 6 m east of the line to the north through (3, 4), wherever along it
  expect(moveOwnPoint(ELLIPSE, own(ELLIPSE, 'width-end'), { xM: 9, yM: 30 })).toStrictEqual({
    ...ELLIPSE,
    halfWidthM: 6,
  });
});

test('a length pulled to nothing keeps its bearing', () => {
  const turned: Traced = { ...ELLIPSE, bearingDeg: 33 };
  const none = moveOwnPoint(turned, own(turned, 'length-end'), { xM: 3, yM: 4 });
  expect(none).toStrictEqual({ ...turned, halfLengthM: 0 });
});

test('a point of another kind of edge moves nothing', () => {
  expect(moveOwnPoint(CIRCLE, own(EDGES, 'via'), { xM: 0, yM: 0 })).toBe(CIRCLE);
  expect(moveOwnPoint(ELLIPSE, own(CIRCLE, 'rim'), { xM: 0, yM: 0 })).toBe(ELLIPSE);
  expect(moveOwnPoint(EDGES, own(CIRCLE, 'rim'), { xM: 0, yM: 0 })).toStrictEqual(EDGES);
});
