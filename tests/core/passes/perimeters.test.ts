import { describe, expect, test } from 'vitest';
import { lineLengthM, offsetRegions, regionsAreaM2 } from '../../../core/kernel/index.ts';
import { lanesAcross } from '../../../core/passes/lanes.ts';
import { findOpenEdges, type OpenEdges } from '../../../core/passes/openEdges.ts';
import { fullPerimeters, partPerimeters } from '../../../core/passes/perimeters.ts';
import { lShape, points, rect, region } from '../../support/builders.ts';
import { coverageOf } from '../../support/coverageOf.ts';
import { expectNear } from '../../support/expectNear.ts';

test('round every edge runs a ring for the outside and one for each bed', () => {
  const ground = region(rect(0, 0, 20, 12), rect(8, 4, 3, 3));
  const { walks, inner } = fullPerimeters(ground, offsetRegions([ground], -1), 2);
  expect(walks.map((walk) => walk.isRing)).toEqual([true, true]); // outside and bed
  // Closed form: 16 x 8 less the bed grown by 2 m: 9 + 4 x 3 x 2 + pi 2².
  expectNear(regionsAreaM2(inner), 128 - (33 + 4 * Math.PI), 0.02, 'm²');
});

test('with all edges open nothing is walked and all is left to lanes', () => {
  const ground = region(rect(0, 0, 20, 12));
  const open = findOpenEdges(ground, 0, 2) as OpenEdges;
  const { walks, inner } = partPerimeters(ground, open, 2);
  expect(walks).toEqual([]);
  expectNear(regionsAreaM2(inner), 240, 1e-3, 'm²'); // 20 x 12
});

describe('lanes up to open edges', () => {
  const cases = {
    'a rectangle whose width is no whole number of swaths': region(rect(0, 0, 20, 11)),
    'an L': region(lShape(20, 12, 8, 5)),
    'a rectangle with a bed': region(rect(0, 0, 20, 13), rect(8, 4, 3, 3)),
    'a slanting side': region(points([0, 0], [20, 0], [24, 12], [0, 12])),
  };
  test.each(Object.entries(cases))('treat %s with nothing thrown out and little missed', (_, ground) => {
    const open = findOpenEdges(ground, 0, 2) as OpenEdges;
    const { walks, inner } = partPerimeters(ground, open, 2);
    const lanes = lanesAcross(inner, 0, 2, open);
    const lines = [
      ...walks.map(({ line, isRing }) => (isRing ? [...line, line[0] as (typeof line)[0]] : line)),
      ...lanes,
    ];
    expect(lineLengthM(lines[0] ?? [])).toBeGreaterThan(0);
    const coverage = coverageOf(
      [ground],
      lines.map((line) => ({ line })),
      2,
    );
    expect(coverage.outsideM2).toBeLessThan(0.001 * coverage.treatedM2); // edges are square to 1 degree or better
    expect(coverage.missedM2).toBeLessThan(0.005 * coverage.treatedM2); // rounded corners at most
  });
});
