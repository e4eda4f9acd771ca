import { expect, test } from 'vitest';
import { regionsAreaM2 } from '../../../core/kernel/index.ts';
import { type CoverageRequest, DEEPEST, measureCoverage, swathInk } from '../../../core/passes/index.ts';
import type { Ring, YardPoint } from '../../../core/spaces.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const SWATH_M = 2;

/** Two sections walked with pivots, a bend and a lane that runs off the lawn. */
const REQUEST: CoverageRequest = {
  sections: [
    { id: 'A1', region: region(rect(0, 0, 12, 8)) },
    { id: 'A2', region: region(rect(12, 0, 8, 8)) },
  ],
  untreated: [],
  passes: [
    passOf('A1', points([1, 1], [11, 1], [11, 7], [1, 7], [1, 1])),
    passOf('A1', points([3, 2.5], [6, 2.2], [9, 4], [7, 5.5], [2, 5])),
    passOf('A1', points([2, 2], [9, 2])),
    passOf('A2', points([13, 7], [13, 1], [21, 1])),
    passOf('A2', points([19, 2.5], [14, 2.5])),
  ],
  swathM: SWATH_M,
  rounds: 1,
};

function passOf(sectionId: string, line: readonly YardPoint[]) {
  return { line, lengthM: 1, sectionId, round: 1 as const };
}

test('as many pieces are inked over the ground as are counted there', () => {
  const coverage = measureCoverage(REQUEST);
  const { pieces } = swathInk(REQUEST, coverage);
  const stepM = 0.04;
  const counted = Array.from({ length: DEEPEST + 1 }, () => 0);
  for (let yM = stepM / 2; yM < 8; yM += stepM) {
    for (let xM = stepM / 2; xM < 20; xM += stepM) {
      const depth = pieces.filter((rings) => isInked(rings, { xM, yM })).length;
      const place = Math.min(depth, DEEPEST);
      counted[place] = (counted[place] as number) + stepM * stepM;
    }
  }
  expect(counted.slice(0, 4).every((areaM2) => areaM2 > 1)).toBe(true); // the ground has every depth up to three
  coverage.depthsM2.forEach((areaM2, depth) => {
    // Points counted on a grid: some 120 m of edges, each cell on them in or out by half.
    expectNear(counted[depth] as number, areaM2, 0.25, 'm²');
  });
});

test('what is inked outside is what was measured outside', () => {
  const coverage = measureCoverage(REQUEST);
  const { outside } = swathInk(REQUEST, coverage);
  expectNear(regionsAreaM2(outside), 2, 1e-4, 'm²'); // the pass that runs to 21 m treats 1 m x 2 m east of the lawn
  expectNear(regionsAreaM2(outside), coverage.outsideM2, 1e-4, 'm²'); // 20 m of edge on the kernel's grid
});

test('passes that stay on the treated ground ink nothing outside', () => {
  const inside = { ...REQUEST, passes: REQUEST.passes.filter(({ line }) => line.every(({ xM }) => xM < 20)) };
  expect(swathInk(inside, measureCoverage(inside)).outside).toEqual([]); // nothing
});

/** By the rule the sketch fills with: wound round other than 0 times. */
function isInked(rings: readonly Ring[], at: YardPoint): boolean {
  let winds = 0;
  for (const ring of rings) {
    ring.forEach((a, place) => {
      const b = ring[(place + 1) % ring.length] as YardPoint;
      if (a.yM <= at.yM === b.yM <= at.yM) return;
      const xM = a.xM + ((at.yM - a.yM) / (b.yM - a.yM)) * (b.xM - a.xM);
      if (xM > at.xM) winds += b.yM > a.yM ? 1 : -1;
    });
  }
  return winds !== 0;
}
