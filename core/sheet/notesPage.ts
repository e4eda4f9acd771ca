import type { Caution, CautionMoment } from '../products/index.ts';
import { at, line, type PageBox, pen, RULE, SOFT_INK, text } from './drawing.ts';
import { shortenText, textWidthMm, wrapText } from './measureText.ts';
import { drawHeading, type FlowItem, flowOverPages } from './pageFlow.ts';
import { paperPlan } from './paper.ts';
import type { PageMark } from './page.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';

const SIZE_MM = 3.2;
const LEADING_MM = 4.5;
const SOURCE_MM = 2.5;

/** What to mind with this product, and ruled lines for what was really done. */
export function notesPages(context: SheetContext, cautions: readonly Caution[]): DraftPage[] {
  const paper = paperPlan(context.paper, 'portrait');
  const items: FlowItem[] = [
    headingBlock('Cautions', 'the label is the law and governs every number here'),
    ...MOMENTS.flatMap(([moment, words]) =>
      cautions
        .filter((caution) => caution.moment === moment)
        .map((caution, i) => cautionBlock(paper.body, i === 0 ? words : '', caution)),
    ),
    { kind: 'block', heightMm: 5, draw: () => [] },
    headingBlock('As done', 'fill in on the day; copy into the book'),
  ];
  const usedMm = items.reduce((sum, item) => sum + (item.kind === 'block' ? item.heightMm : 0), 0);
  const restMm = Math.max(70, paper.body.heightMm - (usedMm % paper.body.heightMm) - 1);
  items.push({ kind: 'block', heightMm: restMm, draw: drawNotes });
  return flowOverPages(paper.body, items).map((marks) => ({
    paper,
    title: 'Notes',
    subtitle: context.product.name,
    scaleWords: '',
    marks,
  }));
}

function headingBlock(title: string, note: string): FlowItem {
  return { kind: 'block', heightMm: 8, draw: (box) => drawHeading(box, box.yMm, title, note) };
}

const MOMENTS: readonly (readonly [CautionMoment, string])[] = [
  ['plan', 'planning'],
  ['mix', 'mixing'],
  ['spray', 'on the lawn'],
  ['after', 'afterwards'],
];
const MOMENT_MM = 24;

/** The moment once in the margin, then the caution and, smaller, who says so. */
function cautionBlock(body: PageBox, moment: string, caution: Caution): FlowItem {
  const widthMm = body.widthMm - MOMENT_MM;
  const lines = wrapText(caution.text, SIZE_MM, 'regular', widthMm);
  const source = shortenText(caution.source, SOURCE_MM, 'condensed', widthMm);
  const soft = { sizeMm: SOURCE_MM, face: 'condensed', colour: SOFT_INK } as const;
  return {
    kind: 'block',
    heightMm: lines.length * LEADING_MM + 6.2,
    draw: (box) => {
      const foot = box.yMm + 3.6 + (lines.length - 1) * LEADING_MM;
      const left = box.xMm + MOMENT_MM;
      return [
        ...(moment === ''
          ? []
          : [text(box.xMm, box.yMm + 3.6, moment, { sizeMm: SIZE_MM, face: 'condensed-bold' })]),
        ...lines.map((words, i) =>
          text(left, box.yMm + 3.6 + i * LEADING_MM, words, { sizeMm: SIZE_MM, face: 'regular' }),
        ),
        text(left, foot + 3.9, source, soft),
        line([at(left, foot + 5.4), at(box.xMm + box.widthMm, foot + 5.4)], pen(RULE, 0.2)),
      ];
    },
  };
}

const FIELDS: readonly (readonly string[])[] = [
  ['date', 'start', 'end'],
  ['done by', 'weather', 'wind'],
  ['temperature', 'rain since', 'soil'],
];
const LINE_MM = 8.5;

function drawNotes(box: PageBox): PageMark[] {
  const marks: PageMark[] = [];
  let y = box.yMm + 6;
  for (const row of FIELDS) {
    const cellMm = box.widthMm / row.length;
    row.forEach((label, i) => {
      const x = box.xMm + i * cellMm;
      const labelMm = textWidthMm(label, 2.9, 'condensed');
      marks.push(text(x, y, label, { sizeMm: 2.9, face: 'condensed', colour: SOFT_INK }));
      marks.push(
        line(
          [at(x + labelMm + 1.5, y + 0.7), at(x + cellMm - (i < row.length - 1 ? 5 : 0), y + 0.7)],
          pen(SOFT_INK, 0.2),
        ),
      );
    });
    y += LINE_MM;
  }
  marks.push(
    text(box.xMm, y, 'what was seen, what was left over, what to do differently', {
      sizeMm: 2.9,
      face: 'condensed',
      colour: SOFT_INK,
    }),
  );
  for (y += LINE_MM; y <= box.yMm + box.heightMm; y += LINE_MM) {
    marks.push(line([at(box.xMm, y), at(box.xMm + box.widthMm, y)], pen(RULE, 0.25)));
  }
  return marks;
}
