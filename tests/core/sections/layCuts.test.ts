import { expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { growTree } from '../../../core/sections/cutTree.ts';
import { layCuts } from '../../../core/sections/layCuts.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const share = { region: region(rect(0, 0, 30.7, 4)), loads: 3, rests: [] };
const never = (): boolean => false;

function laid(markM: number | null, loadAreaM2: number) {
  const lay = { laneRad: 0, swathM: 1, markM, loadAreaM2 };
  const tree = growTree(share, lay, { partings: 20, mostFirst: 4, hasty: false, work: { left: 1e8 } }, never);
  return tree && layCuts(tree, share, lay, () => undefined);
}

test('without marks every section has its equal part', () => {
  const piece = laid(null, 1e9);
  expect(piece?.parts.length).toBe(3);
  for (const { region: part } of piece?.parts ?? []) {
    expectNear(regionAreaM2(part), (30.7 * 4) / 3, 1e-6, 'm²'); // a third of the rectangle
  }
});

test('with marks every end is a whole tenth of a metre from a corner, and no load is over', () => {
  const piece = laid(0.1, (30.7 * 4 * 1.02) / 3);
  const eastings = piece?.cuts.flatMap(([from, to]) => [from.xM, to.xM]) ?? [];
  expect(eastings.length).toBe(4);
  for (const xM of eastings) expectNear(10 * xM, Math.round(10 * xM), 1e-6, 'marks');
  for (const { region: part } of piece?.parts ?? []) {
    expect(regionAreaM2(part)).toBeLessThanOrEqual((30.7 * 4 * 1.02) / 3); // the room of one load
  }
});
