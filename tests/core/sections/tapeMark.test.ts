import { expect, test } from 'vitest';
import { tapeMarkM } from '../../../core/sections/index.ts';

test('a flag is set to half a foot or a tenth of a metre', () => {
  expect(tapeMarkM('us')).toBeCloseTo(0.1524, 12); // 0.3048 m / 2, international foot (Fed. Reg. 85:62698)
  expect(tapeMarkM('metric')).toBe(0.1);
});
