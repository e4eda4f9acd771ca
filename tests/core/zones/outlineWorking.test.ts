import { expect, test } from 'vitest';
import { SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import { outlineSumWords, outlineText, outlineWorking } from '../../../core/zones/outlineWorking.ts';
import { outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const METRIC = { frame: { kind: 'loose' }, unitSystem: 'metric' } as const;

test('a bed is worked to its own whole area, whatever lies round it', () => {
  const working = outlineWorking(outline('bed', 'Roses', rect(1, 2, 4, 3)), METRIC);
  expect(working.area).toBe(12); // 4 * 3
  const text = outlineText(working);
  expect(text).toContain('Working of Roses');
  expect(text).toContain('1/2 × (');
  expect(text).toContain('Own area: 12.000 m², shown 12.0 m²'); // 4 * 3
});

test('holes are taken off one by one', () => {
  const pierced = outline('hardscape', 'Court', rect(0, 0, 10, 10), rect(1, 1, 2, 2), rect(5, 5, 3, 1));
  // 100 - 4 - 3
  expect(outlineSumWords(outlineWorking(pierced, METRIC))).toBe(
    'edge 100.000 - hole 1 4.000 - hole 2 3.000 = 93.000 m², shown 93.0 m²',
  );
});

test('a hole that reaches over the edge takes only what lies inside', () => {
  const open = outline('bed', 'Bite', rect(0, 0, 10, 10), rect(8, 0, 4, 5));
  const working = outlineWorking(open, METRIC);
  expectNear(working.area, 90, 1e-4, 'm²'); // 100 - 2 * 5
  expect(outlineSumWords(working)).toContain('less what of its holes lies in it once, = 90.000 m²'); // as above
});

test('in feet the numbers are feet and the area is that of the ground', () => {
  const working = outlineWorking(outline('tree', 'Oak', rect(0, 0, 3.048, 3.048)), {
    ...METRIC,
    unitSystem: 'us',
  });
  expectNear(working.area, 3.048 ** 2 / SQUARE_FOOT_M2, 1e-6, 'ft²'); // 10 ft by 10 ft
  expect(outlineSumWords(working)).toContain('100.00 ft², shown 100 ft²'); // 10 * 10
});
