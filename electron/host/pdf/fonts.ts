import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { TextMark } from '../../../core/sheet/index.ts';

type Face = TextMark['face'];

const FAMILY: Readonly<Record<Face, readonly [string, string]>> = {
  regular: ['ibm-plex-sans', '400'],
  bold: ['ibm-plex-sans', '600'],
  condensed: ['ibm-plex-sans-condensed', '400'],
  'condensed-bold': ['ibm-plex-sans-condensed', '600'],
};

/** The packages cut each face by alphabet; the condensed face has no Greek and no full Cyrillic of its own. */
const ALPHABETS = ['latin', 'latin-ext', 'vietnamese', 'cyrillic', 'cyrillic-ext', 'greek'] as const;
const CONDENSED_ALPHABETS = ['latin', 'latin-ext', 'vietnamese', 'cyrillic-ext'] as const;

/** One font file: `key` names it in the document. */
export interface FontFile {
  readonly key: string;
  readonly read: () => Buffer;
}

/** The font files that may hold a character of a face, in the order to try: its own, then the wide one's. */
export function fontFilesFor(face: Face): readonly FontFile[] {
  const [family, weight] = FAMILY[face];
  if (family === 'ibm-plex-sans') return ALPHABETS.map((alphabet) => fontFile(family, alphabet, weight));
  return [
    ...CONDENSED_ALPHABETS.map((alphabet) => fontFile(family, alphabet, weight)),
    ...ALPHABETS.map((alphabet) => fontFile('ibm-plex-sans', alphabet, weight)),
  ];
}

const require = createRequire(import.meta.url);

function fontFile(family: string, alphabet: string, weight: string): FontFile {
  const name = `${family}-${alphabet}-${weight}-normal.woff`;
  return { key: name, read: () => readFileSync(require.resolve(`@fontsource/${family}/files/${name}`)) };
}
