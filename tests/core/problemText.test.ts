import { describe, expect, test } from 'vitest';
import { problemText } from '../../core/problemText.ts';
import type { Problem, ProblemKind, ProblemOf } from '../../core/problems.ts';

const SHAPE = { outlineId: 'o1', name: 'Back lawn' };
const FIELD = { field: 'Load area' };
const PLAN = { thing: 'Side strip' };
const FILE = { fileName: 'oak-street.gpkg' };

/** One problem of every kind; a kind added to the union and not here does not compile. */
const EVERY: { readonly [K in ProblemKind]: ProblemOf<K> } = {
  'shape/self-crossing': {
    kind: 'shape/self-crossing',
    where: SHAPE,
    facts: { crossing: { xM: 1, yM: 2 } },
  },
  'shape/not-uncrossed': {
    kind: 'shape/not-uncrossed',
    where: SHAPE,
    facts: { crossing: { xM: 1, yM: 2 } },
  },
  'shape/too-few-points': { kind: 'shape/too-few-points', where: SHAPE, facts: { points: 2 } },
  'shape/zero-area': { kind: 'shape/zero-area', where: SHAPE, facts: {} },
  'shape/not-finite': { kind: 'shape/not-finite', where: SHAPE, facts: {} },
  'shape/no-size': { kind: 'shape/no-size', where: SHAPE, facts: { size: 'radius' } },
  'shape/cut-out-outside': { kind: 'shape/cut-out-outside', where: SHAPE, facts: {} },
  'shape/covered-whole': { kind: 'shape/covered-whole', where: SHAPE, facts: {} },
  'shape/overlaps': {
    kind: 'shape/overlaps',
    where: SHAPE,
    facts: { ownerName: 'Front lawn', by: 'smaller', overlapM2: 9.290304 },
  },
  'shape/keep-off-width': { kind: 'shape/keep-off-width', where: SHAPE, facts: { widthM: -1, mostM: 100 } },
  'shape/too-large': { kind: 'shape/too-large', where: SHAPE, facts: { extentM: 304_800 } },
  'shape/no-grade': { kind: 'shape/no-grade', where: SHAPE, facts: { mostGrade: 2 } },
  'shape/steep': { kind: 'shape/steep', where: SHAPE, facts: { steepM2: 40, steepestGrade: 0.42 } },
  'shape/heights-missing': { kind: 'shape/heights-missing', where: SHAPE, facts: { missingM2: 12 } },
  'value/not-a-number': { kind: 'value/not-a-number', where: FIELD, facts: { typed: 'twelve' } },
  'value/not-a-date': { kind: 'value/not-a-date', where: FIELD, facts: { typed: 'May' } },
  'value/missing-unit': {
    kind: 'value/missing-unit',
    where: FIELD,
    facts: { typed: '12', expected: '100 m²' },
  },
  'value/unknown-unit': {
    kind: 'value/unknown-unit',
    where: FIELD,
    facts: { typed: '12 kg', expected: '100 m²' },
  },
  'value/out-of-range': {
    kind: 'value/out-of-range',
    where: FIELD,
    facts: { least: -360, most: 360, unit: '°' },
  },
  'value/not-positive': { kind: 'value/not-positive', where: FIELD, facts: {} },
  'value/too-steep': { kind: 'value/too-steep', where: FIELD, facts: { grade: 2.5, mostGrade: 2 } },
  'value/scale-does-not-fit': {
    kind: 'value/scale-does-not-fit',
    where: FIELD,
    facts: { scale: 50, fittingScale: 200 },
  },
  'value/no-scale': { kind: 'value/no-scale', where: FIELD, facts: {} },
  'value/rate-over-label': {
    kind: 'value/rate-over-label',
    where: FIELD,
    facts: { rateLPerM2: 0.002, mostRateLPerM2: 0.001 },
  },
  'value/carrier-under-label': {
    kind: 'value/carrier-under-label',
    where: FIELD,
    facts: { carrierLPerM2: 0.01, leastCarrierLPerM2: 0.04 },
  },
  'value/rate-over-carrier': {
    kind: 'value/rate-over-carrier',
    where: FIELD,
    facts: { rateLPerM2: 0.1, carrierLPerM2: 0.01 },
  },
  'value/carrier-unusual': {
    kind: 'value/carrier-unusual',
    where: FIELD,
    facts: { carrierLPerM2: 3, leastLPerM2: 0.004, mostLPerM2: 0.2 },
  },
  'value/too-few': { kind: 'value/too-few', where: FIELD, facts: { found: 1, least: 3 } },
  'value/counts-differ': { kind: 'value/counts-differ', where: FIELD, facts: { found: 2, expected: 8 } },
  'value/tapes-do-not-meet': {
    kind: 'value/tapes-do-not-meet',
    where: FIELD,
    facts: { firstM: 3, secondM: 4, apartM: 9 },
  },
  'value/tapes-cross-flat': { kind: 'value/tapes-cross-flat', where: FIELD, facts: { timesError: 5.6 } },
  'value/nothing-to-hold': { kind: 'value/nothing-to-hold', where: FIELD, facts: {} },
  'value/radius-below-half-chord': {
    kind: 'value/radius-below-half-chord',
    where: FIELD,
    facts: { radiusM: 3, leastM: 4.5 },
  },
  'value/behind-baseline': { kind: 'value/behind-baseline', where: FIELD, facts: { offsetM: -1.2 } },
  'value/closes-badly': { kind: 'value/closes-badly', where: FIELD, facts: { misclosureM: 1.5, oneIn: 40 } },
  'value/lengths-disagree': {
    kind: 'value/lengths-disagree',
    where: FIELD,
    facts: { lengthM: 36, byOthersM: 30 },
  },
  'value/not-a-place': { kind: 'value/not-a-place', where: FIELD, facts: { typed: 'here' } },
  'value/place-out-of-range': {
    kind: 'value/place-out-of-range',
    where: FIELD,
    facts: { swappedLikely: true },
  },
  'value/unknown-crs': { kind: 'value/unknown-crs', where: FIELD, facts: { crs: 'EPSG:1' } },
  'value/place-outside-crs': { kind: 'value/place-outside-crs', where: FIELD, facts: { crs: 'EPSG:2965' } },
  'value/places-coincide': { kind: 'value/places-coincide', where: FIELD, facts: {} },
  'value/scale-misfit': { kind: 'value/scale-misfit', where: FIELD, facts: { ratio: 1.018 } },
  'value/no-such-mark': {
    kind: 'value/no-such-mark',
    where: FIELD,
    facts: { typed: 'well', known: ['tap by the shed'] },
  },
  'value/missing': { kind: 'value/missing', where: FIELD, facts: {} },
  'plan/load-below-one-swath-square': {
    kind: 'plan/load-below-one-swath-square',
    where: PLAN,
    facts: { capacityM2: 0.5, swathM: 1.8 },
  },
  'plan/swath-wider-than-zone': { kind: 'plan/swath-wider-than-zone', where: PLAN, facts: { swathM: 1.8 } },
  'plan/too-narrow-to-walk': {
    kind: 'plan/too-narrow-to-walk',
    where: PLAN,
    facts: { areaM2: 2.4, widthM: 0.9 },
  },
  'plan/nothing-to-treat': { kind: 'plan/nothing-to-treat', where: PLAN, facts: {} },
  'plan/too-many-sections': {
    kind: 'plan/too-many-sections',
    where: PLAN,
    facts: { sections: 900, most: 500 },
  },
  'plan/no-connected-cut': { kind: 'plan/no-connected-cut', where: PLAN, facts: { sections: 7 } },
  'plan/held-cut-parts-nothing': {
    kind: 'plan/held-cut-parts-nothing',
    where: PLAN,
    facts: { place: 2, isZoneGone: false },
  },
  'plan/no-spigot': { kind: 'plan/no-spigot', where: { thing: 'The hose' }, facts: {} },
  'plan/spigot-in-wall': {
    kind: 'plan/spigot-in-wall',
    where: { thing: 'front spigot' },
    facts: { depthM: 3, mostM: 1 },
  },
  'plan/spigot-shut-in': {
    kind: 'plan/spigot-shut-in',
    where: { thing: 'court spigot' },
    facts: { clearanceM: 0.3, isByClearance: true },
  },
  'plan/hose-no-way': {
    kind: 'plan/hose-no-way',
    where: { thing: 'A1 and A2' },
    facts: { clearanceM: 0.3, isByClearance: false },
  },
  'plan/hose-too-short': {
    kind: 'plan/hose-too-short',
    where: { thing: 'A3' },
    facts: { lengthM: 15, neededM: 18.9, isAll: false },
  },
  'plan/cancelled': { kind: 'plan/cancelled', where: PLAN, facts: {} },
  'plan/sections-apart': { kind: 'plan/sections-apart', where: { thing: 'A1 and A3' }, facts: {} },
  'plan/join-over-load': {
    kind: 'plan/join-over-load',
    where: { thing: 'A1 and A2' },
    facts: { togetherM2: 120, loadAreaM2: 100 },
  },
  'plan/join-not-straight': {
    kind: 'plan/join-not-straight',
    where: { thing: 'A1 and A2' },
    facts: {},
  },
  'plan/cut-off-edge': { kind: 'plan/cut-off-edge', where: { thing: 'One end of the cut' }, facts: {} },
  'plan/cut-parts-nothing': { kind: 'plan/cut-parts-nothing', where: PLAN, facts: {} },
  'compare/only-one-placed': {
    kind: 'compare/only-one-placed',
    where: {},
    facts: { looseName: 'Oak Street', looseIs: 'earlier' },
  },
  'compare/too-far-apart': { kind: 'compare/too-far-apart', where: {}, facts: { apartM: 48_280.32 } },
  'file/not-found': { kind: 'file/not-found', where: FILE, facts: {} },
  'file/not-a-yard': { kind: 'file/not-a-yard', where: FILE, facts: { found: 'a PNG picture' } },
  'file/newer-version': { kind: 'file/newer-version', where: FILE, facts: { fileVersion: 9, ourVersion: 1 } },
  'file/damaged': { kind: 'file/damaged', where: FILE, facts: { detail: 'page 3 is torn' } },
  'file/locked': { kind: 'file/locked', where: FILE, facts: {} },
  'file/read-only': { kind: 'file/read-only', where: FILE, facts: {} },
  'file/disk-full': { kind: 'file/disk-full', where: FILE, facts: {} },
  'file/exists': { kind: 'file/exists', where: FILE, facts: {} },
  'file/too-large': { kind: 'file/too-large', where: FILE, facts: { bytes: 3e9, mostBytes: 5e8 } },
  'file/too-many-pixels': {
    kind: 'file/too-many-pixels',
    where: FILE,
    facts: { widthPx: 20_000, heightPx: 10_000, mostPx: 40_000_000 },
  },
  'file/yard-has-no-place': { kind: 'file/yard-has-no-place', where: FILE, facts: {} },
  'file/heights-alone': { kind: 'file/heights-alone', where: FILE, facts: {} },
  'file/heights-elsewhere': { kind: 'file/heights-elsewhere', where: FILE, facts: {} },
  'file/too-many-heights': {
    kind: 'file/too-many-heights',
    where: FILE,
    facts: { heights: 73_297_000, most: 250_000 },
  },
  'file/unknown-kind': { kind: 'file/unknown-kind', where: FILE, facts: { found: 'a spreadsheet' } },
  'file/unreadable': { kind: 'file/unreadable', where: FILE, facts: { detail: 'it ends early' } },
  'file/no-georeference': { kind: 'file/no-georeference', where: FILE, facts: {} },
  'file/unknown-crs': { kind: 'file/unknown-crs', where: FILE, facts: { crs: 'EPSG:999999' } },
  'file/coordinates-out-of-range': {
    kind: 'file/coordinates-out-of-range',
    where: FILE,
    facts: { feature: 'feature 4', swappedLikely: true },
  },
  'file/broken-ring': {
    kind: 'file/broken-ring',
    where: FILE,
    facts: { feature: 'feature 4', detail: 'it is not closed' },
  },
  'file/nothing-in-it': { kind: 'file/nothing-in-it', where: FILE, facts: {} },
  'host/bad-request': { kind: 'host/bad-request', where: {}, facts: { detail: 'no path' } },
  'host/unknown-yard': { kind: 'host/unknown-yard', where: {}, facts: {} },
  'host/stale-edit': { kind: 'host/stale-edit', where: {}, facts: {} },
  'host/defect': { kind: 'host/defect', where: {}, facts: { detail: 'no such row' } },
  'host/unreachable': { kind: 'host/unreachable', where: {}, facts: {} },
};
const ALL: readonly Problem[] = Object.values(EVERY);

