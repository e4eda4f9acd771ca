import { z } from 'zod';
import type { PageMark, SheetPage } from '../../core/sheet/index.ts';
import { longText } from './guardYard.ts';

const MOST_PAGES = 1_000;
const MOST_MARKS = 500_000;
const MOST_POINTS = 500_000;
/** Clips in clips; the layout nests them twice. Bounded by building the shape this deep, not by counting. */
const MOST_CLIPS = 6;
/** Side of the largest page in millimetres: 200 in, what a PDF page can be. */
const MOST_SIDE_MM = 5_080;

const finite = z.number();
const pagePoint = z.strictObject({ xMm: finite, yMm: finite });
const channel = z.number().min(0).max(255);
const colour = z.tuple([channel, channel, channel]);
const subpaths = z
  .array(z.strictObject({ points: z.array(pagePoint).max(MOST_POINTS), closed: z.boolean() }))
  .max(MOST_POINTS);

const path = z.strictObject({
  kind: z.literal('path'),
  subpaths,
  fill: colour.nullable(),
  stroke: z
    .strictObject({
      colour,
      widthMm: finite.nonnegative(),
      dashMm: z.array(finite.nonnegative()).max(100).nullable(),
    })
    .nullable(),
});

const text = z.strictObject({
  kind: z.literal('text'),
  at: pagePoint,
  text: longText,
  sizeMm: finite.positive().max(MOST_SIDE_MM),
  face: z.enum(['regular', 'bold', 'condensed', 'condensed-bold']),
  align: z.enum(['left', 'centre', 'right']),
  colour,
  turnDeg: finite,
});

const picture = z.strictObject({
  kind: z.literal('picture'),
  imageHash: z.string().regex(/^[0-9a-f]{64}$/),
  corners: z.tuple([pagePoint, pagePoint, pagePoint]),
  opacity: z.number().min(0).max(1),
});

function marksNested(clips: number): z.ZodType<readonly PageMark[]> {
  if (clips === 0) return z.array(z.discriminatedUnion('kind', [path, text, picture])).max(MOST_MARKS);
  const clip = z.strictObject({ kind: z.literal('clip'), subpaths, marks: marksNested(clips - 1) });
  return z.array(z.discriminatedUnion('kind', [path, text, picture, clip])).max(MOST_MARKS);
}

const side = finite.positive().max(MOST_SIDE_MM);

export const sheetPages: z.ZodType<readonly SheetPage[]> = z
  .array(z.strictObject({ widthMm: side, heightMm: side, marks: marksNested(MOST_CLIPS) }))
  .max(MOST_PAGES);
