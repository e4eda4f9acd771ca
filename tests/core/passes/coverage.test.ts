import { expect, test } from 'vitest';
import { byKind, type GroundCoverage, sumCoverage } from '../../../core/passes/coverage.ts';

function part(onceM2: number, bedM2: number): GroundCoverage {
  return {
    treatedM2: onceM2 + 3,
    onceM2,
    shortM2: 0,
    twiceM2: 2,
    missedM2: 1,
    outsideM2: bedM2,
    outsideOntoM2: byKind((kind) => (kind === 'bed' ? bedM2 : 0)),
    depthsM2: [1, onceM2, 2, 0, 0],
    rounds: [{ onceM2, twiceM2: 2, missedM2: 1 }],
    sweptM2: onceM2 + 5,
  };
}

test('the whole is the sum of its sections, figure by figure', () => {
  const whole = sumCoverage([part(10, 0.5), part(20, 0.25)], 1);
  expect(whole).toEqual({
    ...part(30, 0.75),
    treatedM2: 36, // 13 + 23
    twiceM2: 4, // 2 + 2
    missedM2: 2, // 1 + 1
    depthsM2: [2, 30, 4, 0, 0], // depth by depth
    rounds: [{ onceM2: 30, twiceM2: 4, missedM2: 2 }], // the one round
    sweptM2: 40, // 15 + 25
  });
});

test('no section covers nothing', () => {
  expect(sumCoverage([], 2).rounds).toEqual([
    { onceM2: 0, twiceM2: 0, missedM2: 0 }, // first round
    { onceM2: 0, twiceM2: 0, missedM2: 0 }, // second round
  ]);
});