/** Every name and text a problem carries that the person must find again in the words. */
function namesIn(problem: Problem): string[] {
  const { outlineId: _, ...where } = { outlineId: '', ...problem.where };
  return [...Object.values(where), ...Object.values(problem.facts)].filter(
    (value): value is string => typeof value === 'string',
  );
}

describe('the words for a problem', () => {
  test.each(ALL)('$kind: what and mend are whole sentences without exclamation', (problem) => {
    for (const units of ['us', 'metric'] as const) {
      const { what, mend } = problemText(problem, units);
      for (const words of [what, mend]) {
        expect(words).toMatch(/^[A-Z“a-z].*\.$/);
        expect(words).not.toMatch(/!|undefined|NaN|\[object/);
      }
      expect(mend).toMatch(/^[A-Z]/);
    }
  });

  test.each(ALL)('$kind: name the thing, the field or the file, and what was found there', (problem) => {
    const { what, mend } = problemText(problem, 'us');
    for (const name of namesIn(problem)) expect(`${what} ${mend}`).toContain(name);
  });

  test('carry numbers in the units of the person', () => {
    expect(problemText(EVERY['shape/overlaps'], 'us').what).toContain('100 ft²'); // 9.290304 m² = 100 × 0.3048²
    expect(problemText(EVERY['shape/overlaps'], 'metric').what).toContain('9.3 m²'); // 9.290304 to one decimal
    expect(problemText(EVERY['file/too-large'], 'us').what).toContain('3,000.0 MB'); // 3e9 bytes / 1e6
  });

  test('begin with a capital even where the field on its line does not', () => {
    const words = problemText({ ...EVERY['value/not-positive'], where: { field: 'swath' } }, 'us');
    expect(words.what).toBe('Swath must be more than zero.'); // the field, capitalised
  });

  test('say that latitude and longitude are swapped only where that is likely', () => {
    const swapped = EVERY['file/coordinates-out-of-range'];
    const lost = { ...swapped, facts: { ...swapped.facts, swappedLikely: false } };
    expect(problemText(swapped, 'us').mend).toContain('swapped');
    expect(problemText(lost, 'us').mend).not.toContain('swapped');
  });

  test('a kind without words is a defect, not a blank line', () => {
    expect(() => problemText({ kind: 'shape/unheard-of' } as unknown as Problem, 'us')).toThrow(
      'no words for',
    );
  });
});
