import { describe, expect, test } from 'vitest';
import { newOutline } from '../../../core/edits/index.ts';
import { cornersOf } from '../../../core/fieldCheck/index.ts';
import { findCorner } from '../../../core/fieldCheck/places.ts';
import { expectNear } from '../../support/expectNear.ts';
import { outline, rect } from '../../support/builders.ts';

describe('places of an outline a tape can be held to', () => {
  test('are its corners, numbered as on the sketch, hole after hole', () => {
    const lawn = outline('zone', 'Lawn', rect(0, 0, 10, 8), rect(2, 2, 1, 1));
    const places = cornersOf(lawn);
    expect(places).toHaveLength(8); // four corners, and four of the hole
    expect(places[2]).toEqual({
      at: { xM: 10, yM: 8 },
      words: 'corner 3 of Lawn',
      short: 'Lawn 3',
      side: 'north-east',
    }); // as drawn
    expect(places[4]).toEqual({
      at: { xM: 2, yM: 2 },
      words: 'corner 1 of hole 1 of Lawn',
      short: 'hole 1 of Lawn 1',
      side: 'south-west',
    }); // as drawn
  });

  test('are told apart by the wind they lie to', () => {
    const sides = cornersOf(outline('zone', 'Lawn', rect(0, 0, 40, 8))).map(({ side }) => side);
    expect(sides).toEqual(['south-west', 'south-east', 'north-east', 'north-west']); // as drawn
  });

  test('are the four sides of a circle', () => {
    const outer = { kind: 'circle', centre: { xM: 5, yM: -1 }, radiusM: 2 } as const;
    const places = cornersOf(newOutline({ id: 'c', kind: 'bed', name: 'Round', outer }));
    const names = ['north', 'east', 'south', 'west'].map((side) => `${side} side of Round`);
    expect(places.map(({ words }) => words)).toEqual(names);
    expectNear(places[0]?.at.yM ?? Number.NaN, 1, 1e-12, 'm'); // by hand: −1 + 2 north
    expectNear(places[1]?.at.xM ?? Number.NaN, 7, 1e-12, 'm'); // by hand: 5 + 2 east
    expectNear(places[3]?.at.xM ?? Number.NaN, 3, 1e-12, 'm'); // by hand: 5 − 2 west
  });

  test('are the ends of both axes of an ellipse, turned with it', () => {
    const outer = {
      kind: 'ellipse',
      centre: { xM: 0, yM: 0 },
      halfLengthM: 5,
      halfWidthM: 2,
      bearingDeg: 90,
    } as const;
    const [far, right] = cornersOf(newOutline({ id: 'e', kind: 'bed', name: 'Oval', outer }));
    expectNear(far?.at.xM ?? Number.NaN, 5, 1e-12, 'm'); // its length runs east
    expectNear(right?.at.yM ?? Number.NaN, -2, 1e-12, 'm'); // the right hand of east is south
  });
});

test('a place is found by where it is, under the same name', () => {
  const lawn = outline('zone', 'Lawn', rect(0, 0, 10, 8), rect(2, 2, 1, 1));
  for (const { at, words, short } of cornersOf(lawn)) {
    expect(findCorner(lawn, { xM: at.xM + 0.003, yM: at.yM - 0.003 }, 0.005)).toEqual({ words, short });
  }
  expect(findCorner(lawn, { xM: 10.004, yM: 8.004 }, 0.005)).toBeUndefined(); // 5.7 mm off
});
