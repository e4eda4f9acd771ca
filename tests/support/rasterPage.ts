import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** One page of a PDF as grey pixels, 0 black to 255 white, made by another program than ours. */
export interface RasterPage {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly dotsPerInch: number;
  readonly grey: Uint8Array;
}

/** Draws a page with pdftoppm of poppler-utils. Fails with what to install when it is not there. */
export function rasterPage(pdf: Uint8Array, page: number, dotsPerInch: number): RasterPage {
  return inFolder(pdf, (folder) => {
    run(
      'pdftoppm',
      ['-gray', '-r', `${dotsPerInch}`, '-f', `${page}`, '-l', `${page}`, '-singlefile', 'in.pdf', 'out'],
      folder,
    );
    return { ...readPgm(readFileSync(join(folder, 'out.pgm'))), dotsPerInch };
  });
}

/** The words of a PDF, page after page, as pdftotext of poppler-utils reads them, keeping the layout. */
export function pdfText(pdf: Uint8Array): string[] {
  return inFolder(pdf, (folder) => {
    run('pdftotext', ['-layout', '-enc', 'UTF-8', 'in.pdf', 'out.txt'], folder);
    return readFileSync(join(folder, 'out.txt'), 'utf8').split('\f').slice(0, -1);
  });
}

/** What pdfinfo of poppler-utils says of a PDF, its page boxes included. */
export function pdfInfo(pdf: Uint8Array, lastPage: number): string {
  return inFolder(pdf, (folder) =>
    run('pdfinfo', ['-box', '-isodates', '-f', '1', '-l', `${lastPage}`, 'in.pdf'], folder),
  );
}

function inFolder<T>(pdf: Uint8Array, work: (folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'platpace-pdf-'));
  try {
    writeFileSync(join(folder, 'in.pdf'), pdf);
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function run(program: string, args: readonly string[], cwd: string): string {
  try {
    return execFileSync(program, args, { cwd, encoding: 'utf8' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') {
      throw new Error(
        `${program} is missing: install poppler-utils; the printed scale cannot be checked without it`,
      );
    }
    throw error;
  }
}

/** Binary PGM: "P5 width height 255" and a byte a pixel. */
function readPgm(bytes: Buffer): Omit<RasterPage, 'dotsPerInch'> {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'));
  if (head === null) throw new Error('not a grey picture');
  const grey = new Uint8Array(bytes.subarray(head[0].length));
  return { widthPx: Number(head[1]), heightPx: Number(head[2]), grey };
}
