import { expect, test } from 'vitest';
import { packLoads } from '../../../core/plan/packLoads.ts';

test('every section is in one load, and loads are numbered as they are walked', () => {
  const loads = packLoads([
    { id: 'A1', areaM2: 90 },
    { id: 'B1', areaM2: 100 },
  ]);
  expect(loads.map(({ number }) => number)).toEqual([1, 2]);
  expect(loads.flatMap(({ sectionIds }) => sectionIds)).toEqual(['A1', 'B1']);
  expect(loads.map(({ areaM2 }) => areaM2)).toEqual([90, 100]);
});
