import { describe, expect, test } from 'vitest';
import { hoseGround, planHose } from '../../../core/hose/index.ts';
import { drawHose, hoseCellWords, hoseLine, hoseLineWords } from '../../../core/sheet/mapHose.ts';
import { viewOf } from '../../../core/sheet/mapView.ts';
import { overviewPage } from '../../../core/sheet/overviewPage.ts';
import { sectionPages } from '../../../core/sheet/sectionPages.ts';
import type { SheetContext } from '../../../core/sheet/sheetContext.ts';
import { expectNear } from '../../support/expectNear.ts';
import { contextOf } from '../../support/sheetContexts.ts';
import { textsOf } from '../../support/sheetPages.ts';

/** Two sections side by side, a shed south of them, and the spigot south of the shed. */
const PLAIN = contextOf({
  name: 'Two halves',
  units: 'metric',
  zones: [
    {
      name: 'lawn',
      ring: [
        [0, 0],
        [20, 0],
        [20, 10],
        [0, 10],
      ],
      cutsAtXM: [10],
    },
  ],
  things: [
    {
      kind: 'building',
      name: 'shed',
      ring: [
        [12, -4],
        [18, -4],
        [18, -2],
        [12, -2],
      ],
    },
  ],
  marks: [{ id: 's', kind: 'spigot', name: 'tap', at: { xM: 13, yM: -5 } }],
});

function withHose(context: SheetContext, lengthM: number): SheetContext {
  const asked = hoseGround(context.yard, { lengthM, spigotIds: null, clearanceM: 0 });
  const { ground } = context.plan;
  const hosed = {
    ...ground,
    request: { ...ground.request, hose: asked },
    hose: planHose(asked, ground),
  };
  return { ...context, plan: { ...context.plan, ground: hosed } };
}

const HOSED = withHose(PLAIN, 30);

describe('the hose on paper', () => {
  test('is two lines close together with a ring at each bend, to scale', () => {
    const view = viewOf(
      { minXM: 0, minYM: -5, maxXM: 20, maxYM: 10 },
      { xMm: 0, yMm: 0, widthMm: 200, heightMm: 150 },
      100,
    );
    const marks = drawHose(view, HOSED.plan.ground.hose, ['A2']);
    expect(marks).toHaveLength(2 + 1); // outer and inner line, and the shed’s south-west corner
    const [outer] = marks;
    const points = outer?.kind === 'path' ? (outer.subpaths[0]?.points ?? []) : [];
    const lengthMm = points.slice(1).reduce((sum, b, i) => {
      const a = points[i] ?? b;
      return sum + Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);
    }, 0);
    expectNear(lengthMm, ((HOSED.plan.ground.hose?.sections[1]?.lengthM ?? 0) * 1000) / 100, 1e-6, 'mm'); // 1 : 100
    expect(drawHose(view, null, ['A2'])).toEqual([]);
    expect(hoseLine(points)).toHaveLength(2);
  });

  test('is said in one line and in one cell, or not at all', () => {
    expect(hoseLineWords(HOSED, 'A2')).toMatch(/^Hose from tap, [\d.]+ m, bends at SW corner of shed$/);
    expect(hoseCellWords(HOSED, 'A2')).toMatch(/^[\d.]+ m, tap$/);
    expect(hoseLineWords(PLAIN, 'A2')).toBeUndefined();
    expect(hoseCellWords(PLAIN, 'A2')).toBe('');
  });

  test('stands on the section pages, in the overview’s table and its legend', () => {
    const [, second] = sectionPages(HOSED);
    expect(textsOf(second?.marks ?? [])).toContain(hoseLineWords(HOSED, 'A2'));
    const overview = overviewPage(HOSED);
    const words = overview.ok ? textsOf(overview.value.marks) : [];
    expect(words).toContain('hose, on the section pages');
    expect(words).toContain(hoseCellWords(HOSED, 'A2'));
    const bare = overviewPage(PLAIN);
    expect(bare.ok ? textsOf(bare.value.marks).filter((each) => each.includes('hose')) : ['no page']).toEqual(
      [],
    );
  });
});
