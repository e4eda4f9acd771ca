import { expect, test } from 'vitest';
import { outsideOnto } from '../../../core/passes/outsideOnto.ts';
import { swathPieces } from '../../../core/passes/swathPieces.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const LAWN = [region(rect(0, 0, 10, 4))];
/** East of the lawn a walk 1 m wide, then a pond that reaches a metre under it. */
const BESIDE = [
  { kind: 'water', regions: [region(rect(10.5, 0, 9.5, 4))] },
  { kind: 'hardscape', regions: [region(rect(10, 0, 1, 4))] },
] as const;

function swaths(...lines: ReturnType<typeof points>[]) {
  return swathPieces(
    lines.map((line) => ({ line, sectionId: 'A1', round: 1 })),
    2,
  );
}

test('spray off the lawn is told by what it falls on', () => {
  const outside = outsideOnto(swaths(points([-3, 1], [13, 1])), [], LAWN, BESIDE);
  expectNear(outside.elsewhere, 6, 1e-9, 'm²'); // 3 m x 2 m in the west, where nothing is drawn
  expectNear(outside.hardscape, 1, 1e-9, 'm²'); // 0.5 m x 2 m of the walk
  expectNear(outside.water, 5, 1e-9, 'm²'); // 2.5 m x 2 m; under the walk too, for water is told first
  expect(outside.bed).toBe(0); // there is none
});

test('ground reached twice is outside once, and not at all when it was counted before', () => {
  const line = points([9, 1], [13, 1]);
  const twice = outsideOnto(swaths(line, line), [], LAWN, []);
  expectNear(twice.elsewhere, 6, 1e-9, 'm²'); // 3 m x 2 m
  const again = outsideOnto(swaths(line), swaths(points([9, 1], [12, 1])), LAWN, []);
  expectNear(again.elsewhere, 2, 1e-9, 'm²'); // 1 m x 2 m beyond what was counted
});
