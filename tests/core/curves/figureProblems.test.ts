import { expect, test } from 'vitest';
import { figureProblems, straight } from '../../../core/curves/index.ts';
import type { Traced } from '../../../core/yard.ts';

const CENTRE = { xM: 0, yM: 0 };
const ellipse = (halfLengthM: number, halfWidthM: number): Traced => ({
  kind: 'ellipse',
  centre: CENTRE,
  halfLengthM,
  halfWidthM,
  bearingDeg: 0,
});

test.each<[string, Traced, readonly string[]]>([
  ['a circle of nothing', { kind: 'circle', centre: CENTRE, radiusM: 0 }, ['radius']],
  ['a circle below nothing', { kind: 'circle', centre: CENTRE, radiusM: -2 }, ['radius']],
  ['a circle without end', { kind: 'circle', centre: CENTRE, radiusM: Number.POSITIVE_INFINITY }, ['radius']],
  ['a circle of no number', { kind: 'circle', centre: CENTRE, radiusM: Number.NaN }, ['radius']],
  ['an ellipse without width', ellipse(3, 0), ['width']],
  ['an ellipse without either', ellipse(-1, Number.NaN), ['length', 'width']],
  ['an ellipse', ellipse(3, 2), []],
  ['corners', straight([]), []],
])('%s', (_, traced, sizes) => {
  expect(figureProblems(traced, 'o1', 'pond')).toStrictEqual(
    sizes.map((size) => ({
      kind: 'shape/no-size',
      where: { outlineId: 'o1', name: 'pond' },
      facts: { size },
    })),
  );
});

test.each([
  [Number.NaN, 1],
  [1, Number.NEGATIVE_INFINITY],
])('an arc through (%d, %d) is said, for it would be drawn straight', (xM, yM) => {
  const bent = { xM: 0, yM: 0, run: { kind: 'arc', via: { xM, yM } } } as const;
  const traced: Traced = { kind: 'corners', corners: [bent, { xM: 3, yM: 0 }, { xM: 0, yM: 2 }] };
  expect(figureProblems(traced, 'o1', 'pond')).toStrictEqual([
    { kind: 'shape/not-finite', where: { outlineId: 'o1', name: 'pond' }, facts: {} },
  ]);
});
