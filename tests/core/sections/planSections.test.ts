import { describe, expect, test } from 'vitest';
import {
  regionAreaM2,
  regionsAreaM2,
  signedAreaM2,
  subtractRegions,
  unionRegions,
} from '../../../core/kernel/index.ts';
import {
  MOST_SECTIONS,
  planSections,
  type SectionRequest,
  type ZoneSections,
} from '../../../core/sections/index.ts';
import type { Region } from '../../../core/spaces.ts';
import { lShape, moved, points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomGround } from '../../support/randomGround.ts';

const EVEN: SectionRequest = { loadAreaM2: 100, policy: 'even', headingDeg: null, swathM: 1.8, markM: null };
const SEEDS = Array.from({ length: 24 }, (_, i) => 100 + i);

function zone(...treated: readonly Region[]) {
  return { zoneId: 'front', zoneName: 'Front', letter: 'A', treated };
}

function cut(treated: readonly Region[], request: Partial<SectionRequest> = {}): ZoneSections {
  const result = planSections(zone(...treated), { ...EVEN, ...request });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

function problemOf(treated: readonly Region[], request: Partial<SectionRequest>): string | undefined {
  const result = planSections(zone(...treated), { ...EVEN, ...request });
  return result.ok ? undefined : result.problems[0].kind;
}

describe('even sections', () => {
  test('of a rectangle have borders at exact shares of its length', () => {
    const { sections, cutLines } = cut([region(rect(10, 20, 40, 6))], { loadAreaM2: 50 });
    expect(sections.map((section) => section.id)).toEqual(['A1', 'A2', 'A3', 'A4', 'A5']); // 240 / 50 rounded up
    const places = cutLines.map((line) => line.from.xM).sort((a, b) => a - b);
    places.forEach((xM, i) => {
      expectNear(xM, 18 + 8 * i, 1e-9, 'm'); // closed form: 10 + 40 m / 5 each
    });
  });

  test('of ground that just fills its loads take no load more', () => {
    expect(cut([region(rect(0, 0, 30, 10))]).sections.length).toBe(3); // 300 m² / 100 m²
    expect(cut([region(rect(0, 0, 30, 10.001))]).sections.length).toBe(4); // 300.03 m² / 100 m² rounded up
  });

  test('keep pieces of a zone apart', () => {
    const { sections, cutLines } = cut([region(rect(0, 0, 15, 10)), region(rect(30, 0, 5, 10))]);
    const areas = sections.map((section) => section.areaM2).sort((a, b) => a - b);
    [50, 75, 75].forEach((m2, i) => {
      expectNear(areas[i] ?? Number.NaN, m2, 1e-6, 'm²'); // 150 m² in two, 50 m² in one
    });
    expect(cutLines.length).toBe(1); // only the larger piece is cut
  });

  test.each(SEEDS)(
    'of random yard %i are connected, equal, within the load, and sum to the ground',
    (seed) => {
      const ground = randomGround(seed, 12 + (seed % 30), seed % 9);
      const wholeM2 = regionsAreaM2(ground);
      const loadAreaM2 = wholeM2 / (2 + (seed % 11));
      const { sections, cutLines } = cut(ground, { loadAreaM2, swathM: Math.sqrt(loadAreaM2) / 10 });
      const least = ground.reduce(
        (sum, piece) => sum + Math.ceil(regionAreaM2(piece) / loadAreaM2 - 1e-9),
        0,
      );
      expect(sections.length).toBe(least); // the law: a piece needs area / load rounded up
      for (const piece of ground) {
        const inPiece = sections.filter((section) => subtractM2([section.region], [piece]) < 1e-3);
        const equalM2 = regionAreaM2(piece) / inPiece.length;
        for (const section of inPiece) expectNear(section.areaM2, equalM2, 1e-6 * equalM2, 'm²');
      }
      for (const section of sections) {
        expect(section.areaM2).toBeLessThanOrEqual(loadAreaM2 * (1 + 1e-9));
        expect(signedAreaM2(section.region.outer)).toBeGreaterThan(0);
        // One outer ring that the kernel takes in one piece: connected.
        expect(unionRegions([section.region]).filter((part) => regionAreaM2(part) > 1e-3).length).toBe(1);
      }
      const regions = sections.map((section) => section.region);
      expectNear(regionsAreaM2(regions), wholeM2, 1e-8 * wholeM2, 'm²'); // the law: nothing lost in sum
      expectNear(regionsAreaM2(unionRegions(regions)), wholeM2, 1e-5 * wholeM2, 'm²'); // nor counted twice
      const ids = new Set(sections.map((section) => section.id));
      for (const { between } of cutLines) {
        expect(between.every((id) => ids.has(id))).toBe(true);
        expect(between[0]).not.toBe(between[1]);
      }
    },
  );
});

function subtractM2(from: readonly Region[], minus: readonly Region[]): number {
  return regionsAreaM2(subtractRegions(from, minus));
}

describe('laws', () => {
  test('borders make up the difference between the sections and the ground in edge length', () => {
    const ground = region(lShape(30, 20, 15, 8), rect(5, 5, 2, 2));
    const { sections, cutLines } = cut([ground]);
    const edgeM = (r: Region): number =>
      [r.outer, ...r.holes].reduce((sum, ring) => sum + perimeterM(ring), 0);
    const cutM = cutLines.reduce((sum, l) => sum + Math.hypot(l.to.xM - l.from.xM, l.to.yM - l.from.yM), 0);
    const sumM = sections.reduce((sum, section) => sum + edgeM(section.region), 0);
    expectNear(2 * cutM, sumM - edgeM(ground), 1e-3, 'm'); // every border is an edge of two sections
  });

  test('a larger load never asks for more sections', () => {
    const ground = randomGround(7, 20, 4);
    const wholeM2 = regionsAreaM2(ground);
    let before = Infinity;
    for (let loads = 12; loads >= 1; loads--) {
      const { sections } = cut(ground, { loadAreaM2: wholeM2 / loads, swathM: 0.5 });
      expect(sections.length).toBeLessThanOrEqual(before);
      before = sections.length;
    }
  });

  test('the same ground is cut the same way, and turned ground as well', () => {
    const ring = points([0, 0], [30, 2], [34, 17], [18, 25], [3, 19]);
    const straight = cut([region(ring)]);
    expect(cut([region(ring)])).toEqual(straight);
    const turned = cut([region(moved(ring, 0.7, 300, -90))]);
    const lengthOf = (cutSections: ZoneSections): number =>
      cutSections.cutLines.reduce((sum, l) => sum + Math.hypot(l.to.xM - l.from.xM, l.to.yM - l.from.yM), 0);
    expectNear(lengthOf(turned), lengthOf(straight), 0.01 * lengthOf(straight), 'm'); // rotation changes no length
  });
});

describe('fewest loads', () => {
  test('fill every load but the last', () => {
    const { sections } = cut([region(rect(0, 0, 25, 10))], { policy: 'fewest' });
    const areas = sections.map((section) => section.areaM2).sort((a, b) => a - b);
    [50, 100, 100].forEach((m2, i) => {
      expectNear(areas[i] ?? Number.NaN, m2, 1e-6, 'm²'); // 250 m² in loads of 100 m²
    });
  });

  test('of loads that fit exactly are all full', () => {
    const { sections } = cut([region(rect(0, 0, 30, 10))], { policy: 'fewest' });
    for (const section of sections) expectNear(section.areaM2, 100, 1e-6, 'm²'); // 300 m² / 3
  });
});

describe('what cannot be planned is said', () => {
  test('a load smaller than a square of one swath', () => {
    expect(problemOf([region(rect(0, 0, 9, 9))], { loadAreaM2: 3 })).toBe('plan/load-below-one-swath-square');
    expect(problemOf([region(rect(0, 0, 9, 9))], { loadAreaM2: Number.NaN })).toBe(
      'plan/load-below-one-swath-square',
    );
  });
  test('more sections than anyone walks', () => {
    const loadAreaM2 = 10_000 / (MOST_SECTIONS + 1);
    expect(problemOf([region(rect(0, 0, 100, 100))], { loadAreaM2 })).toBe('plan/too-many-sections');
  });
  test('nothing to treat', () => {
    expect(problemOf([], {})).toBe('plan/nothing-to-treat');
  });
  test('a search stopped half way', () => {
    expect(problemOf([region(rect(0, 0, 90, 90))], { isCancelled: () => true })).toBe('plan/cancelled');
  });
});

function perimeterM(ring: Region['outer']): number {
  return ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    return sum + Math.hypot(b.xM - a.xM, b.yM - a.yM);
  }, 0);
}

