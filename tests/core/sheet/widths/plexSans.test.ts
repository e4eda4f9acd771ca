import { test } from 'vitest';
import { PLEX_SANS_WIDTHS } from '../../../../core/sheet/widths/plexSans.ts';
import { expectWidthsOfFont, openFace } from '../../../support/fontWidths.ts';

test('the width table of Plex Sans Regular is the one in the font files', () => {
  expectWidthsOfFont(
    PLEX_SANS_WIDTHS,
    openFace('ibm-plex-sans', '400', ['latin', 'latin-ext', 'cyrillic', 'greek']),
  );
});
