import { describe, expect, test } from 'vitest';
import { endBaseOf } from '../../../core/fieldCheck/endBase.ts';
import { findEnd } from '../../../core/fieldCheck/index.ts';
import type { Picture } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';

/** 1,000 pixels over 50 m: a pixel is 5 cm. */
const picture: Picture = {
  id: 'p',
  name: 'p',
  imageHash: '0'.repeat(64),
  mediaType: 'image/png',
  widthPx: 1000,
  heightPx: 1000,
  placement: {
    kind: 'georeferenced',
    crs: 'EPSG:32613',
    corners: [
      { xM: 0, yM: 50 },
      { xM: 50, yM: 50 },
      { xM: 50, yM: 0 },
      { xM: 0, yM: 0 },
    ],
  },
  attribution: '',
  cornerSigmaM: null,
  scaleSigma: 0.01,
};
const plain = outline('zone', 'Lawn', rect(10, 10, 10, 10));
const corner = { xM: 10, yM: 10 };

function baseAt(placing: Partial<typeof plain.placing>, at = corner, cornerSigmaM: number | null = 0.4) {
  const tap = { id: 't', kind: 'spigot', name: 'Tap', at: { xM: 30, yM: 30 } } as const;
  const lawn = { ...plain, placing: { ...plain.placing, ...placing } };
  const yard = yardOf({ outlines: [lawn], marks: [tap], pictures: [picture] });
  const stated = { ...yard, details: { ...yard.details, cornerSigmaM } };
  return endBaseOf(stated, findEnd(stated, at), at);
}

describe('how sure an end of a taped distance is on the map', () => {
  test('as its outline states, then as its picture, then as the yard', () => {
    expect(baseAt({ by: 'picture', sigmaM: 0.02, pictureId: 'p' }).sigmaM).toBe(0.02); // the outline's own
    expect(baseAt({ by: 'picture', pictureId: 'p' }).sigmaM).toBe(0.05); // 50 m over 1,000 pixels
    expect(baseAt({})).toEqual({ by: 'yard', sigmaM: 0.4, scale: null }); // the yard's
    expect(baseAt({}, corner, null).sigmaM).toBeNull();
  });

  test('a mark is as sure as the picture it lies on', () => {
    expect(baseAt({}, { xM: 30, yM: 30 })).toMatchObject({ sigmaM: 0.05, scale: { sigma: 0.01 } }); // the picture's
  });
});
