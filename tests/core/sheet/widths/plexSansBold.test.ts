import { test } from 'vitest';
import { PLEX_SANS_BOLD_WIDTHS } from '../../../../core/sheet/widths/plexSansBold.ts';
import { expectWidthsOfFont, openFace } from '../../../support/fontWidths.ts';

test('the width table of Plex Sans SemiBold is the one in the font files', () => {
  expectWidthsOfFont(
    PLEX_SANS_BOLD_WIDTHS,
    openFace('ibm-plex-sans', '600', ['latin', 'latin-ext', 'cyrillic', 'greek']),
  );
});
