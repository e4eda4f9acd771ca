import { expect, test } from 'vitest';
import { areaGradient, outlineSources } from '../../../core/area/index.ts';
import { reversedRing, subtractRegions } from '../../../core/kernel/index.ts';
import { outline, points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const lawnRing = rect(0, 0, 20, 10);
const bedRing = rect(5, 2, 4, 4);
const sources = [
  ...outlineSources(outline('zone', 'lawn', lawnRing), [lawnRing]),
  ...outlineSources(outline('bed', 'bed', bedRing), [bedRing]),
];

function termsOf(gradient: ReturnType<typeof areaGradient>, id: string) {
  return gradient.terms
    .filter(({ point }) => point.outlineId === id)
    .sort((a, b) => a.point.own - b.point.own)
    .map(({ east, north }) => [east, north]);
}

test('a whole ring gives half the spans between neighbours, a hole the other way', () => {
  const gradient = areaGradient([{ outer: lawnRing, holes: [reversedRing(bedRing)] }], sources);
  expect(termsOf(gradient, 'lawn')).toEqual([
    ...[
      [-5, -10],
      [5, -10],
      [5, 10],
      [-5, 10],
    ], // ½ (y after - y before), ½ (x before - x after)
  ]);
  expect(termsOf(gradient, 'bed')).toEqual([
    ...[
      [2, 2],
      [-2, 2],
      [-2, -2],
      [2, -2],
    ], // a bed that grows leaves less
  ]);
});

test('rings an overlay made give the same', () => {
  const made = subtractRegions([region(lawnRing)], [region(bedRing)]);
  const [first, second] = [
    areaGradient(made, sources),
    areaGradient([{ outer: lawnRing, holes: [reversedRing(bedRing)] }], sources),
  ];
  for (const id of ['lawn', 'bed']) {
    termsOf(first, id).forEach((term, i) => {
      const same = termsOf(second, id)[i] ?? [];
      expectNear(term[0] ?? 0, same[0] ?? 1, 1e-9, 'm'); // the whole ring's own terms
      expectNear(term[1] ?? 0, same[1] ?? 1, 1e-9, 'm');
    });
  }
});

test('a corner where two outlines cross moves nothing by itself: what counts is each edge’s length inside', () => {
  // A bed 4 m wide over the south edge, 3 m of it inside: its sides give way 3 m long, middle at 3.5 of 5 m.
  const ring = points([5, -2], [9, -2], [9, 3], [5, 3]);
  const across = outlineSources(outline('bed', 'across', ring), [ring]);
  const made = subtractRegions([region(lawnRing)], [region(ring)]);
  const terms = termsOf(areaGradient(made, [...sources, ...across]), 'across');
  // East side from (9,-2): middle 1.5 m inside is 3.5 of 5 along: 3 × 0.3 = 0.9 and 3 × 0.7 = 2.1; west alike.
  // The north edge, 4 m, whole: 2 to each end.
  const expected = [
    [0.9, 0],
    [-0.9, 0],
    [-2.1, -2],
    [2.1, -2],
  ];
  terms.forEach((term, i) => {
    expectNear(term[0] ?? 0, expected[i]?.[0] ?? 9, 1e-5, 'm');
    expectNear(term[1] ?? 0, expected[i]?.[1] ?? 9, 1e-5, 'm');
  });
  expect(terms.length).toBe(4); // each corner of the bed has a share
});
