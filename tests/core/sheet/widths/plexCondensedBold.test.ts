import { test } from 'vitest';
import { PLEX_CONDENSED_BOLD_WIDTHS } from '../../../../core/sheet/widths/plexCondensedBold.ts';
import { expectWidthsOfFont, openFace } from '../../../support/fontWidths.ts';

test('the width table of Plex Sans Condensed SemiBold is the one in the font files', () => {
  expectWidthsOfFont(
    PLEX_CONDENSED_BOLD_WIDTHS,
    openFace('ibm-plex-sans-condensed', '600', ['latin', 'latin-ext']),
  );
});
