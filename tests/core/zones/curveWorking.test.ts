import { describe, expect, test } from 'vitest';
import { FOOT_M, SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import type { Traced, TracedCorner } from '../../../core/yard.ts';
import { type CurveWorking, curveWorking } from '../../../core/zones/curveWorking.ts';
import { straight } from '../../../core/curves/index.ts';
import { tracedWorking } from '../../../core/zones/tracedWorking.ts';
import { rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

function areaOf(curve: CurveWorking | null): number {
  return curve === null || curve.kind === 'smooth' ? Number.NaN : curve.area;
}

/** A square of 4 m whose southern edge is an arc through `via`. */
function squareWithArc(via: { xM: number; yM: number }): Traced {
  const [a, b, c, d] = rect(0, 0, 4, 4) as [TracedCorner, TracedCorner, TracedCorner, TracedCorner];
  return { kind: 'corners', corners: [{ ...a, run: { kind: 'arc', via } }, b, c, d] };
}

describe('by formula', () => {
  test('a circle of 3 m', () => {
    const circle: Traced = { kind: 'circle', centre: { xM: 10, yM: -4 }, radiusM: 3 };
    expect(curveWorking(circle, 'metric')).toMatchObject({
      kind: 'circle',
      radius: 3,
      centre: { east: 10, north: -4 },
    });
    expectNear(areaOf(curveWorking(circle, 'metric')), 28.274_333_882, 1e-8, 'm²'); // π 3²
    const feet = curveWorking({ ...circle, radiusM: 10 * FOOT_M }, 'us');
    expectNear(areaOf(feet), 314.159_265_36, 1e-7, 'ft²'); // π 10²
  });

  test('an ellipse of half length 5 and half width 2 m', () => {
    const ellipse: Traced = {
      kind: 'ellipse',
      centre: { xM: 0, yM: 0 },
      halfLengthM: 5,
      halfWidthM: 2,
      bearingDeg: 30,
    };
    expectNear(areaOf(curveWorking(ellipse, 'metric')), 31.415_926_536, 1e-8, 'm²'); // π 5 2
  });

  test('a half circle on an edge adds π r²/2 outside and takes it inside, either way the ring runs', () => {
    const half = (Math.PI * 2 ** 2) / 2;
    const [out, into] = [squareWithArc({ xM: 2, yM: -2 }), squareWithArc({ xM: 2, yM: 2 })];
    expectNear(areaOf(curveWorking(out, 'metric')), 16 + half, 1e-9, 'm²'); // 4² + π 2²/2
    expectNear(areaOf(curveWorking(into, 'metric')), 16 - half, 1e-9, 'm²'); // 4² - π 2²/2
    const [a, b, c, d] = rect(0, 0, 4, 4) as [TracedCorner, TracedCorner, TracedCorner, TracedCorner];
    const run = { kind: 'arc', via: { xM: 2, yM: -2 } } as const;
    // The same edge walked the other way: the arc now starts at b.
    const backwards: Traced = { kind: 'corners', corners: [d, c, { ...b, run }, a] };
    expectNear(areaOf(curveWorking(backwards, 'metric')), 16 + half, 1e-9, 'm²'); // 4² + π 2²/2
  });

  test('an arc of more than half a circle', () => {
    // Circle of radius 2.5 about (2, -1.5): through both corners of the edge and (2, -4). It turns 360° - 2 atan(2 / 1.5).
    const curve = curveWorking(squareWithArc({ xM: 2, yM: -4 }), 'metric');
    const turned = 2 * Math.PI - 2 * Math.atan2(2, 1.5);
    const segment = (2.5 ** 2 / 2) * (turned - Math.sin(turned));
    expect(curve).toMatchObject({ kind: 'arcs', segments: [{ corner: 1 }] });
    const [first] = curve?.kind === 'arcs' ? curve.segments : [];
    expectNear(first?.radius ?? Number.NaN, 2.5, 1e-12, 'm'); // 2² + 1.5² = 2.5²
    expectNear(first?.turnedDeg ?? Number.NaN, (turned * 180) / Math.PI, 1e-9, '°');
    expectNear(areaOf(curve), 16 + segment, 1e-9, 'm²'); // the square and the segment
  });

  test('an arc through a point on its chord is straight, and straight edges have no formula but the corners’', () => {
    expect(curveWorking(squareWithArc({ xM: 2, yM: 0 }), 'metric')).toMatchObject({ segments: [], area: 16 }); // 4²
    expect(curveWorking(straight(rect(0, 0, 4, 4)), 'metric')).toBeNull();
  });

  test('smooth edges are counted', () => {
    const [a, ...rest] = rect(0, 0, 4, 4) as [TracedCorner, ...TracedCorner[]];
    const smooth: Traced = { kind: 'corners', corners: [{ ...a, run: { kind: 'smooth' } }, ...rest] };
    expect(curveWorking(smooth, 'metric')).toEqual({ kind: 'smooth', edges: 1 }); // the one above
  });
});

test('the ring a curve is computed with has the area of its formula', () => {
  const traced: readonly Traced[] = [
    { kind: 'circle', centre: { xM: 3, yM: 2 }, radiusM: 7 },
    { kind: 'ellipse', centre: { xM: 3, yM: 2 }, halfLengthM: 9, halfWidthM: 4, bearingDeg: 20 },
    squareWithArc({ xM: 2, yM: -1 }),
    squareWithArc({ xM: 1, yM: 1 }),
    squareWithArc({ xM: 2, yM: -4 }),
  ];
  for (const each of traced) {
    const { area, curve } = tracedWorking(each, 'metric');
    expectNear(area, areaOf(curve), 1e-4, 'm²'); // corners are shown to a millionth of a metre
  }
  const { area } = tracedWorking({ kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 3 }, 'us');
  expectNear(area, 28.274_333_882 / SQUARE_FOOT_M2, 1e-3, 'ft²'); // π 3²
});
