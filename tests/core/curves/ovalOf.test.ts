import { expect, test } from 'vitest';
import { ovalOf } from '../../../core/curves/ovalOf.ts';

const CENTRE = { xM: 3, yM: 4 };

test('a circle has its radius both ways and its rim in the east', () => {
  expect(ovalOf({ kind: 'circle', centre: CENTRE, radiusM: 5 })).toStrictEqual({
    centre: CENTRE,
    halfAlongM: 5,
    halfAcrossM: 5,
    bearingDeg: 90, // east
  });
});

test('an ellipse keeps its axes and its bearing', () => {
  const ellipse = { kind: 'ellipse', centre: CENTRE, halfLengthM: 5, halfWidthM: 2, bearingDeg: 30 } as const;
  expect(ovalOf(ellipse)).toStrictEqual({ centre: CENTRE, halfAlongM: 5, halfAcrossM: 2, bearingDeg: 30 });
});
