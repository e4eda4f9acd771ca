import { expect, test } from 'vitest';
import { movedTraced, type Similarity, tracedRing } from '../../../core/curves/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { Traced } from '../../../core/yard.ts';
import { expectNear } from '../../support/expectNear.ts';

/** A quarter turn clockwise, twice as large, and away. */
const QUARTER: Similarity = {
  move: ({ xM, yM }: YardPoint) => ({ xM: 2 * yM + 30, yM: -2 * xM - 7 }),
  scale: 2,
  turnDeg: 90,
};

const TRACED: readonly [string, Traced][] = [
  ['a circle', { kind: 'circle', centre: { xM: 3, yM: 4 }, radiusM: 5 }],
  [
    'an ellipse',
    { kind: 'ellipse', centre: { xM: 3, yM: 4 }, halfLengthM: 5, halfWidthM: 2, bearingDeg: 300 },
  ],
  [
    'an edge of arcs and smooth runs',
    {
      kind: 'corners',
      corners: [
        { xM: 0, yM: 0, run: { kind: 'arc', via: { xM: 4, yM: -3 } } },
        { xM: 8, yM: 0, run: { kind: 'smooth' }, keepOffM: 1.5 },
        { xM: 9, yM: 6, run: { kind: 'smooth' } },
        { xM: 0, yM: 6 },
      ],
    },
  ],
];

test.each(TRACED)('%s: its curve moved is the curve of what was moved', (_, traced) => {
  // As it was, drawn at twice the size: as many corners as it has when it is twice as large.
  const grown: Similarity = { move: ({ xM, yM }) => ({ xM: 2 * xM, yM: 2 * yM }), scale: 2, turnDeg: 0 };
  const [ring, twice] = [tracedRing(movedTraced(traced, QUARTER)), tracedRing(movedTraced(traced, grown))];
  // A circle begins in the east whichever way it is turned, so its corners are told by their distance alone.
  if (traced.kind === 'circle') return expectCircle(ring);
  expect(ring.length).toBe(twice.length);
  for (const [i, corner] of twice.entries()) {
    const to = QUARTER.move({ xM: corner.xM / 2, yM: corner.yM / 2 });
    expectNear(ring[i]?.xM ?? Number.NaN, to.xM, 1e-9, 'm');
    expectNear(ring[i]?.yM ?? Number.NaN, to.yM, 1e-9, 'm');
  }
});

function expectCircle(ring: readonly YardPoint[]): void {
  // Its middle (3, 4) comes to (2 · 4 + 30, −2 · 3 − 7) and its radius to 10.
  for (const { xM, yM } of ring) expectNear(Math.hypot(xM - 38, yM + 13), 10, 0.002, 'm');
}

test('a width kept off stays as wide, and a bearing stays below a full turn', () => {
  const [, ellipse, edges] = TRACED.map(([, traced]) => movedTraced(traced, QUARTER));
  expect(ellipse).toMatchObject({ bearingDeg: 30 }); // 300 + 90 − 360
  expect(edges).toMatchObject({ corners: [{}, { keepOffM: 1.5 }, {}, {}] });
});
