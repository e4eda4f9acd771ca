import { expect, test } from 'vitest';
import { splitIntoRuns } from '../../../../electron/host/pdf/textRuns.ts';

/** As if each file held one block of Unicode. */
const BLOCKS: Readonly<Record<string, readonly [number, number]>> = {
  'ibm-plex-sans-latin-400-normal.woff': [0x20, 0x7e],
  'ibm-plex-sans-cyrillic-400-normal.woff': [0x400, 0x45f],
};

function split(words: string) {
  return splitIntoRuns(words, 'regular', (file, codePoint) => {
    const [first, last] = BLOCKS[file.key] ?? [1, 0];
    return codePoint >= first && codePoint <= last;
  });
}

test('text one file can set is one run', () => {
  expect(split('Back lawn')).toEqual([{ text: 'Back lawn', fontKey: 'ibm-plex-sans-latin-400-normal.woff' }]);
});

test('a run ends where another file is needed, and nothing is lost', () => {
  const runs = split('by Дуб oak');
  expect(runs.map((run) => run.text)).toEqual(['by ', 'Дуб', ' oak']);
  expect(runs[1]?.fontKey).toBe('ibm-plex-sans-cyrillic-400-normal.woff');
});

test('a character no file has becomes a question mark, one for each', () => {
  expect(split('A芝🌱B').map((run) => run.text)).toEqual(['A??B']);
});

test('no text is no run', () => {
  expect(split('')).toEqual([]);
});
