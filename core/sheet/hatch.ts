import type { PagePoint } from '../spaces.ts';
import type { OutlineKind } from '../yard.ts';
import {
  at,
  BED_INK,
  findCommonBox,
  HARDSCAPE_INK,
  INK,
  type PageBox,
  pen,
  SOFT_INK,
  TURF_LINE,
  WATER_INK,
} from './drawing.ts';
import { boundsOf } from './pageGeometry.ts';
import type { ClipMark, PageStroke, PageSubpath } from './page.ts';

/** How each kind of ground is inked, so that the kinds differ by hatch and line weight without any colour. */
export interface GroundInk {
  readonly edge: PageStroke;
  readonly hatch: ((box: PageBox) => PageSubpath[]) | null;
  readonly hatchPen: PageStroke;
}

const THIN_MM = 0.13;

export const GROUND_INK: Readonly<Record<OutlineKind, GroundInk>> = {
  zone: { edge: pen(TURF_LINE, 0.4, [4, 0.9, 0.9, 0.9]), hatch: null, hatchPen: pen(TURF_LINE, THIN_MM) },
  bed: { edge: pen(BED_INK, 0.3), hatch: (box) => diagonals(box, 1.5, 1), hatchPen: pen(BED_INK, THIN_MM) },
  hardscape: { edge: pen(HARDSCAPE_INK, 0.3), hatch: bricks, hatchPen: pen(HARDSCAPE_INK, THIN_MM) },
  building: {
    edge: pen(INK, 0.7),
    hatch: (box) => diagonals(box, 2.8, -1),
    hatchPen: pen(SOFT_INK, THIN_MM),
  },
  water: { edge: pen(WATER_INK, 0.4), hatch: waves, hatchPen: pen(WATER_INK, 0.16) },
  tree: { edge: pen(BED_INK, 0.3), hatch: rings, hatchPen: pen(BED_INK, THIN_MM) },
  'keep-off': { edge: pen(INK, 0.25, [1.2, 0.8]), hatch: crosses, hatchPen: pen(SOFT_INK, 0.16) },
  'check-plot': { edge: pen(INK, 0.4, [1.8, 1]), hatch: null, hatchPen: pen(INK, THIN_MM) },
};

/** Ground in two zones, given to one of them: upright lines, which no kind of ground has, dotted so that none reads as a pass. */
export const OVERLAP_INK: GroundInk = {
  edge: pen(SOFT_INK, 0.2, [2.4, 0.8, 0.6, 0.8]),
  hatch: uprights,
  hatchPen: pen(SOFT_INK, THIN_MM, [0.5, 0.9]),
};

/**
 * The hatch of a kind, clipped to the subpaths; undefined for kinds left open. Hatch lines hang on the page's
 * own grid, so that neighbouring pieces of one kind read as one material.
 */
export function findHatch(
  kind: OutlineKind,
  subpaths: readonly PageSubpath[],
  within: PageBox,
): ClipMark | undefined {
  return findHatchOf(GROUND_INK[kind], subpaths, within);
}

/** The same for any ink. */
export function findHatchOf(
  { hatch, hatchPen }: GroundInk,
  subpaths: readonly PageSubpath[],
  within: PageBox,
): ClipMark | undefined {
  if (hatch === null) return undefined;
  // Only the part that shows: a large pond on a small section page costs no ink.
  const box = findCommonBox(boundsOf(subpaths), within);
  if (box === undefined) return undefined;
  const strokes = hatch(box);
  return {
    kind: 'clip',
    subpaths,
    marks: [{ kind: 'path', subpaths: strokes, fill: null, stroke: hatchPen }],
  };
}

/** Multiples of `stepMm` from just below `fromMm` to just above `toMm`. */
function steps(fromMm: number, toMm: number, stepMm: number): number[] {
  const values: number[] = [];
  for (let i = Math.floor(fromMm / stepMm); i * stepMm <= toMm + stepMm; i++) values.push(i * stepMm);
  return values;
}

function stroke(...points: readonly PagePoint[]): PageSubpath {
  return { points, closed: false };
}

/** Lines at 45 degrees, rising to the right for lean 1, falling for -1. */
function diagonals(box: PageBox, gapMm: number, lean: 1 | -1): PageSubpath[] {
  const top = box.yMm;
  const foot = box.yMm + box.heightMm;
  const right = box.xMm + box.widthMm;
  const ends = lean === 1 ? [box.xMm + top, right + foot] : [box.xMm - foot, right - top];
  return steps(ends[0] as number, ends[1] as number, gapMm * Math.SQRT2).map((sum) =>
    lean === 1
      ? stroke(at(sum - top, top), at(sum - foot, foot))
      : stroke(at(sum + top, top), at(sum + foot, foot)),
  );
}

function uprights(box: PageBox): PageSubpath[] {
  const foot = box.yMm + box.heightMm;
  return steps(box.xMm, box.xMm + box.widthMm, 1.8).map((x) => stroke(at(x, box.yMm), at(x, foot)));
}

const BRICK_HEIGHT_MM = 1.7;
const BRICK_LENGTH_MM = 3.8;

function bricks(box: PageBox): PageSubpath[] {
  const right = box.xMm + box.widthMm;
  return steps(box.yMm, box.yMm + box.heightMm, BRICK_HEIGHT_MM).flatMap((y) => {
    const course = Math.round(y / BRICK_HEIGHT_MM);
    const shift = course % 2 === 0 ? 0 : BRICK_LENGTH_MM / 2;
    const joints = steps(box.xMm - shift, right, BRICK_LENGTH_MM).map((x) =>
      stroke(at(x + shift, y), at(x + shift, y + BRICK_HEIGHT_MM)),
    );
    return [stroke(at(box.xMm, y), at(right, y)), ...joints];
  });
}

const WAVE_LENGTH_MM = 3.2;
const WAVE_HEIGHT_MM = 0.35;

function waves(box: PageBox): PageSubpath[] {
  const right = box.xMm + box.widthMm;
  return steps(box.yMm, box.yMm + box.heightMm, 1.7).map((y) =>
    stroke(
      ...steps(box.xMm, right, WAVE_LENGTH_MM / 8).map((x) =>
        at(x, y + WAVE_HEIGHT_MM * Math.sin((2 * Math.PI * x) / WAVE_LENGTH_MM)),
      ),
    ),
  );
}

function rings(box: PageBox): PageSubpath[] {
  const radiusMm = 0.62;
  return steps(box.yMm, box.yMm + box.heightMm, 1.8).flatMap((y) => {
    const shift = Math.round(y / 1.8) % 2 === 0 ? 0 : 1;
    return steps(box.xMm, box.xMm + box.widthMm, 2).map((x) => ({
      points: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((i) =>
        at(x + shift + radiusMm * Math.cos((i * Math.PI) / 5), y + radiusMm * Math.sin((i * Math.PI) / 5)),
      ),
      closed: true,
    }));
  });
}

function crosses(box: PageBox): PageSubpath[] {
  const arm = 0.5;
  return steps(box.yMm, box.yMm + box.heightMm, 2).flatMap((y) => {
    const shift = Math.round(y / 2) % 2 === 0 ? 0 : 1.2;
    return steps(box.xMm - shift, box.xMm + box.widthMm, 2.4).flatMap((x) => [
      stroke(at(x + shift - arm, y - arm), at(x + shift + arm, y + arm)),
      stroke(at(x + shift - arm, y + arm), at(x + shift + arm, y - arm)),
    ]);
  });
}
