import { describe, expect, test } from 'vitest';
import { picturePointToYard, scalePicture, yardToPicturePoint } from '../../../core/frame/index.ts';
import type { PictureCorners } from '../../../core/yard.ts';
import { moved } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const known = {
  widthPx: 800,
  heightPx: 600,
  fromPx: { xPx: 100, yPx: 500 },
  toPx: { xPx: 400, yPx: 100 },
  lengthM: 25,
};

function cornersOf(length: typeof known): PictureCorners {
  const scaled = scalePicture(length);
  if (!scaled.ok) throw new Error(JSON.stringify(scaled.problems));
  return scaled.value;
}

describe('a picture with one known length', () => {
  test('lies round the origin, its top to the north', () => {
    // 300 px across and 400 px down are 500 px, so 25 m are 0.05 m a pixel: 800 px are 40 m, 600 px 30 m.
    expect(cornersOf(known)).toEqual([
      { xM: -20, yM: 15 },
      { xM: 20, yM: 15 },
      { xM: 20, yM: -15 },
      { xM: -20, yM: -15 },
    ]);
  });

  test('has that length between its two pixels', () => {
    const corners = cornersOf({ ...known, lengthM: 17.3 });
    const from = picturePointToYard(corners, 800, 600, known.fromPx);
    const to = picturePointToYard(corners, 800, 600, known.toPx);
    expectNear(Math.hypot(to.xM - from.xM, to.yM - from.yM), 17.3, 1e-12, 'm'); // the length given
  });

  test('has no scale when both pixels are one', () => {
    expect(scalePicture({ ...known, toPx: known.fromPx })).toMatchObject({
      ok: false,
      problems: [{ kind: 'value/no-scale' }],
    });
  });

  test.each([0, -25, Number.NaN, Infinity])('is not scaled by a length of %s', (lengthM) => {
    expect(scalePicture({ ...known, lengthM })).toMatchObject({
      ok: false,
      problems: [{ kind: 'value/not-positive', where: { field: 'known length' } }],
    });
  });
});

describe('a pixel', () => {
  const corners = cornersOf(known);

  test('in the middle is the origin, and down is south', () => {
    expect(picturePointToYard(corners, 800, 600, { xPx: 400, yPx: 300 })).toEqual({ xM: 0, yM: 0 });
    expect(picturePointToYard(corners, 800, 600, { xPx: 400, yPx: 320 })).toEqual({ xM: 0, yM: -1 }); // 20 px of 0.05 m
  });

  test('comes back from the yard, also of a picture that was turned and moved', () => {
    const turned = moved(corners, 0.7, 120, -40) as unknown as PictureCorners;
    for (const pixel of [
      { xPx: 0, yPx: 0 },
      { xPx: 800, yPx: 600 },
      { xPx: 123.25, yPx: 456.75 },
      { xPx: -50, yPx: 900 },
    ]) {
      const again = yardToPicturePoint(turned, 800, 600, picturePointToYard(turned, 800, 600, pixel));
      expectNear(again.xPx, pixel.xPx, 1e-9, 'px');
      expectNear(again.yPx, pixel.yPx, 1e-9, 'px');
    }
  });
});
