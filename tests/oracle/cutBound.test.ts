import { describe, expect, test } from 'vitest';
import { planSections } from '../../core/sections/index.ts';
import { moved, rect, region } from '../support/builders.ts';
import { bestSquareCutM, leastCutM, usualCutM } from '../support/cutBound.ts';
import { expectNear } from '../support/expectNear.ts';

const ELONGATIONS = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 8];
const SECTIONS = [2, 3, 4, 5, 6, 7, 9, 12];
/** Turned off the compass, so that no direction tried is right by chance. */
const TURN_RAD = 0.3;
/** A part of the length: cuts are placed by area to 1e-8 of the piece. */
const SLACK = 1e-6;
/** The search tries a part of all cuts, a smaller one the more sections there are. */
const mostOverBest = (k: number): number => (k <= 7 ? 1.03 : 1.07);

/** Length of our cuts, the ground 900 m², as a part of the side of a square as large. */
function ourCutM(k: number, elongation: number): number {
  const [sideM, root] = [30, Math.sqrt(elongation)];
  const ground = region(moved(rect(0, 0, sideM * root, sideM / root), TURN_RAD, 12, -7));
  const cut = planSections(
    { zoneId: 'z', zoneName: 'Z', letter: 'A', treated: [ground] },
    {
      loadAreaM2: (sideM ** 2 / k) * (1 + 1e-9),
      policy: 'even',
      headingDeg: null,
      swathM: 1,
      markM: null,
    },
  );
  if (!cut.ok) throw new Error(JSON.stringify(cut.problems[0]));
  expect(cut.value.sections.length).toBe(k);
  return (
    cut.value.cuts.reduce((sum, { from, to }) => sum + Math.hypot(to.xM - from.xM, to.yM - from.yM), 0) /
    sideM
  );
}

describe.each(ELONGATIONS)('a rectangle %f times as long as wide', (elongation) => {
  test.each(SECTIONS)('in %i sections is cut no shorter than can be, and near to the best', (k) => {
    const ourM = ourCutM(k, elongation);
    expect(ourM).toBeGreaterThanOrEqual(leastCutM(k, elongation) * (1 - SLACK)); // derived in support/cutBound.ts
    expect(ourM).toBeLessThanOrEqual(bestSquareCutM(k, elongation) * mostOverBest(k)); // all ways tried
  });
});

describe('the bound', () => {
  test('of a square in four is three parts with two edges in a corner and one with three', () => {
    const [octagon, dodecagon] = [
      Math.sqrt(2 * Math.tan(Math.PI / 8)),
      Math.sqrt(3 * Math.tan(Math.PI / 12)),
    ];
    expectNear(leastCutM(4, 1), (3 * octagon + dodecagon) / 2, 1e-12, 'sides'); // by hand, 4 · 4 - 7 = 9 edges
    // Four quarter discs, whatever the cuts are like: relative isoperimetric inequality of a corner.
    expect(leastCutM(4, 1)).toBeGreaterThan(2 * Math.sqrt(Math.PI / 4));
  });

  test.each(SECTIONS)('is met by strips where the ground is long enough, %i sections', (k) => {
    const elongation = 2 * k;
    const strips = (k - 1) / Math.sqrt(elongation); // k - 1 cuts as long as the ground is wide
    expectNear(leastCutM(k, elongation), strips, 1e-12, 'sides');
    expectNear(bestSquareCutM(k, elongation), strips, 1e-12, 'sides');
  });

  test('is never above cuts that can be made', () => {
    for (const k of SECTIONS) {
      for (const elongation of ELONGATIONS) {
        expect(leastCutM(k, elongation)).toBeLessThanOrEqual(bestSquareCutM(k, elongation) + 1e-12); // all ways tried
      }
    }
  });

  test('keeps four sections from 1.15 times the usual cut on any rectangle shorter than three times its width', () => {
    for (let elongation = 1; elongation < 3; elongation += 0.01) {
      expect(leastCutM(4, elongation) / usualCutM(4)).toBeGreaterThan(1.15);
    }
    // Strips: 3 / √e over 3 / 2 is 1.15 at e = 4 / 1.15², and there the bound allows them.
    expectNear(leastCutM(4, 4 / 1.15 ** 2) / usualCutM(4), 1.15, 1e-12, 'usual cuts');
  });
});

test('four equal quarters of a square take two cuts right across, a third more than the usual', () => {
  expectNear(ourCutM(4, 1) / usualCutM(4), 4 / 3, 1e-6, 'usual cuts'); // 2 over 3 / 2
});
