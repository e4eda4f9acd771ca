import { expect, test } from 'vitest';
import { fontFilesFor } from '../../../../electron/host/pdf/fonts.ts';

test('every font file a face may need is in the bundled packages', () => {
  for (const face of ['regular', 'bold', 'condensed', 'condensed-bold'] as const) {
    for (const file of fontFilesFor(face)) {
      expect(file.read().subarray(0, 4).toString('latin1'), file.key).toBe('wOFF'); // the signature of WOFF 1.0, W3C 2012, section 4
    }
  }
});

test('a face is tried in its own family first', () => {
  expect(fontFilesFor('condensed-bold')[0]?.key).toBe('ibm-plex-sans-condensed-latin-600-normal.woff');
  expect(fontFilesFor('regular')[0]?.key).toBe('ibm-plex-sans-latin-400-normal.woff');
});
