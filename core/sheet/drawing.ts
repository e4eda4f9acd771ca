import type { PagePoint } from '../spaces.ts';
import { type Face, textWidthMm } from './measureText.ts';
import type { PageColour, PageStroke, PageSubpath, PathMark, TextMark } from './page.ts';

/** The inks of the printed page: the day palette of the screen, on white. */
export const INK: PageColour = [35, 40, 42];
export const SOFT_INK: PageColour = [92, 99, 96];
export const RULE: PageColour = [185, 205, 184];
export const COLUMN_RULE: PageColour = [227, 185, 168];
export const FLAG_INK: PageColour = [194, 66, 18];
export const TURF_LINE: PageColour = [76, 125, 63];
export const TURF_TINT: PageColour = [236, 242, 226];
export const BED_INK: PageColour = [126, 95, 54];
export const HARDSCAPE_INK: PageColour = [110, 115, 120];
export const WATER_INK: PageColour = [47, 109, 143];
export const WHITE: PageColour = [255, 255, 255];

/** A rectangle on the page; `xMm`, `yMm` is its top left corner. */
export interface PageBox {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Height of a capital above the baseline and of a descender below it, as shares of the size (IBM Plex: 0.698, 0.2). */
const CAP_SHARE = 0.72;
const DESCENT_SHARE = 0.22;

/** How far below the middle of a capital its baseline lies: sets a number in the middle of its circle. */
const CAP_HALF_SHARE = 0.349;

export function at(xMm: number, yMm: number): PagePoint {
  return { xMm, yMm };
}

export function pen(
  colour: PageColour,
  widthMm: number,
  dashMm: readonly number[] | null = null,
): PageStroke {
  return { colour, widthMm, dashMm };
}

export function line(points: readonly PagePoint[], stroke: PageStroke): PathMark {
  return { kind: 'path', subpaths: [{ points, closed: false }], fill: null, stroke };
}

export function shape(
  subpaths: readonly PageSubpath[],
  fill: PageColour | null,
  stroke: PageStroke | null,
): PathMark {
  return { kind: 'path', subpaths, fill, stroke };
}

export function boxOutline(box: PageBox): PageSubpath {
  const right = box.xMm + box.widthMm;
  const foot = box.yMm + box.heightMm;
  return {
    points: [at(box.xMm, box.yMm), at(right, box.yMm), at(right, foot), at(box.xMm, foot)],
    closed: true,
  };
}

/** A circle as a 36-corner path: at 5 mm radius its flats are 0.02 mm inside the true circle, finer than a pen. */
export function circleOutline(centre: PagePoint, radiusMm: number): PageSubpath {
  const points: PagePoint[] = [];
  for (let i = 0; i < 36; i++) {
    const turnRad = (i * Math.PI) / 18;
    points.push(at(centre.xMm + radiusMm * Math.cos(turnRad), centre.yMm + radiusMm * Math.sin(turnRad)));
  }
  return { points, closed: true };
}

export interface TextStyle {
  readonly sizeMm: number;
  readonly face: Face;
  readonly align?: TextMark['align'];
  readonly colour?: PageColour;
  readonly turnDeg?: number;
}

export function text(xMm: number, yMm: number, words: string, style: TextStyle): TextMark {
  return {
    kind: 'text',
    at: at(xMm, yMm),
    text: words,
    sizeMm: style.sizeMm,
    face: style.face,
    align: style.align ?? 'left',
    colour: style.colour ?? INK,
    turnDeg: style.turnDeg ?? 0,
  };
}

/** Text whose capitals are centred on a point. */
export function centredText(centre: PagePoint, words: string, style: TextStyle): TextMark {
  return text(centre.xMm, centre.yMm + CAP_HALF_SHARE * style.sizeMm, words, { ...style, align: 'centre' });
}

/** The box text covers on the page, from cap height to descender; turned text by the box round its turned corners. */
export function textBox(mark: TextMark): PageBox {
  const widthMm = textWidthMm(mark.text, mark.sizeMm, mark.face);
  const left = mark.align === 'left' ? 0 : mark.align === 'centre' ? -widthMm / 2 : -widthMm;
  const turnRad = (mark.turnDeg * Math.PI) / 180;
  const cos = Math.cos(turnRad);
  const sin = Math.sin(turnRad);
  const xs: number[] = [];
  const ys: number[] = [];
  for (const dx of [left, left + widthMm]) {
    for (const dy of [-CAP_SHARE * mark.sizeMm, DESCENT_SHARE * mark.sizeMm]) {
      xs.push(mark.at.xMm + dx * cos - dy * sin);
      ys.push(mark.at.yMm + dx * sin + dy * cos);
    }
  }
  const xMm = Math.min(...xs);
  const yMm = Math.min(...ys);
  return { xMm, yMm, widthMm: Math.max(...xs) - xMm, heightMm: Math.max(...ys) - yMm };
}

export function boxesOverlap(a: PageBox, b: PageBox): boolean {
  return (
    a.xMm < b.xMm + b.widthMm &&
    b.xMm < a.xMm + a.widthMm &&
    a.yMm < b.yMm + b.heightMm &&
    b.yMm < a.yMm + a.heightMm
  );
}

export function boxInside(inner: PageBox, outer: PageBox): boolean {
  return (
    inner.xMm >= outer.xMm &&
    inner.yMm >= outer.yMm &&
    inner.xMm + inner.widthMm <= outer.xMm + outer.widthMm &&
    inner.yMm + inner.heightMm <= outer.yMm + outer.heightMm
  );
}

export function growBox(box: PageBox, byMm: number): PageBox {
  return {
    xMm: box.xMm - byMm,
    yMm: box.yMm - byMm,
    widthMm: box.widthMm + 2 * byMm,
    heightMm: box.heightMm + 2 * byMm,
  };
}

/** The box two boxes share; undefined when they share none. */
export function findCommonBox(a: PageBox, b: PageBox): PageBox | undefined {
  const xMm = Math.max(a.xMm, b.xMm);
  const yMm = Math.max(a.yMm, b.yMm);
  const widthMm = Math.min(a.xMm + a.widthMm, b.xMm + b.widthMm) - xMm;
  const heightMm = Math.min(a.yMm + a.heightMm, b.yMm + b.heightMm) - yMm;
  return widthMm > 0 && heightMm > 0 ? { xMm, yMm, widthMm, heightMm } : undefined;
}
