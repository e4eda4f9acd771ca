import fc from 'fast-check';
import { expect, test } from 'vitest';
import { edgeCurve, pointsBetween } from '../../../core/curves/edgePoints.ts';
import type { EdgeRun, TracedCorner } from '../../../core/yard.ts';

const coordinate = fc.double({ min: -30, max: 30, noNaN: true });
const point = fc.record({ xM: coordinate, yM: coordinate });

/** The same ring walked the other way: each edge's run goes to the corner at its other end. */
function walkedBack(corners: readonly TracedCorner[]): TracedCorner[] {
  return corners
    .map(({ xM, yM }, i): TracedCorner => {
      const run: EdgeRun | undefined = corners[(i + corners.length - 1) % corners.length]?.run;
      return run === undefined ? { xM, yM } : { xM, yM, run };
    })
    .reverse();
}

test('an edge that two outlines share has the same corners, bit for bit, whichever way each was traced', () => {
  const run = fc.oneof(
    point.map((via): EdgeRun => ({ kind: 'arc', via })),
    fc.constant<EdgeRun>({ kind: 'smooth' }),
  );
  const corner = fc.record({ at: point, run }).map((each): TracedCorner => ({ ...each.at, run: each.run }));
  fc.assert(
    fc.property(fc.array(corner, { minLength: 2, maxLength: 6 }), (corners) => {
      const n = corners.length;
      const back = walkedBack(corners);
      for (let edge = 0; edge < n; edge++) {
        // Corner i is corner n − 1 − i of the ring walked back, where the edge begins at its other end.
        const other = (n - 1 - ((edge + 1) % n) + n) % n;
        expect(pointsBetween(back, other)).toStrictEqual([...pointsBetween(corners, edge)].reverse());
      }
    }),
    { seed: 20261125, numRuns: 100 },
  );
});

test('a straight edge follows nothing and has nothing between its ends', () => {
  const corners = [
    { xM: 0, yM: 0 },
    { xM: 4, yM: 0 },
  ];
  expect(edgeCurve(corners, 0)).toBeNull();
  expect(pointsBetween(corners, 0)).toStrictEqual([]);
});

test('a curve through places beyond all numbers is drawn straight', () => {
  const far: TracedCorner[] = [
    { xM: -1.7e308, yM: 0, run: { kind: 'smooth' } },
    { xM: 1.7e308, yM: 0, run: { kind: 'arc', via: { xM: 0, yM: 1.7e308 } } },
    { xM: 0, yM: -1.7e308, run: { kind: 'smooth' } },
  ];
  for (const edge of far.keys()) expect(pointsBetween(far, edge)).toStrictEqual([]);
});

test('when a corner moves, only the curves that go by it are drawn anew', () => {
  const corners = Array.from(
    { length: 8 },
    (_, i): TracedCorner => ({ xM: 9 * Math.cos(i), yM: 9 * Math.sin(i), run: { kind: 'smooth' } }),
  );
  const before = corners.map((_, edge) => pointsBetween(corners, edge));
  const moved = corners.map((corner, i) => (i === 3 ? { ...corner, xM: corner.xM + 0.5 } : corner));
  const kept = moved.map((_, edge) => pointsBetween(moved, edge) === before[edge]);
  // A smooth edge goes by its own corners and one more to either side: edges 1 to 4 go by corner 3.
  expect(kept).toStrictEqual([true, false, false, false, false, true, true, true]);
});

test('an edge whose run was changed is not taken for what it was', () => {
  const to = { xM: 4, yM: 0 };
  const arc = (yM: number): TracedCorner => ({ xM: 0, yM: 0, run: { kind: 'arc', via: { xM: 2, yM } } });
  expect(pointsBetween([arc(1), to], 0)).not.toStrictEqual(pointsBetween([arc(-1), to], 0));
});
