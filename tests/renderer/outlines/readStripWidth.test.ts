import { expect, test } from 'vitest';
import { readStripWidth } from '../../../renderer/outlines/readStripWidth.ts';

test.each([
  ['', null],
  ['0', null],
  ['10', 3.048], // 10 * 0.3048
  ['2 m', 2],
  ['328 ft', 99.9744], // 328 * 0.3048
] as const)('%s', (typed, widthM) => {
  expect(readStripWidth(typed, 'us')).toEqual({ ok: true, value: widthM });
});

test.each(['-1', '329 ft', '101 m', 'three'])('%s is refused at the field', (typed) => {
  const read = readStripWidth(typed, 'us');
  expect(read.ok ? [] : read.problems).toMatchObject([{ where: { field: 'width kept off' } }]);
});
