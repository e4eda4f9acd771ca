import { expect, test } from 'vitest';
import { boxOutline } from '../../../core/sheet/drawing.ts';
import { findHatch, findHatchOf, GROUND_INK, OVERLAP_INK } from '../../../core/sheet/hatch.ts';
import { CUT_OUT_KINDS } from '../../../core/yard.ts';
import { marksOf } from '../../support/sheetPages.ts';

const BOX = { xMm: 30, yMm: 40, widthMm: 20, heightMm: 15 };
const PAGE = { xMm: 0, yMm: 0, widthMm: 210, heightMm: 297 };

test('the kinds of cut-out differ in hatch or line without any colour', () => {
  const looks = CUT_OUT_KINDS.map((kind) => {
    const hatch = findHatch(kind, [boxOutline(BOX)], PAGE);
    return JSON.stringify([
      hatch?.marks.map((mark) => (mark.kind === 'path' ? mark.subpaths : [])),
      GROUND_INK[kind].edge.widthMm,
    ]);
  });
  expect(new Set(looks).size).toBe(CUT_OUT_KINDS.length);
  const shared = findHatchOf(OVERLAP_INK, [boxOutline(BOX)], PAGE);
  expect(shared?.marks.length).toBe(1);
  expect(looks).not.toContain(
    JSON.stringify([
      shared?.marks.map((mark) => (mark.kind === 'path' ? mark.subpaths : [])),
      OVERLAP_INK.edge.widthMm,
    ]),
  );
});

test('a building has the heaviest edge of all', () => {
  const { building, ...others } = GROUND_INK;
  for (const ink of Object.values(others)) expect(ink.edge.widthMm).toBeLessThan(building.edge.widthMm);
});

test('a check plot is left open and dashed', () => {
  expect(findHatch('check-plot', [boxOutline(BOX)], PAGE)).toBeUndefined();
  expect(GROUND_INK['check-plot'].edge.dashMm).not.toBeNull();
});

test('hatch covers its shape from edge to edge and is clipped to it', () => {
  for (const kind of CUT_OUT_KINDS) {
    const hatch = findHatch(kind, [boxOutline(BOX)], PAGE);
    expect(hatch?.subpaths).toEqual([boxOutline(BOX)]);
    const points = marksOf(hatch?.marks ?? []).flatMap((mark) =>
      mark.kind === 'path' ? mark.subpaths.flatMap((subpath) => subpath.points) : [],
    );
    const xs = points.map((point) => point.xMm);
    // No hatch has a step of more than 4 mm.
    expect(Math.min(...xs)).toBeLessThan(BOX.xMm + 4);
    expect(Math.max(...xs)).toBeGreaterThan(BOX.xMm + BOX.widthMm - 4);
  }
});

test('ground off the map has no hatch, and a huge pond costs no more ink than the window on it', () => {
  expect(findHatch('water', [boxOutline({ ...BOX, xMm: 900 })], PAGE)).toBeUndefined();
  const pond = findHatch('water', [boxOutline({ xMm: -1e6, yMm: -1e6, widthMm: 2e6, heightMm: 2e6 })], BOX);
  const strokes = marksOf(pond?.marks ?? []).flatMap((mark) => (mark.kind === 'path' ? mark.subpaths : []));
  expect(strokes.length).toBeLessThan(20); // 15 mm of window at 1.7 mm a wave, and a few over its edge
});
