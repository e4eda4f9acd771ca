import { expect, test } from 'vitest';
import { coverSection } from '../../../core/passes/coverSection.ts';
import { swathPieces } from '../../../core/passes/swathPieces.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const SECTION = { id: 'A1', region: region(rect(0, 0, 10, 4)) };

test('ground is told by how often it is covered, by whosever swath', () => {
  const pieces = swathPieces(
    [
      { line: points([0, 1], [10, 1]), sectionId: 'A1', round: 1 },
      { line: points([0, 1], [5, 1]), sectionId: 'A2', round: 1 },
      { line: points([0, 1], [2, 1]), sectionId: 'A2', round: 1 },
    ],
    2,
  );
  const covered = coverSection(SECTION, pieces, 1);
  expectNear(covered.missedM2, 20, 1e-9, 'm²'); // the north half of 10 m x 4 m
  expectNear(covered.onceM2, 10, 1e-9, 'm²'); // 5 m x 2 m under one pass
  expectNear(covered.twiceM2, 10, 1e-9, 'm²'); // 5 m x 2 m under two or three
  expect(covered.depthsM2.map((areaM2) => Math.round(areaM2))).toEqual([20, 10, 6, 4, 0]); // 2 m x 2 m under three
  expectNear(covered.strayedM2, 0, 1e-9, 'm²'); // nothing leaves
});

test('in two rounds at half the rate, ground covered by one of them is short', () => {
  const pieces = swathPieces(
    [
      { line: points([0, 1], [10, 1]), sectionId: 'A1', round: 1 },
      { line: points([1, 0], [1, 4]), sectionId: 'A1', round: 2 },
      { line: points([1, 0], [1, 1]), sectionId: 'A1', round: 2 },
    ],
    2,
  );
  const covered = coverSection(SECTION, pieces, 2);
  expectNear(covered.missedM2, 16, 1e-9, 'm²'); // 8 m x 2 m in the north
  expectNear(covered.shortM2, 16 + 4, 1e-9, 'm²'); // 8 m x 2 m by the first round, 2 m x 2 m by the second
  expectNear(covered.onceM2, 2, 1e-9, 'm²'); // 2 m x 1 m by each round once
  expectNear(covered.twiceM2, 2, 1e-9, 'm²'); // 2 m x 1 m three times
  expectNear(covered.rounds[0]?.onceM2 ?? 0, 20, 1e-9, 'm²'); // 10 m x 2 m
  expectNear(covered.rounds[1]?.twiceM2 ?? 0, 2, 1e-9, 'm²'); // 2 m x 1 m
  expectNear(covered.rounds[1]?.missedM2 ?? 0, 32, 1e-9, 'm²'); // 8 m x 4 m
});

test('what its own swaths treat beside it strays; what others treat there does not', () => {
  const pieces = swathPieces(
    [
      { line: points([9, 1], [12, 1]), sectionId: 'A1', round: 1 },
      { line: points([-5, 1], [-1, 1]), sectionId: 'A2', round: 1 },
    ],
    2,
  );
  expectNear(coverSection(SECTION, pieces, 1).strayedM2, 4, 1e-9, 'm²'); // 2 m x 2 m east of the section
});
