import { expect, test } from 'vitest';
import { isValueTrouble, valueText } from '../../../core/problemText/valueText.ts';

test('trouble at a field is told from trouble elsewhere, and names the field', () => {
  const missing = { kind: 'value/missing', where: { field: 'label rate' }, facts: {} } as const;
  expect(isValueTrouble(missing)).toBe(true);
  expect(isValueTrouble({ kind: 'file/not-found', where: { fileName: 'a.gpkg' }, facts: {} })).toBe(false);
  expect(valueText(missing, 'us').what).toBe('Label rate is missing.');
});

test('a length that disagrees is said in the person’s units, with how far it is off', () => {
  const problem = {
    kind: 'value/lengths-disagree',
    where: { field: 'sketch' },
    facts: { lengthM: 12, byOthersM: 9 },
  } as const;
  expect(valueText(problem, 'metric').what).toBe(
    'Sketch: a length measured as 12.00 m comes to 9.00 m by the others, 25% less.', // 9 / 12
  );
});
