import { describe, expect, test } from 'vitest';
import { readPictureSize } from '../../../../electron/host/importers/pictureSize.ts';
import { jpegOf, pngOf, webpOf } from '../../../support/pictureBytes.ts';

describe('the size of a picture', () => {
  test.each([
    ['png', pngOf(31, 17)],
    ['jpeg', jpegOf(31, 17)],
    ['webp', webpOf(31, 17)],
  ] as const)('is read from the header of a %s', (kind, bytes) => {
    expect(readPictureSize(kind, bytes)).toEqual({ size: { widthPx: 31, heightPx: 17 } }); // as written
  });

  test('is that of the picture as shown: a camera held sideways exchanges the sides', () => {
    expect(readPictureSize('jpeg', jpegOf(400, 300, 6))).toEqual({ size: { widthPx: 300, heightPx: 400 } }); // Exif: 6 = turned 90°
    expect(readPictureSize('jpeg', jpegOf(400, 300, 3))).toEqual({ size: { widthPx: 400, heightPx: 300 } }); // Exif: 3 = upside down
  });

  test.each([
    ['png', pngOf(60, 60)],
    ['jpeg', jpegOf(60, 60)],
    ['webp', webpOf(60, 60)],
  ] as const)('is not read from a %s that is cut off, wherever the cut is', (kind, bytes) => {
    for (let length = 0; length < bytes.length; length++) {
      expect(readPictureSize(kind, bytes.slice(0, length)).size, `cut at ${length}`).toBeNull();
    }
  });

  test('is not nought', () => {
    expect(readPictureSize('jpeg', jpegOf(0, 20)).size).toBeNull();
  });
});
