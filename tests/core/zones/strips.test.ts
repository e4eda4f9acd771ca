import { describe, expect, test } from 'vitest';
import { straight } from '../../../core/curves/index.ts';
import { regionsAreaM2 } from '../../../core/kernel/index.ts';
import type { Outline, TracedCorner } from '../../../core/yard.ts';
import { stripProblems, stripShapes } from '../../../core/zones/strips.ts';
import { lShape, outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

/** Round corners may be short by chords 1 mm inside the arc. */
function shortM2(arcM: number): number {
  return 1e-3 * arcM;
}

function withEdge(of: Outline, edge: number, widthM: number): Outline {
  if (of.outer.kind !== 'corners') throw new Error('no corners');
  const corners: readonly TracedCorner[] = of.outer.corners.map((corner, i) =>
    i === edge ? { ...corner, keepOffM: widthM } : corner,
  );
  return { ...of, outer: { kind: 'corners', corners } };
}

const stripM2 = (of: Outline): number => regionsAreaM2(stripShapes(of).flatMap(({ regions }) => regions));
const pond = outline('water', 'pond', rect(0, 0, 6, 4));
const lawn = outline('zone', 'lawn', rect(0, 0, 20, 10));

describe('all round', () => {
  test('a pond it lies outside, round at the corners', () => {
    const areaM2 = stripM2({ ...pond, keepOffM: 1 });
    expectNear(areaM2, 2 * 6 + 2 * 4 + Math.PI, shortM2(2 * Math.PI), 'm²'); // four sides and a circle of radius 1
  });

  test('a zone it lies inside, and is all of it once wide enough', () => {
    expectNear(stripM2({ ...lawn, keepOffM: 1 }), 200 - 18 * 8, 1e-9, 'm²'); // 20 * 10 less what is left
    expectNear(stripM2({ ...lawn, keepOffM: 5 }), 200, 1e-4, 'm²'); // half its width
    expectNear(stripM2({ ...lawn, keepOffM: 100 }), 200, 1e-9, 'm²');
  });

  test('a zone with a notch and a hole goes round both', () => {
    const zone = { ...outline('zone', 'l', lShape(20, 20, 10, 10), rect(2, 2, 4, 4)), keepOffM: 1 };
    const left = 18 * 18 - 10 * 10; // the L a metre in, its notch a metre out
    const rounded = 1 - Math.PI / 4; // the notch's inner corner is round
    const hole = 6 * 6 - (4 - Math.PI);
    // The hole's strip lies a metre from the edge's: they touch and share nothing.
    expectNear(
      stripM2(zone),
      300 - 16 - (left + rounded - hole), // gross less what is left
      shortM2(3 * Math.PI),
      'm²',
    );
  });
});

describe('along an edge', () => {
  test('of a zone: a band inside it', () => {
    expectNear(stripM2(withEdge(lawn, 0, 2)), 20 * 2, 1e-9, 'm²'); // south edge, 2 m
  });

  test('of a bed: a band outside it with round ends', () => {
    const band = 6 * 2 + 2 * ((Math.PI * 4) / 2); // south side, and half a circle past each end
    expectNear(stripM2(withEdge(pond, 0, 2)), band, shortM2(4 * Math.PI), 'm²');
  });

  test('and the next one leave no gap at the corner and count it once', () => {
    const both = withEdge(withEdge(lawn, 0, 2), 1, 3);
    expectNear(stripM2(both), 20 * 2 + 10 * 3 - 2 * 3, 1e-9, 'm²'); // the corner is in both
    const [shape] = stripShapes(both);
    expect(shape?.strips?.strips).toMatchObject([
      { outlineId: 'lawn', ring: 0, edge: 0, widthM: 2 },
      { outlineId: 'lawn', ring: 0, edge: 1, widthM: 3 },
    ]);
  });

  test('that is an arc follows the arc', () => {
    // Half a circle of radius 5 over the north edge, run from the north-east corner to the north-west.
    const arched = outline('zone', 'lawn', rect(0, 0, 10, 4));
    const corners: readonly TracedCorner[] = rect(0, 0, 10, 4).map((corner, i) =>
      i === 2 ? { ...corner, run: { kind: 'arc', via: { xM: 5, yM: 9 } }, keepOffM: 1 } : corner,
    );
    const areaM2 = stripM2({ ...arched, outer: { kind: 'corners', corners } });
    const halfRing = (Math.PI / 2) * (25 - 16);
    const ends = 2 * (Math.PI / 4); // a quarter circle below each end, inside the lawn
    expectNear(areaM2, halfRing + ends, 2e-3 * 16 + shortM2(4), 'm²'); // the arc within 2 mm over its 15.7 m
  });

  test('that has no length keeps off the ground round its corner', () => {
    const doubled = outline('bed', 'b', [{ xM: 0, yM: 0 }, ...rect(0, 0, 6, 4)]);
    expectNear(stripM2(withEdge(doubled, 0, 1)), (Math.PI * 3) / 4, shortM2(5), 'm²'); // three quarters of a circle
  });
});

test('is made once, however often it is asked for, and not at all without a width', () => {
  const kept = { ...pond, keepOffM: 1 };
  expect(stripShapes(kept)).toBe(stripShapes(kept));
  expect(stripShapes(pond)).toEqual([]);
  expect(stripShapes({ ...pond, keepOffM: 0 })).toEqual([]);
});

test('a width that cannot be one is named with its place', () => {
  for (const widthM of [-1, Number.NaN, Number.POSITIVE_INFINITY, 100.1]) {
    expect(stripProblems({ ...pond, keepOffM: widthM })).toMatchObject([
      { kind: 'shape/keep-off-width', where: { outlineId: 'pond' }, facts: { widthM, mostM: 100 } },
    ]);
    expect(stripProblems(withEdge(pond, 1, widthM))).toMatchObject([
      { kind: 'shape/keep-off-width', where: { at: { xM: 6, yM: 0 } } },
    ]);
  }
  expect(stripProblems({ ...pond, keepOffM: 100, outer: straight(rect(0, 0, 6, 4)) })).toEqual([]);
});
