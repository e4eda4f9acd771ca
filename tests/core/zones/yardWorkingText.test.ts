import { expect, test } from 'vitest';
import {
  areaWorking,
  outlineText,
  outlineWorking,
  resolveZones,
  workingText,
  yardWorkingText,
} from '../../../core/zones/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';

test('every zone is worked as the window copies it, then every other outline', () => {
  const [bed, lawn, side] = [
    outline('bed', 'rose', rect(4, 2, 4, 4)),
    outline('zone', 'lawn', rect(0, 0, 20, 10)),
    outline('zone', 'side', rect(30, 0, 5, 5)),
  ];
  const yard = yardOf({ outlines: [bed, lawn, side] });
  const resolved = resolveZones(yard);
  if (!resolved.ok) throw new Error('the yard does not resolve');
  const text = yardWorkingText(resolved.value, yard);
  const titles = text.split('\n').filter((line) => line.startsWith('Working of '));
  expect(titles).toEqual(['Working of lawn', 'Working of side', 'Working of rose']); // zones first
  const working = areaWorking(resolved.value, yard, 'lawn');
  expect(working && text.includes(workingText(working))).toBe(true);
  expect(text).toContain(outlineText(outlineWorking(bed, yard.details)));
});
