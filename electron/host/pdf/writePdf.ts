import PDFDocument from 'pdfkit';
import type { Result } from '../../../core/result.ts';
import { ok, trouble } from '../../../core/result.ts';
import type { PageMark, PictureMark, SheetPage } from '../../../core/sheet/index.ts';
import type { StoredImage } from '../../../core/yardFile/index.ts';
import { drawMarks, PT_PER_MM } from './drawMarks.ts';

export interface PdfAsk {
  readonly title: string;
  /** ISO date-time written into the file's properties; the only time in it. */
  readonly madeAt: string;
  readonly readImage: (imageHash: string) => StoredImage | undefined;
}

/**
 * PDF bytes of a sheet. The page boxes are the pages' millimetres exactly; every mark is vector, text is text in
 * bundled fonts, and base pictures are laid down by their corners. The same pages, title and date give the same bytes.
 *
 * Problems: value/not-a-date; file/not-found, file/unknown-kind (only PNG and JPEG can go into a PDF) and
 * file/unreadable for a picture, each with the picture's hash as its name
 */
export async function writePdf(pages: readonly SheetPage[], ask: PdfAsk): Promise<Result<Uint8Array>> {
  const madeAt = new Date(ask.madeAt);
  if (Number.isNaN(madeAt.getTime())) {
    return trouble({ kind: 'value/not-a-date', where: { field: 'madeAt' }, facts: { typed: ask.madeAt } });
  }
  const images = readImages(pages, ask.readImage);
  if (!images.ok) return images;

  const document = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    displayTitle: true,
    lang: 'en',
    // A date left to the library would be the clock's, and the file's id is made from these properties.
    info: {
      Title: ask.title,
      Creator: 'Platpace',
      Producer: 'Platpace',
      CreationDate: madeAt,
      ModDate: madeAt,
    },
  });
  const chunks: Buffer[] = [];
  const whole = new Promise<Buffer>((resolve, reject) => {
    document.on('data', (chunk: Buffer) => chunks.push(chunk));
    document.on('end', () => resolve(Buffer.concat(chunks)));
    document.on('error', reject);
  });
  for (const page of pages) {
    document.addPage({ size: [page.widthMm * PT_PER_MM, page.heightMm * PT_PER_MM], margin: 0 });
    const unreadable = drawMarks(document, page.marks, images.value);
    if (unreadable !== undefined) {
      return trouble({
        kind: 'file/unreadable',
        where: { fileName: unreadable.imageHash },
        facts: { detail: unreadable.detail },
      });
    }
  }
  document.end();
  return ok(new Uint8Array(await whole));
}

function readImages(
  pages: readonly SheetPage[],
  readImage: PdfAsk['readImage'],
): Result<ReadonlyMap<string, Buffer>> {
  const images = new Map<string, Buffer>();
  for (const { imageHash } of pages.flatMap((page) => picturesIn(page.marks))) {
    if (images.has(imageHash)) continue;
    const image = readImage(imageHash);
    const where = { fileName: imageHash };
    if (image === undefined) return trouble({ kind: 'file/not-found', where, facts: {} });
    if (image.mediaType !== 'image/png' && image.mediaType !== 'image/jpeg') {
      return trouble({ kind: 'file/unknown-kind', where, facts: { found: image.mediaType } });
    }
    images.set(imageHash, Buffer.from(image.bytes));
  }
  return ok(images);
}

function picturesIn(marks: readonly PageMark[]): PictureMark[] {
  return marks.flatMap((mark) =>
    mark.kind === 'picture' ? [mark] : mark.kind === 'clip' ? picturesIn(mark.marks) : [],
  );
}
