import { expect, test } from 'vitest';
import { tracedRing } from '../../../core/curves/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import { findFlagTapes } from '../../../core/sheet/flagTape.ts';
import { outline, rect } from '../../support/builders.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';
import { expectNear } from '../../support/expectNear.ts';

const { yard, plan } = handMadePlan(THREE_ZONES);

test('a flag is taped along its edge from the nearer corner', () => {
  const cut = plan.ground.cutLines[0];
  if (cut === undefined) throw new Error('no cut line');
  const [south, north] = findFlagTapes(yard, cut, plan.ground.cutLines);
  expectNear(south?.alongM ?? Number.NaN, 13.2, 1e-9, 'm'); // the fixture cuts at x = 13.2 m from a corner at x = 0
  expect(north?.corner).toEqual({ xM: 0, yM: 30 }); // the north-west corner of the back lawn in the fixture
  expect([south?.cornerName, north?.cornerName]).toEqual(['SW corner', 'NW corner']);
});

test('past the middle of the edge the other corner is nearer', () => {
  const cut = plan.ground.cutLines[1];
  if (cut === undefined) throw new Error('no cut line');
  expectNear(findFlagTapes(yard, cut, plan.ground.cutLines)[0]?.alongM ?? Number.NaN, 13.6, 1e-9, 'm'); // 40 - 26.4
});

test('a corner whose distance a tape can set comes before a nearer one', () => {
  const lawns = [outline('zone', 'west', rect(0, 0, 9.93, 5)), outline('zone', 'both', rect(0, 5, 20, 5))];
  const cut = { from: { xM: 8.5, yM: 5 }, to: { xM: 8.5, yM: 10 }, between: ['A1', 'A2'], cut: 0 } as const;
  const details = { ...yard.details, unitSystem: 'metric' as const };
  const [low] = findFlagTapes({ ...yard, details, outlines: lawns }, cut, []);
  // 1.43 m from the corner at 9.93; 8.5 m, a tenth, from that at 0.
  expectNear(low?.alongM ?? Number.NaN, 8.5, 1e-9, 'm');
  expect(low?.corner).toMatchObject({ xM: 0, yM: 5 });
});

test('an end that lies on no straight edge and no line has no tape', () => {
  const crown = { from: { xM: 6, yM: 6.7 }, to: { xM: 6, yM: 20 }, between: ['B1', 'B2'], cut: 0 } as const;
  // 6.7 is the top of the maple's crown (5 + 1.7), drawn in steps under a metre; the line to the edge at y = 20 is its own
  const [from, to] = findFlagTapes(yard, crown, []);
  expect(from).toBeUndefined();
  expect(to?.alongM).toBe(6); // from the corner at x = 0 or at x = 12, as far either way
});

test('an end on a curve has no tape, however long the chords it is drawn with', () => {
  const wide = {
    kind: 'corners' as const,
    corners: [
      { xM: 0, yM: 0, run: { kind: 'arc' as const, via: { xM: 100, yM: -10 } } },
      { xM: 200, yM: 0 },
      { xM: 200, yM: 60 },
      { xM: 0, yM: 60 },
    ],
  };
  const lawn = { ...outline('zone', 'lawn', rect(0, 0, 1, 1)), outer: wide };
  const drawn = tracedRing(wide);
  const flag = drawn[10] ?? { xM: 0, yM: 0 };
  expect(distanceM(flag, drawn[11] ?? flag)).toBeGreaterThan(2); // longer than the least edge a tape is held to
  const cut = { from: flag, to: { xM: flag.xM, yM: 60 }, between: ['A1', 'A2'], cut: 0 } as const;
  const [low, high] = findFlagTapes({ ...yard, outlines: [lawn] }, cut, []);
  expect(low).toBeUndefined();
  expect(high?.cornerName).toBe('NW corner');
  expectNear(high?.alongM ?? Number.NaN, flag.xM, 1e-9, 'm'); // from (0, 60)
});

test('an end on another cut line is taped along that line from its flag on the edge', () => {
  const across = { from: { xM: 0, yM: 25 }, to: { xM: 10, yM: 25 }, between: ['A1', 'A2'], cut: 0 } as const;
  const further = {
    from: { xM: 10, yM: 25 },
    to: { xM: 24, yM: 25 },
    between: ['A3', 'A2'],
    cut: 0,
  } as const;
  const up = { from: { xM: 10, yM: 25 }, to: { xM: 10, yM: 30 }, between: ['A1', 'A3'], cut: 0 } as const;
  const [from] = findFlagTapes(yard, up, [across, further, up]);
  expect([from?.cornerName, from?.outline]).toEqual(['flag on edge', null]);
  expect(from?.alongM).toBe(5); // up from y = 25 to its own flag on the edge at y = 30, nearer than 10 m to x = 0
  expect(findFlagTapes(yard, further, [across, further])[1]?.alongM).toBe(24); // through both pieces from x = 0
});

test('every flag of an L-shaped lawn stands where its tape says', () => {
  const made = handMadePlan(NINE_SECTIONS);
  let checked = 0;
  for (const cut of made.plan.ground.cutLines) {
    for (const tape of findFlagTapes(made.yard, cut, made.plan.ground.cutLines)) {
      if (tape === undefined) continue;
      const apart = Math.hypot(tape.flag.xM - tape.corner.xM, tape.flag.yM - tape.corner.yM);
      expectNear(apart, tape.alongM, 1e-9, 'm'); // straight-line distance along a straight edge
      checked++;
    }
  }
  expect(checked).toBe(16); // 8 cut lines with two ends each, all on straight edges
});
