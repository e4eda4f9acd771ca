import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { expect } from 'vitest';

interface OpenFont {
  hasGlyphForCodePoint(codePoint: number): boolean;
  glyphForCodePoint(codePoint: number): { readonly advanceWidth: number };
  readonly unitsPerEm: number;
}

const require = createRequire(import.meta.url);

/** Opens font files of a face by the PDF writer's own font reader. */
export function openFace(family: string, weight: string, alphabets: readonly string[]): OpenFont[] {
  const fontkit = require('fontkit') as { create(bytes: Buffer): OpenFont };
  return alphabets.map((alphabet) =>
    fontkit.create(
      readFileSync(
        require.resolve(`@fontsource/${family}/files/${family}-${alphabet}-${weight}-normal.woff`),
      ),
    ),
  );
}

/** Fails at the first character whose width in the table is not the one in the font's hmtx table. */
export function expectWidthsOfFont(table: string, fonts: readonly OpenFont[]): void {
  let compared = 0;
  for (const line of table.trim().split('\n')) {
    const gap = line.indexOf(' ');
    for (const character of line.slice(gap + 1)) {
      const codePoint = character.codePointAt(0) as number;
      const font = fonts.find((candidate) => candidate.hasGlyphForCodePoint(codePoint));
      expect(font, `no font file has ${character}`).toBeDefined();
      expect(font?.glyphForCodePoint(codePoint).advanceWidth, character).toBe(Number(line.slice(0, gap)));
      compared++;
    }
  }
  // 95 printable ASCII characters at the least: a table that lost its lines must not pass.
  expect(compared).toBeGreaterThan(95);
}
