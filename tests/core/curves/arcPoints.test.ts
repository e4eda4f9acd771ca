import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Arc, arcOf, MOST_OFF_CURVE_M } from '../../../core/curves/index.ts';
import { arcChords, arcPoints } from '../../../core/curves/arcPoints.ts';
import { areaToChordM2, arcSamples, mostApartM } from '../../support/curveSamples.ts';
import { expectNear } from '../../support/expectNear.ts';

/** An arc of a radius about a middle, from an angle on, and the line that is drawn for it. */
function drawn(
  radiusM: number,
  sweepRad: number,
  startRad = 0.3,
): { arc: Arc; line: { xM: number; yM: number }[] } {
  const [from, via, to] = [0, 0.5, 1].map((share) => ({
    xM: 12 + radiusM * Math.cos(startRad + share * sweepRad),
    yM: -7 + radiusM * Math.sin(startRad + share * sweepRad),
  })) as [Arc['from'], Arc['from'], Arc['from']];
  const arc = arcOf(from, via, to);
  if (arc === null) throw new Error('no arc');
  return { arc, line: [from, ...arcPoints(arc), to] };
}

const ARCS = fc.record({
  radiusM: fc.double({ min: 0.05, max: 200, noNaN: true }),
  sweepRad: fc.oneof(
    fc.double({ min: 0.02, max: 6.2, noNaN: true }),
    fc.double({ min: -6.2, max: -0.02, noNaN: true }),
  ),
});

test('the ground between an arc and its chord is that of the segment, ½ r² (θ − sin θ)', () => {
  fc.assert(
    fc.property(ARCS, ({ radiusM, sweepRad }) => {
      const areaM2 = areaToChordM2(drawn(radiusM, sweepRad).line);
      const trueM2 = (radiusM ** 2 * (sweepRad - Math.sin(sweepRad))) / 2; // closed form
      expectNear(areaM2, trueM2, 1e-11 * radiusM ** 2 + 1e-12, 'm²');
    }),
    { seed: 20261125, numRuns: 500 },
  );
});

test('the line drawn is nowhere farther than 2 mm from the arc, nor the arc from it', () => {
  fc.assert(
    fc.property(ARCS, ({ radiusM, sweepRad }) => {
      const { arc, line } = drawn(radiusM, sweepRad);
      const via = {
        xM: 12 + radiusM * Math.cos(0.3 + sweepRad / 2),
        yM: -7 + radiusM * Math.sin(0.3 + sweepRad / 2),
      };
      // 600 chords of the true arc leave it by at most r (θ/600)²/8, taken off the promise.
      const ownM = (radiusM * (sweepRad / 600) ** 2) / 8;
      const offM = mostApartM(line, arcSamples(arc.from, via, arc.to, 600));
      expect(offM).toBeLessThanOrEqual(MOST_OFF_CURVE_M + ownM);
    }),
    { seed: 20261125, numRuns: 40 },
  );
});

test('half a circle of 5 m takes some fifty corners; 2 mm is used up', () => {
  const { arc } = drawn(5, Math.PI);
  // (5/12)²/2 · r φ² = 2 mm asks for π √(0.0868 · 5 / 0.002) = 46.3 chords
  expect(arcChords(arc)).toBeGreaterThanOrEqual(47);
  expect(arcChords(arc)).toBeLessThan(50);
});

test('an arc so flat that its middle is 30,000 km off keeps its bulge', () => {
  const [from, via, to] = [
    { xM: 0, yM: 0 },
    { xM: 50, yM: -4e-5 },
    { xM: 100, yM: 0 },
  ];
  const arc = arcOf(from, via, to);
  if (arc === null) throw new Error('no arc');
  const areaM2 = areaToChordM2([from, ...arcPoints(arc), to]);
  expectNear(areaM2, (2 / 3) * 100 * 4e-5, 1e-12, 'm²'); // a parabola's segment: two thirds of chord × bulge
});

test('an arc of absurd size has few corners, all of them numbers', () => {
  for (const sizeM of [1e7, 1e12, 1e150]) {
    const arc = arcOf({ xM: -sizeM, yM: 0 }, { xM: 0, yM: sizeM }, { xM: sizeM, yM: 0 });
    if (arc === null) throw new Error('no arc');
    const points = arcPoints(arc);
    expect(points.length).toBeLessThan(100);
    expect(points.every(({ xM, yM }) => Number.isFinite(xM) && Number.isFinite(yM))).toBe(true);
  }
});
