import { expect, test } from 'vitest';
import { previewOf } from '../../../renderer/drawing/index.ts';
import { cutNear } from '../../../renderer/map/cutNear.ts';
import { WalkHand } from '../../support/walkHand.ts';

test('a click near a cut means the cut, the nearer of two', () => {
  const hand = new WalkHand();
  hand.do({ kind: 'take', tool: { kind: 'add-cut' } }).type('9,0', '9,10');
  const { walk } = previewOf(hand.state, hand.context);
  if (walk === null) throw new Error('no walk');
  // The plan’s cut is at 8 m, the one added at 9 m.
  expect(cutNear(walk, { xM: 8.3, yM: 5 }, 1)).toBe('8.00 0.00 8.00 10.00');
  expect(cutNear(walk, { xM: 8.6, yM: 5 }, 1)).toBe('new-1');
  expect(cutNear(walk, { xM: 5, yM: 5 }, 1)).toBeUndefined();
});
