import { expect, test } from 'vitest';
import { placedPointsOf, pointBaseOf, surenessOf } from '../../../core/area/index.ts';
import type { Outline, Picture, Placing } from '../../../core/yard.ts';
import { groundOf, outline, points, rect } from '../../support/builders.ts';

const [a, b, c, d] = points([-30, 20], [30, 20], [30, -20], [-30, -20]);
if (!a || !b || !c || !d) throw new Error('four corners');
/** 600 × 400 pixels over 60 m × 40 m: a pixel is 10 cm. */
const picture: Picture = {
  id: 'p',
  name: 'plan.png',
  imageHash: '',
  mediaType: 'image/png',
  widthPx: 600,
  heightPx: 400,
  placement: { kind: 'georeferenced', crs: 'EPSG:32613', corners: [a, b, c, d] },
  attribution: '',
  cornerSigmaM: null,
  scaleSigma: null,
};

const placed = (part: Partial<Placing>, name = 'lawn', ring = rect(0, 0, 10, 10)): Outline => ({
  ...outline('zone', name, ring),
  placing: { by: 'hand', pictureId: null, sigmaM: null, ...part },
});
const over = { by: 'picture', pictureId: 'p' } as const;

function baseOf(part: Partial<Placing>, of: Partial<Picture> = {}, yardM: number | null = 0.2) {
  const ground = { ...groundOf([], yardM), pictures: [{ ...picture, ...of }] };
  const { by, sigmaM } = pointBaseOf(placed(part), ground);
  return [by, sigmaM];
}

test('the nearest that says how sure a corner is holds: outline, picture, its pixel, yard', () => {
  expect(baseOf({ ...over, sigmaM: 0.05 }, { cornerSigmaM: 0.3 })).toEqual(['outline', 0.05]);
  expect(baseOf(over, { cornerSigmaM: 0.3 })).toEqual(['picture', 0.3]);
  const [by, pixelM] = baseOf(over);
  expect(by).toBe('pixel');
  expect(pixelM).toBeCloseTo(0.1, 12); // 60 m / 600
  // GPS.gov, after van Diggelen & Enge 2015: phones are out by some 4.9 m under open sky; a hand's 0.2 m is not theirs.
  expect(baseOf({ by: 'gps' })).toEqual(['yard', null]);
  expect(baseOf({ by: 'gps', sigmaM: 4.9 })).toEqual(['outline', 4.9]);
  expect(baseOf({ by: 'picture', pictureId: 'gone' })).toEqual(['yard', 0.2]); // the picture was taken away
  expect(baseOf({}, {}, null)).toEqual(['yard', null]); // nobody said
});

test('nought, less, more than any yard and what is no number are not stated', () => {
  expect(baseOf({ sigmaM: 1e300 })).toEqual(['yard', 0.2]);
  expect(baseOf({}, {}, 1e308)).toEqual(['yard', null]);
  expect(baseOf({ sigmaM: 0 })).toEqual(['yard', 0.2]);
  expect(baseOf({ sigmaM: -1 }, {}, 0)).toEqual(['yard', null]);
  expect(baseOf({ ...over, sigmaM: Number.NaN }, { cornerSigmaM: 0 })[0]).toBe('pixel');
});

test('a scale is the picture’s own, about its middle, and not stated where neither person nor lengths say', () => {
  const scaleOf = (part: Partial<Picture>) =>
    pointBaseOf(placed(over), { ...groundOf([]), pictures: [{ ...picture, ...part }] }).scale;
  expect(scaleOf({ scaleSigma: 0.01 })).toEqual({ pictureId: 'p', sigma: 0.01, centre: { xM: 0, yM: 0 } }); // as stated
  expect(scaleOf({})?.sigma).toBeNull(); // it knows where it is and says no more
  expect(scaleOf({ scaleSigma: 0 })?.sigma).toBeNull(); // a σ of 0 is never true
  expect(
    pointBaseOf(placed({ by: 'hand', pictureId: 'p' }), { ...groundOf([]), pictures: [picture] }).scale,
  ).toBeNull();
});

test('at one place the surest point is the point of all', () => {
  const west = placed({ sigmaM: 0.1 }, 'west');
  const east = placed({ sigmaM: 0.02 }, 'east', rect(10, 0, 10, 10));
  const { surest } = surenessOf(groundOf([west, east]));
  const [corner, other] = [placedPointsOf(west)[0]?.[1], placedPointsOf(east)[0]?.[0]];
  if (!corner || !other) throw new Error('both have a corner at (10, 0)');
  expect(surest.get(corner)).toBe(other);
  expect(surest.get(other)).toBe(other);
  expect(surest.size).toBe(4); // two places, two points each
});
