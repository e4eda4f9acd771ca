import { tracedRing } from '../../../core/curves/index.ts';
import { describe, expect, test } from 'vitest';
import { layoutSheet, type PageSubpath, type PathMark, type SheetPage } from '../../../core/sheet/index.ts';
import { GROUND_INK } from '../../../core/sheet/hatch.ts';
import type { Job, Outline, Yard } from '../../../core/yard.ts';
import { expectNear } from '../../support/expectNear.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { HAND_MADE_YARDS, LONG_STRIP, SMALL_SQUARE } from '../../support/handMadeYards.ts';
import { marksOf, sheetOf, textMarksOf } from '../../support/sheetPages.ts';

/** The 1:n in a page's title block, told from a time such as 1:04 by its size; undefined on a page without a map. */
function findScaleOn(page: SheetPage): number | undefined {
  for (const mark of textMarksOf(page.marks)) {
    const found = mark.sizeMm === 3.4 ? /(?:^|\()1:(\d+)\)?$/.exec(mark.text) : null;
    if (found !== null) return Number(found[1]);
  }
  return undefined;
}

/** The zone edges drawn on a page, in the order of the yard's zones. */
function zoneEdges(page: SheetPage): PageSubpath[] {
  return marksOf(page.marks)
    .filter((mark): mark is PathMark => mark.kind === 'path' && mark.stroke === GROUND_INK.zone.edge)
    .flatMap((mark) => mark.subpaths)
    .filter((subpath) => subpath.points.some((point) => point.yMm < page.heightMm));
}

function perimeterMm({ points }: PageSubpath): number {
  return points.reduce((sum, point, i) => {
    const next = points[(i + 1) % points.length] ?? point;
    return sum + Math.hypot(next.xMm - point.xMm, next.yMm - point.yMm);
  }, 0);
}

function perimeterM({ outer }: Outline): number {
  const ring = tracedRing(outer);
  return ring.reduce((sum, point, i) => {
    const next = ring[(i + 1) % ring.length] ?? point;
    return sum + Math.hypot(next.xM - point.xM, next.yM - point.yM);
  }, 0);
}

function zonesOf(yard: Yard): Outline[] {
  return yard.outlines.filter((outline) => outline.kind === 'zone');
}

describe('paper length times the scale in words is the length in the yard', () => {
  for (const [name, ground] of Object.entries(HAND_MADE_YARDS)) {
    test(`on every map page of ${name}`, () => {
      const { yard } = handMadePlan(ground);
      let measured = 0;
      for (const page of sheetOf(ground)) {
        const scale = findScaleOn(page);
        if (scale === undefined) continue;
        const edges = zoneEdges(page);
        zonesOf(yard).forEach((zone, i) => {
          const lengthM = (perimeterMm(edges[i] as PageSubpath) * scale) / 1000;
          expectNear(lengthM, perimeterM(zone), 1e-9 * perimeterM(zone), 'm'); // the yard's own perimeter
          measured++;
        });
      }
      expect(measured).toBeGreaterThan(0);
    });
  }
});

test('a scale asked for is the scale drawn', () => {
  const { yard, plan } = handMadePlan(SMALL_SQUARE);
  const sheet = layoutSheet({
    yard,
    plan,
    job: yard.jobs[0] as Job,
    paper: 'a4',
    scale: 137,
    madeOn: '2026-11-25',
  });
  if (!sheet.ok) throw new Error('not laid out');
  const edge = zoneEdges(sheet.value[0] as SheetPage)[0] as PageSubpath;
  expectNear(perimeterMm(edge), 40_000 / 137, 1e-9, 'mm'); // four sides of 10 m at 1:137
});

test('a yard forty times as long as wide lies along the longer side of the paper', () => {
  const [overview] = sheetOf(LONG_STRIP);
  expect(overview?.widthMm).toBe(297); // A4 landscape, ISO 216
});
