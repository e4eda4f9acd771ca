import type { PagePoint } from '../spaces.ts';

/** A printed page as drawing steps in millimetres from the top left corner, in painting order. */
export interface SheetPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marks: readonly PageMark[];
}

export type PageMark = PathMark | TextMark | ClipMark | PictureMark;

/** One path of one or more subpaths; filled by even-odd when `fill` is given, stroked when `stroke` is given. */
export interface PathMark {
  readonly kind: 'path';
  readonly subpaths: readonly PageSubpath[];
  readonly fill: PageColour | null;
  readonly stroke: PageStroke | null;
}

export interface PageSubpath {
  readonly points: readonly PagePoint[];
  readonly closed: boolean;
}

export interface PageStroke {
  readonly colour: PageColour;
  readonly widthMm: number;
  readonly dashMm: readonly number[] | null;
}

/** Red, green, blue from 0 to 255. */
export type PageColour = readonly [number, number, number];

/** `at` is on the baseline; `turnDeg` turns clockwise about it. */
export interface TextMark {
  readonly kind: 'text';
  readonly at: PagePoint;
  readonly text: string;
  readonly sizeMm: number;
  readonly face: 'regular' | 'bold' | 'condensed' | 'condensed-bold';
  readonly align: 'left' | 'centre' | 'right';
  readonly colour: PageColour;
  readonly turnDeg: number;
}

/** Marks drawn only inside the even-odd area of `subpaths`. */
export interface ClipMark {
  readonly kind: 'clip';
  readonly subpaths: readonly PageSubpath[];
  readonly marks: readonly PageMark[];
}

/** A yard picture laid down by its north-west, north-east and south-west corners (affine). */
export interface PictureMark {
  readonly kind: 'picture';
  readonly imageHash: string;
  readonly corners: readonly [PagePoint, PagePoint, PagePoint];
  readonly opacity: number;
}