describe('cuts on tape marks', () => {
  const markM = 0.1;

  test.each(SEEDS)('leave every load its room and lose no ground, yard %i', (seed) => {
    const ground = randomGround(seed, 9, 2);
    const wholeM2 = regionsAreaM2(ground);
    const loadAreaM2 = wholeM2 / (2 + (seed % 6)) / 0.97;
    const request = { loadAreaM2, swathM: Math.sqrt(loadAreaM2) / 10, markM };
    for (const policy of ['even', 'fewest'] as const) {
      const { sections } = cut(ground, { ...request, policy });
      const least = ground.reduce(
        (sum, piece) => sum + Math.ceil(regionAreaM2(piece) / loadAreaM2 - 1e-9),
        0,
      );
      expect(sections.length).toBe(least); // each piece in as few loads as its area asks
      for (const section of sections) expect(section.areaM2).toBeLessThanOrEqual(loadAreaM2 * (1 + 1e-9));
      const sumM2 = sections.reduce((sum, section) => sum + section.areaM2, 0);
      expectNear(sumM2, wholeM2, 1e-6 * wholeM2, 'm²');
    }
  });

  test('of a rectangle stand on tenths of a metre along its edges', () => {
    const { cutLines } = cut([region(rect(0, 0, 41.3, 6))], { loadAreaM2: 60, markM });
    expect(cutLines.length).toBe(4); // 247.8 m² / 60 m² rounded up, less one
    for (const { from, to } of cutLines) {
      for (const { xM } of [from, to]) expectNear(xM * 10, Math.round(xM * 10), 1e-6, 'tenths of a metre');
    }
  });

  test('stay where they are when every load is full to the brim', () => {
    const { cutLines } = cut([region(rect(0, 0, 41.37, 6))], { loadAreaM2: 6 * 13.79, markM });
    const places = cutLines.map((line) => line.from.xM).sort((a, b) => a - b);
    [13.79, 27.58].forEach((xM, i) => {
      expectNear(places[i] ?? Number.NaN, xM, 1e-6, 'm'); // thirds of 41.37 m: no other cut keeps within the loads
    });
  });
});
