import { expect, test } from 'vitest';
import { reversedRing, signedAreaM2 } from '../../../core/kernel/index.ts';
import { rect } from '../../support/builders.ts';

test('a ring turned about holds its ground with the other sign, and turned again is itself', () => {
  const ring = rect(1, 2, 3, 4);
  const turned = reversedRing(ring);
  expect(signedAreaM2(turned)).toBe(-12); // 3 × 4, clockwise
  expect(reversedRing(ring)).toBe(turned); // the same object, or what is cached by it would be made anew
  expect(reversedRing(turned)).toBe(ring); // and back
});
