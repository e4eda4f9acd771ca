import { expect, test } from 'vitest';
import { isPlain, straight } from '../../../core/curves/index.ts';

const CORNERS = [
  { xM: 0, yM: 0 },
  { xM: 4, yM: 0 },
  { xM: 0, yM: 3 },
];
const PLAIN = straight(CORNERS);

test('corners and straight edges say all there is', () => {
  expect(isPlain({ outer: PLAIN, holes: [PLAIN] })).toBe(true);
});

test.each([
  ['an arc', { run: { kind: 'arc', via: { xM: 2, yM: -1 } } as const }],
  ['a smooth edge', { run: { kind: 'smooth' } as const }],
  ['a strip kept off', { keepOffM: 0 }],
])('%s on one edge, of a hole too, is more than its corners say', (_, more) => {
  const traced = straight(CORNERS.map((corner, i) => (i === 1 ? { ...corner, ...more } : corner)));
  expect(isPlain({ outer: traced, holes: [] })).toBe(false);
  expect(isPlain({ outer: PLAIN, holes: [traced] })).toBe(false);
});

test('a circle is more than corners', () => {
  expect(isPlain({ outer: { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 1 }, holes: [] })).toBe(false);
});
