import { straight, tracedRing } from '../../../../core/curves/index.ts';
import { describe, expect, test } from 'vitest';
import { planJob } from '../../../../core/plan/index.ts';
import { yardToLonLat } from '../../../../core/earth/index.ts';
import { geoJsonText, type GeoJsonFile, yardToGeoJson } from '../../../../electron/host/exporters/geoJson.ts';
import { planToGeoJson } from '../../../../electron/host/exporters/planGeoJson.ts';
import { sampleYard } from '../../../../electron/host/sample.ts';
import { expectNear } from '../../../support/expectNear.ts';

const yard = sampleYard();

function fileOf(result: ReturnType<typeof yardToGeoJson>): GeoJsonFile {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

/** Twice the signed area of a ring of positions in degrees: only its sign is used. */
function turning(ring: readonly (readonly [number, number])[]): number {
  return ring.slice(1).reduce((sum, [x, y], at) => {
    const [px, py] = ring[at] ?? [0, 0];
    return sum + px * y - x * py;
  }, 0);
}

describe('a yard as GeoJSON', () => {
  const file = fileOf(yardToGeoJson(yard, 'x'));

  test('has every outline and point with its kind and name', () => {
    const told = file.features.map(({ properties }) => [properties.kind, properties.name]);
    expect(told).toEqual([...yard.outlines, ...yard.marks].map(({ kind, name }) => [kind, name]));
  });

  test('has closed rings, counter-clockwise outside, at full precision', () => {
    for (const [at, { geometry }] of file.features.entries()) {
      if (geometry.type !== 'Polygon') continue;
      const [outer = []] = geometry.coordinates;
      expect(outer.at(-1)).toEqual(outer[0]); // RFC 7946, 3.1.6: first and last are the same
      expect(turning(outer as [number, number][])).toBeGreaterThan(0); // RFC 7946, 3.1.6: right-hand rule
      const drawn = yard.outlines[at];
      const [first] = drawn ? tracedRing(drawn.outer) : [];
      const origin = { lonDeg: -86.2, latDeg: 39.9 };
      const { lonDeg, latDeg } = yardToLonLat(origin, first ?? { xM: 0, yM: 0 });
      expect(outer.some(([lon, lat]) => lon === lonDeg && lat === latDeg)).toBe(true);
    }
  });

  test('turns an outline drawn clockwise', () => {
    const drawn = yard.outlines.map((outline) => ({
      ...outline,
      outer: straight([...tracedRing(outline.outer)].reverse()),
    }));
    const turned = fileOf(yardToGeoJson({ ...yard, outlines: drawn }, 'x'));
    for (const { geometry } of turned.features) {
      if (geometry.type === 'Polygon') {
        expect(turning((geometry.coordinates[0] ?? []) as [number, number][])).toBeGreaterThan(0);
      }
    }
  });

  test('is text with one feature a line that parses back to the same', () => {
    const text = geoJsonText(file);
    expect(JSON.parse(text)).toEqual(file);
    expect(text.split('\n')).toHaveLength(file.features.length + 3); // head, foot and the end of the last line
  });

  test('is refused for a yard that is nowhere', () => {
    const loose = { ...yard, details: { ...yard.details, frame: { kind: 'loose' } as const } };
    expect(yardToGeoJson(loose, 'lot.gpkg')).toMatchObject({
      ok: false,
      problems: [{ kind: 'file/yard-has-no-place', where: { fileName: 'lot.gpkg' } }],
    });
  });
});

describe('a plan as GeoJSON', () => {
  const planned = planJob(yard, 'job-spring-feed');
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  const { ground } = planned.value;
  const file = fileOf(planToGeoJson(yard, ground, 'x', { more: 1 }));
  const ofRole = (role: string) => file.features.filter(({ properties }) => properties.role === role);
  const summary = file.summary as {
    readonly frameOrigin: object;
    readonly zones: readonly {
      readonly name: string;
      readonly treatedAreaM2: number;
      readonly netAreaM2: number;
      readonly sigmaM2: number;
    }[];
    readonly totals: Readonly<Record<string, number>>;
    readonly sections: readonly {
      readonly id: string;
      readonly areaM2: number;
      readonly sigmaM2: number;
      readonly wetM: number;
    }[];
    readonly lengths: Readonly<Record<'onM' | 'offM' | 'totalM' | 'wetM', number>>;
    readonly coverage: Readonly<Record<string, number>>;
    readonly more: number;
  };

  test('has a net area a zone, every section, cut line and pass', () => {
    expect(ofRole('net-area')).toHaveLength(3); // back, front, west side
    expect(ofRole('section').map(({ properties }) => properties.id)).toEqual(
      ground.sections.map(({ id }) => id),
    );
    expect(ofRole('cut-line')).toHaveLength(ground.cutLines.length);
    expect(ofRole('pass')).toHaveLength(ground.passes.length);
    expect(
      ofRole('net-area').length + ground.sections.length + ground.cutLines.length + ground.passes.length,
    ).toBe(file.features.length);
  });

  test('has passes in walking order, each of a section that is there', () => {
    const orders = ofRole('pass').map(({ properties }) => properties.order);
    expect(orders).toEqual(orders.map((_, at) => at + 1)); // counted from 1 through the whole plan
    const ids = new Set(ground.sections.map(({ id }) => id));
    for (const { properties } of ofRole('pass')) expect(ids.has(String(properties.section))).toBe(true);
  });

  test('tells of every cut line the flags at its ends, how each is set, and a check', () => {
    const flags = new Map<string, string>();
    for (const { properties } of ofRole('cut-line')) {
      const ends = properties.flags as { readonly letter: string; readonly words: string }[];
      expect(ends).toHaveLength(2);
      for (const { letter, words } of ends) {
        expect(flags.get(letter) ?? words).toBe(words); // a flag two lines share is set one way
        flags.set(letter, words);
      }
      expect((properties.checks as string[])[0]).toMatch(/^[a-z]+ to .+ \d/);
    }
    expect(flags.get('a')).toMatch(/^\d.+ from .+ corner .*of .+ towards .+$/);
  });

  test('tells the load of every section, what each load is for, and which cuts the person keeps', () => {
    const [kept] = ground.cuts;
    if (kept === undefined) throw new Error('the sample is not cut');
    const heldCuts = [{ id: 'mine', zoneId: kept.zoneId, from: kept.from, to: kept.to }];
    const jobs = yard.jobs.map((job) => ({ ...job, policy: 'fewest' as const, heldCuts }));
    const full = planJob({ ...yard, jobs }, 'job-spring-feed');
    if (!full.ok) throw new Error(JSON.stringify(full.problems));
    const told = fileOf(planToGeoJson(yard, full.value.ground, 'x'));
    const { fills, loads } = told.summary as {
      readonly loads: number;
      readonly fills: readonly {
        readonly load: number;
        readonly sections: readonly string[];
        readonly areaM2: number;
      }[];
    };
    expect(fills.map(({ load }) => load)).toEqual(Array.from({ length: loads }, (_, i) => i + 1)); // counted from 1
    const sections = told.features.filter(({ properties }) => properties.role === 'section');
    expect(sections.length).toBeGreaterThan(loads); // some share one
    for (const { load, sections: ids, areaM2 } of fills) {
      const own = sections.filter(({ properties }) => properties.load === load);
      expect(own.map(({ properties }) => properties.id)).toEqual(ids);
      const sumM2 = own.reduce((sum, { properties }) => sum + Number(properties.areaM2), 0);
      expectNear(areaM2, sumM2, 1e-6, 'm²'); // no ground of the sample slopes
    }
    const lines = told.features.filter(({ properties }) => properties.role === 'cut-line');
    expect(new Set(lines.map(({ properties }) => properties.held))).toEqual(new Set([true, false]));
  });

  test('has a summary whose sections add up to the treated ground, zone by zone', () => {
    const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
    for (const zone of summary.zones) {
      const inZone = ofRole('section').filter(({ properties }) => properties.zone === zone.name);
      expectNear(
        sum(inZone.map(({ properties }) => Number(properties.areaM2))),
        zone.treatedAreaM2,
        1e-3,
        'm²',
      );
    }
    expectNear(
      sum(summary.sections.map(({ areaM2 }) => areaM2)),
      summary.totals.treatedAreaM2 ?? 0,
      1e-3,
      'm²',
    );
    expect(summary.frameOrigin).toEqual({ lonDeg: -86.2, latDeg: 39.9 });
    expect(summary.more).toBe(1);
  });

  test('has a ± of every section, and one of the whole that is less than zones apart would make', () => {
    const variances = summary.zones.map(({ sigmaM2 }) => sigmaM2 ** 2);
    const apartM2 = Math.sqrt(variances.reduce((total, variance) => total + variance, 0));
    // The lawns of the sample lie along common edges: what one gains there the other loses.
    expect(summary.totals.sigmaM2).toBeLessThan(apartM2);
    expect(summary.totals.sigmaM2).toBeGreaterThan(0);
    for (const { sigmaM2 } of summary.sections) expect(sigmaM2).toBeGreaterThan(0); // every corner of the sample has a σ
  });

  test('has lengths and percentages that add up', () => {
    const { onM, offM, totalM, wetM } = summary.lengths;
    expectNear(onM + offM, totalM, 1e-9, 'm');
    const sectionsWetM = summary.sections.reduce((total, section) => total + section.wetM, 0);
    expectNear(sectionsWetM, wetM, 1e-9, 'm'); // the whole is that of its sections
    const { oncePercent = 0, twicePercent = 0, missedPercent = 0 } = summary.coverage;
    expectNear(oncePercent + twicePercent + missedPercent, 100, 0.01, '%');
  });
});
