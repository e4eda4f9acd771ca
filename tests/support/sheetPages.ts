import {
  layoutSheet,
  type PageMark,
  type Paper,
  type SheetPage,
  type TextMark,
} from '../../core/sheet/index.ts';
import type { Job } from '../../core/yard.ts';
import { type HandMadeGround, handMadePlan } from './handMadePlan.ts';

/** Laid out once for each test file: pages are plain data nobody changes. */
const madeSheets = new Map<string, SheetPage[]>();

/** The sheet of a hand-made plan; throws when it cannot be laid out. */
export function sheetOf(
  ground: HandMadeGround,
  paper: Paper = ground.units === 'us' ? 'letter' : 'a4',
  scale: 'auto' | number = 'auto',
): SheetPage[] {
  const key = `${ground.name} ${paper} ${scale}`;
  const known = madeSheets.get(key);
  if (known !== undefined) return known;
  const { yard, plan } = handMadePlan(ground);
  const sheet = layoutSheet({ yard, plan, job: yard.jobs[0] as Job, paper, scale, madeOn: '2026-11-25' });
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.problems));
  madeSheets.set(key, sheet.value);
  return sheet.value;
}

/** Every mark of a page, those inside clips as well, in painting order. */
export function marksOf(marks: readonly PageMark[]): PageMark[] {
  return marks.flatMap((mark) => (mark.kind === 'clip' ? [mark, ...marksOf(mark.marks)] : [mark]));
}

export function textMarksOf(marks: readonly PageMark[]): TextMark[] {
  return marksOf(marks).filter((mark) => mark.kind === 'text');
}

export function textsOf(marks: readonly PageMark[]): string[] {
  return textMarksOf(marks).map((mark) => mark.text);
}
