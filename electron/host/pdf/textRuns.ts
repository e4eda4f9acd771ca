import type { TextMark } from '../../../core/sheet/index.ts';
import { type FontFile, fontFilesFor } from './fonts.ts';

export interface TextRun {
  readonly text: string;
  readonly fontKey: string;
}

/** What stands for a character no bundled font has. */
const MISSING = '?';

/** Whether a font file has a character: asked of the document that has the fonts open. */
export type HasCharacter = (file: FontFile, codePoint: number) => boolean;

/** Splits a line into runs that one font file each can set; characters no file has become a question mark. */
export function splitIntoRuns(text: string, face: TextMark['face'], hasCharacter: HasCharacter): TextRun[] {
  const files = fontFilesFor(face);
  const first = files[0] as FontFile;
  const runs: TextRun[] = [];
  for (const character of text) {
    const codePoint = character.codePointAt(0) as number;
    const file = files.find((candidate) => hasCharacter(candidate, codePoint));
    const fontKey = (file ?? first).key;
    const shown = file === undefined ? MISSING : character;
    const last = runs.at(-1);
    if (last !== undefined && last.fontKey === fontKey) {
      runs[runs.length - 1] = { text: last.text + shown, fontKey };
    } else {
      runs.push({ text: shown, fontKey });
    }
  }
  return runs;
}
