import { expect, test } from 'vitest';
import { measureCoverage } from '../../../core/passes/index.ts';
import { points, rect, region } from '../../support/builders.ts';
import { coverageOf } from '../../support/coverageOf.ts';
import { expectNear } from '../../support/expectNear.ts';

const GROUND = [region(rect(0, 0, 20, 4))];

test('two passes side by side cover once and no more', () => {
  const passes = [{ line: points([0, 1], [20, 1]) }, { line: points([20, 3], [0, 3]) }];
  const coverage = coverageOf(GROUND, passes, 2);
  expectNear(coverage.onceM2, 80, 1e-3, 'm²'); // 20 m x 4 m
  expectNear(coverage.twiceM2 + coverage.missedM2 + coverage.outsideM2, 0, 1e-3, 'm²'); // nothing else
});

test('overlap, gap and overthrow are each told', () => {
  // One pass 1 m too far west, one 0.5 m too near the first, the east end 2 m short.
  const passes = [{ line: points([-1, 1], [20, 1]) }, { line: points([18, 2.5], [0, 2.5]) }];
  const coverage = coverageOf(GROUND, passes, 2);
  expectNear(coverage.outsideM2, 2, 1e-3, 'm²'); // worked by hand: 1 m x 2 m
  expectNear(coverage.twiceM2, 9, 1e-3, 'm²'); // worked by hand: 18 m x 0.5 m
  expectNear(coverage.missedM2, 18 * 0.5 + 2 * 2, 1e-3, 'm²'); // worked by hand: the north strip and the end
});

test('the parts always sum to the ground', () => {
  const passes = [{ line: points([-3, 0.3], [12, 3], [19, 1]) }, { line: points([4, 4], [4, -2], [16, 3]) }];
  const { treatedM2, onceM2, twiceM2, missedM2 } = coverageOf(GROUND, passes, 1.3);
  expectNear(onceM2 + twiceM2 + missedM2, treatedM2, 1e-9, 'm²'); // the balance
  expect(Math.min(onceM2, twiceM2, missedM2)).toBeGreaterThan(0);
});

test('ground walked three times counts once as twice', () => {
  const line = points([0, 2], [20, 2]);
  const coverage = coverageOf(GROUND, [{ line }, { line }, { line }], 2);
  expectNear(coverage.twiceM2, 40, 1e-3, 'm²'); // 20 m x 2 m, however often
});

test('no pass misses everything', () => {
  expectNear(coverageOf(GROUND, [], 2).missedM2, 80, 1e-9, 'm²'); // 20 m x 4 m
});

test('a swath that leaves its section is counted where it falls, and the whole is the sum of the sections', () => {
  const sections = [
    { id: 'A1', region: region(rect(0, 0, 10, 2)) },
    { id: 'A2', region: region(rect(10, 0, 10, 2)) },
  ];
  // The first runs 3 m into its neighbour, the second 1 m back and 2 m off the lawn onto a bed of 1.5 m.
  const lines = [points([0, 1], [13, 1]), points([22, 1], [9, 1])];
  const coverage = measureCoverage({
    sections,
    untreated: [{ kind: 'bed', regions: [region(rect(20, 0, 1.5, 2))] }],
    passes: lines.map((line, i) => ({ line, lengthM: 13, sectionId: `A${i + 1}`, round: 1 })),
    swathM: 2,
    rounds: 1,
  });
  const [first, second] = coverage.sections;
  expectNear(first?.twiceM2 ?? 0, 2, 1e-9, 'm²'); // 1 m x 2 m
  expectNear(second?.twiceM2 ?? 0, 6, 1e-9, 'm²'); // 3 m x 2 m
  expectNear(first?.outsideM2 ?? 1, 0, 1e-9, 'm²'); // it stays on the lawn
  expectNear(second?.outsideOntoM2.bed ?? 0, 3, 1e-9, 'm²'); // 1.5 m x 2 m
  expectNear(second?.outsideOntoM2.elsewhere ?? 0, 1, 1e-9, 'm²'); // 0.5 m x 2 m
  expectNear(coverage.twiceM2, 8, 1e-9, 'm²'); // 2 + 6
  expectNear(coverage.outsideM2, 4, 1e-9, 'm²'); // 2 m x 2 m
  expectNear(coverage.sweptM2, 52, 1e-9, 'm²'); // 2 x 13 m x 2 m
});

test('ground outside that two sections reach counts at the first', () => {
  const sections = [
    { id: 'A1', region: region(rect(0, 0, 10, 2)) },
    { id: 'A2', region: region(rect(0, 2, 10, 2)) },
  ];
  const coverage = measureCoverage({
    sections,
    untreated: [],
    passes: ['A2', 'A1'].map((sectionId) => {
      return { line: points([5, 2], [14, 2]), lengthM: 9, sectionId, round: 1 };
    }),
    swathM: 2,
    rounds: 1,
  });
  expectNear(coverage.sections[0]?.outsideM2 ?? 0, 8, 1e-9, 'm²'); // 4 m x 2 m
  expectNear(coverage.sections[1]?.outsideM2 ?? 1, 0, 1e-9, 'm²'); // counted there
});
