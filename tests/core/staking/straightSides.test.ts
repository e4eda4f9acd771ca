import { expect, test } from 'vitest';
import { yardPoints } from '../../../core/staking/namedPoints.ts';
import { straightSides, tapeSidesOf } from '../../../core/staking/straightSides.ts';
import type { Outline } from '../../../core/yard.ts';
import { outline, points, rect } from '../../support/builders.ts';

function sidesOf(outlines: readonly Outline[]) {
  return straightSides(outlines, yardPoints({ outlines, marks: [] }));
}

test('every edge long enough to be seen is a side between two named corners', () => {
  const sides = sidesOf([outline('zone', 'lawn', rect(0, 0, 10, 0.8))]);
  // The two of 10 m; those of 0.8 m are no longer than steps of a curve.
  expect(sides.map(({ from, to }) => `${from.own} > ${to.own}`)).toHaveLength(2);
});

test('points a survey set in mid-edge do not end a side', () => {
  const [side] = sidesOf([outline('zone', 'lawn', points([0, 0], [4, 0], [7, 0], [10, 0], [10, 6], [0, 6]))]);
  expect([side?.from.at, side?.to.at]).toEqual([
    { xM: 0, yM: 0 },
    { xM: 10, yM: 0 },
  ]);
});

test('curved edges are no sides', () => {
  const corners = rect(0, 0, 10, 6).map((corner, i) =>
    i === 1 ? { ...corner, run: { kind: 'arc' as const, via: { xM: 12, yM: 3 } } } : corner,
  );
  const lawn = { ...outline('zone', 'lawn', rect(0, 0, 1, 1)), outer: { kind: 'corners' as const, corners } };
  expect(sidesOf([lawn])).toHaveLength(3); // 4 edges less the arc
});

test('the far edge of a strip is counted from the feet of the corners, inside a zone and outside a bed', () => {
  const lawn = { ...outline('zone', 'lawn', rect(0, 0, 10, 6)), keepOffM: 0.5 };
  const bed = { ...outline('bed', 'bed', rect(20, 0, 4, 2)), keepOffM: 0.5 };
  const southOf = (sides: ReturnType<typeof tapeSidesOf>) => sides[1];
  expect(southOf(tapeSidesOf({ outlines: [lawn], marks: [] }))).toEqual({
    from: { xM: 0, yM: 0.5 },
    to: { xM: 10, yM: 0.5 },
  });
  expect(southOf(tapeSidesOf({ outlines: [bed], marks: [] }))).toEqual({
    from: { xM: 20, yM: -0.5 },
    to: { xM: 24, yM: -0.5 },
  });
  const turned = { ...lawn, outer: { kind: 'corners' as const, corners: rect(0, 0, 10, 6).reverse() } };
  const strips = tapeSidesOf({ outlines: [turned], marks: [] });
  expect(strips).toContainEqual({ from: { xM: 10, yM: 0.5 }, to: { xM: 0, yM: 0.5 } });
});
