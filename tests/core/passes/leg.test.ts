import { expect, test } from 'vitest';
import { type Leg, turnedRun } from '../../../core/passes/leg.ts';
import { points } from '../../support/builders.ts';

test('a run turned round is walked last first, each leg from its other end', () => {
  const legs = points([0, 0], [5, 0], [9, 9]).map((enter): Leg => {
    const leave = { xM: enter.xM + 1, yM: enter.yM };
    return { walk: { kind: 'lane', line: [enter, leave], isRing: false }, enter, leave };
  });
  const turned = turnedRun(legs);
  expect(turned.map((leg) => leg.enter.xM)).toEqual([10, 6, 1]); // the ends, backwards
  expect(turnedRun(turned)).toEqual(legs); // the law: twice turned is as before
});
