import type {
  ClipMark,
  PageColour,
  PageMark,
  PageSubpath,
  PathMark,
  PictureMark,
  TextMark,
} from '../../../core/sheet/index.ts';
import type { FontFile } from './fonts.ts';
import { splitIntoRuns } from './textRuns.ts';

type Document = PDFKit.PDFDocument;

/** 72 points to the inch of exactly 25.4 mm. */
export const PT_PER_MM = 72 / 25.4;

/** A picture the PDF library could not read. */
export interface UnreadablePicture {
  readonly imageHash: string;
  readonly detail: string;
}

/** Draws marks in painting order; stops at the first picture that cannot be read. */
export function drawMarks(
  document: Document,
  marks: readonly PageMark[],
  images: ReadonlyMap<string, Buffer>,
): UnreadablePicture | undefined {
  for (const mark of marks) {
    const unreadable = drawMark(document, mark, images);
    if (unreadable !== undefined) return unreadable;
  }
  return undefined;
}

function drawMark(
  document: Document,
  mark: PageMark,
  images: ReadonlyMap<string, Buffer>,
): UnreadablePicture | undefined {
  switch (mark.kind) {
    case 'path':
      return drawPath(document, mark);
    case 'text':
      return drawText(document, mark);
    case 'clip':
      return drawClip(document, mark, images);
    case 'picture':
      return drawPicture(document, mark, images.get(mark.imageHash));
  }
}

function tracePath(document: Document, subpaths: readonly PageSubpath[]): void {
  for (const { points, closed } of subpaths) {
    points.forEach((point, i) => {
      const x = point.xMm * PT_PER_MM;
      const y = point.yMm * PT_PER_MM;
      if (i === 0) document.moveTo(x, y);
      else document.lineTo(x, y);
    });
    if (closed) document.closePath();
  }
}

function drawPath(document: Document, { subpaths, fill, stroke }: PathMark): undefined {
  if (subpaths.length === 0 || (fill === null && stroke === null)) return;
  if (stroke !== null) {
    document
      .lineWidth(stroke.widthMm * PT_PER_MM)
      .lineJoin('round')
      .lineCap('butt');
    if (stroke.dashMm === null) document.undash();
    // The typings know one dash length; the library takes the whole pattern.
    else document.dash(stroke.dashMm.map((length) => length * PT_PER_MM) as unknown as number, {});
  }
  tracePath(document, subpaths);
  if (fill !== null && stroke !== null) document.fillAndStroke(rgb(fill), rgb(stroke.colour), 'even-odd');
  else if (fill !== null) document.fill(rgb(fill), 'even-odd');
  else if (stroke !== null) document.stroke(rgb(stroke.colour));
}

function drawClip(
  document: Document,
  { subpaths, marks }: ClipMark,
  images: ReadonlyMap<string, Buffer>,
): UnreadablePicture | undefined {
  document.save();
  tracePath(document, subpaths);
  document.clip('even-odd');
  const unreadable = drawMarks(document, marks, images);
  document.restore();
  return unreadable;
}

function drawText(document: Document, mark: TextMark): undefined {
  const x = mark.at.xMm * PT_PER_MM;
  const y = mark.at.yMm * PT_PER_MM;
  const runs = splitIntoRuns(mark.text, mark.face, (file, codePoint) =>
    hasCharacter(document, file, codePoint),
  );
  document.fontSize(mark.sizeMm * PT_PER_MM);
  const widths = runs.map((run) => document.font(run.fontKey).widthOfString(run.text));
  const whole = widths.reduce((sum, width) => sum + width, 0);
  let left = x - (mark.align === 'left' ? 0 : mark.align === 'centre' ? whole / 2 : whole);
  document.save();
  if (mark.turnDeg !== 0) document.rotate(mark.turnDeg, { origin: [x, y] });
  document.fillColor(rgb(mark.colour));
  runs.forEach((run, i) => {
    document.font(run.fontKey).text(run.text, left, y, { lineBreak: false, baseline: 'alphabetic' });
    left += widths[i] as number;
  });
  document.restore();
}

/** Font files this document has open: a file is read when the first character needs it. */
const opened = new WeakMap<Document, Map<string, OpenFont>>();

interface OpenFont {
  readonly hasGlyphForCodePoint: (codePoint: number) => boolean;
}

function hasCharacter(document: Document, file: FontFile, codePoint: number): boolean {
  const fonts = opened.get(document) ?? new Map<string, OpenFont>();
  opened.set(document, fonts);
  let font = fonts.get(file.key);
  if (font === undefined) {
    document.registerFont(file.key, file.read()).font(file.key);
    // The library keeps the font it opened in a field its typings leave out.
    font = (document as unknown as { readonly _font: { readonly font: OpenFont } })._font.font;
    fonts.set(file.key, font);
  }
  return font.hasGlyphForCodePoint(codePoint);
}

/** The picture is a unit square carried to its three corners; opacity is the picture's alone. */
function drawPicture(
  document: Document,
  { corners, opacity, imageHash }: PictureMark,
  bytes: Buffer | undefined,
): UnreadablePicture | undefined {
  if (bytes === undefined) return { imageHash, detail: 'not read' };
  const [nw, ne, sw] = corners.map((corner) => [corner.xMm * PT_PER_MM, corner.yMm * PT_PER_MM]) as [
    [number, number],
    [number, number],
    [number, number],
  ];
  document.save();
  document.transform(ne[0] - nw[0], ne[1] - nw[1], sw[0] - nw[0], sw[1] - nw[1], nw[0], nw[1]);
  document.opacity(opacity);
  try {
    document.image(bytes, 0, 0, { width: 1, height: 1 });
  } catch (error) {
    return { imageHash, detail: error instanceof Error ? error.message : String(error) };
  } finally {
    document.restore();
  }
  return undefined;
}

function rgb(colour: PageColour): [number, number, number] {
  return [...colour];
}
