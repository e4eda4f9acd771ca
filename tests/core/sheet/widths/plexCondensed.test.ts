import { test } from 'vitest';
import { PLEX_CONDENSED_WIDTHS } from '../../../../core/sheet/widths/plexCondensed.ts';
import { expectWidthsOfFont, openFace } from '../../../support/fontWidths.ts';

test('the width table of Plex Sans Condensed Regular is the one in the font files', () => {
  expectWidthsOfFont(
    PLEX_CONDENSED_WIDTHS,
    openFace('ibm-plex-sans-condensed', '400', ['latin', 'latin-ext']),
  );
});
