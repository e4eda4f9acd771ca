import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { sampleYard } from '../../../electron/host/sample.ts';
import { createYardFile, openYardFile } from '../../../electron/host/yardFile/index.ts';
import { expectNear } from '../../support/expectNear.ts';

const MAIN = fileURLToPath(new URL('../../../electron/command/main.ts', import.meta.url));
const MAPS = fileURLToPath(new URL('../../../sample-maps/', import.meta.url));
const RECTANGLE = join(MAPS, 'rectangle.geojson');

interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'platpace-command-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the command as a person does: a process of its own, in the test's folder. */
function platpace(...words: string[]): Promise<Ended> {
  return new Promise((resolve) => {
    execFile(process.execPath, [MAIN, ...words], { cwd: folder }, (error, out, err) => {
      resolve({ code: error === null ? 0 : Number(error.code), out, err });
    });
  });
}

function yardFileOf(name: string): string {
  const path = join(folder, name);
  const made = createYardFile(path, sampleYard(), []);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  made.value.close();
  return path;
}

describe('platpace areas', () => {
  test('prints the zones of GeoJSON as JSON with the areas stated for it', async () => {
    const { code, out } = await platpace('areas', RECTANGLE, '--json');
    expect(code).toBe(0);
    const { zones } = JSON.parse(out) as { zones: Record<string, number>[] };
    // sample-maps/README.md: gross 600, cut-outs 38, net 562, treated 513
    for (const [key, statedM2] of [
      ['grossAreaM2', 600],
      ['cutOutAreaM2', 38],
      ['netAreaM2', 562],
      ['treatedAreaM2', 513],
    ] as const) {
      expectNear(zones[0]?.[key] ?? Number.NaN, statedM2, 1e-3, 'm²');
    }
  });

  test('tells map and surface apart where a zone slopes, and which one amounts are by', async () => {
    const sloping = JSON.parse(readFileSync(RECTANGLE, 'utf8')) as {
      features: { properties: Record<string, unknown> }[];
    };
    for (const { properties } of sloping.features) {
      if (properties.kind === 'zone') properties.slopeGrade = 0.75;
    }
    const path = join(folder, 'bank.geojson');
    writeFileSync(path, JSON.stringify(sloping));
    const { out } = await platpace('areas', path, '--json');
    const summary = JSON.parse(out) as { amountsBy: string; zones: Record<string, number>[] };
    expect(summary.amountsBy).toBe('plan'); // until the person says otherwise
    expectNear(summary.zones[0]?.surfaceFactor ?? Number.NaN, 1.25, 1e-12, ''); // √(1 + 0.75²)
    expectNear(summary.zones[0]?.surfaceAreaM2 ?? Number.NaN, 513 * 1.25, 1e-2, 'm²'); // 513 treated, as stated for it
    const table = await platpace('areas', path);
    expect(table.out).toContain('its surface');
    expect(table.out).toContain('amounts are worked out from the map’s area');
    expect(table.err).toContain('steeper than 33%'); // 75 %
  });

  test('with --working prints how every area comes about, under the table', async () => {
    const { code, out } = await platpace('areas', RECTANGLE, '--working');
    expect(code).toBe(0);
    expect(out).toContain('total');
    expect(out).toContain('A = 1/2 Σ (x_i y_{i+1} - x_{i+1} y_i)');
    const worked = /^treated\s+([\d.,]+)/m.exec(out.slice(out.indexOf('Balance')))?.[1] ?? '';
    expectNear(Number(worked.replaceAll(',', '')), 513, 1e-3, 'm²'); // sample-maps/README.md: treated 513
    // One for the zone and one for each of what lies in it, as the map has them.
    const features = (
      JSON.parse(readFileSync(RECTANGLE, 'utf8')) as { features: { properties: { kind: string } }[] }
    ).features;
    const outlines = features.filter(({ properties }) => !['spigot', 'landmark'].includes(properties.kind));
    expect(out.match(/^Working of /gm)?.length).toBe(outlines.length);
    expect((await platpace('areas', RECTANGLE, '--working', '--json')).code).toBe(2); // one or the other
  });

  test('prints a table in both units, of a yard file too', async () => {
    const { code, out } = await platpace('areas', yardFileOf('areas.gpkg'));
    expect(code).toBe(0);
    expect(out).toContain('back lawn');
    expect(out).toMatch(/total +12,917 ft² \(1,200\.0 m²\)/); // 1200 m² / 0.09290304 = 12,916.7 ft²
  });
});

describe('platpace plan', () => {
  test('writes the plan and the sheet', async () => {
    const { code, out } = await platpace(
      ...[
        'plan',
        RECTANGLE,
        '--load-area',
        '100m2',
        '--swath',
        '1.8m',
        '--json',
        'plan.json',
        '--pdf',
        'plan.pdf',
        '--paper',
        'a4',
      ],
      ...['--spigot', 'tap by the terrace', '--hose', '12m'],
    );
    expect(code).toBe(0);
    const plan = JSON.parse(readFileSync(join(folder, 'plan.json'), 'utf8'));
    expect(plan.type).toBe('FeatureCollection');
    expect(plan.summary.sections).toHaveLength(6); // ⌈513 / 100⌉, even policy
    // A sixth each, but for cuts moved to tape marks: at most half a mark (0.05 m) along cuts of some 14 m.
    for (const { areaM2 } of plan.summary.sections) expectNear(areaM2, 513 / 6, 0.05 * 14, 'm²');
    const sumM2 = plan.summary.sections.reduce(
      (sum: number, { areaM2 }: { areaM2: number }) => sum + areaM2,
      0,
    );
    expectNear(sumM2, 513, 1e-3, 'm²'); // the treated lawn, worked out in sample-maps
    for (const { neededM, isBeyond } of plan.summary.hose.sections) {
      expect(isBeyond).toBe(neededM > 12); // the hose asked about
      // No building stands here, and the farthest corner of the treated lawn from (20, 0) is (0, 18.5).
      expect(neededM).toBeLessThan(Math.hypot(20, 18.5));
    }
    expect(plan.summary.hose).toMatchObject({ spigot: 'tap by the terrace', hoseM: 12 });
    expect(readFileSync(join(folder, 'plan.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(out).toContain('covered: once');
    expect(out).not.toContain('flags, set in this order'); // not asked for
  });

  test('says where to set the flags when it is asked to', async () => {
    const { code, out } = await platpace(
      ...['plan', RECTANGLE, '--load-area', '300m2', '--swath', '1.8m', '--flags'],
    );
    expect(code).toBe(0);
    expect(out).toContain('flags, set in this order');
  });

  test('goes by the job of a yard file, and gives the mix', async () => {
    const { code, out } = await platpace(
      'plan',
      yardFileOf('job.gpkg'),
      '--heading',
      '90',
      '--policy',
      'fewest',
    );
    expect(code).toBe(0);
    expect(out).toMatch(/product +carrier/);
    const areasFt2 = [...out.matchAll(/^(?:[A-Z]\d+|total).*? ([\d,]+) ft²/gm)].map(([, text = '']) =>
      Number(text.replaceAll(',', '')),
    );
    expect(areasFt2.length).toBeGreaterThan(1);
    const total = areasFt2.pop();
    expect(areasFt2.reduce((sum, areaFt2) => sum + areaFt2, 0)).toBe(total); // rows add up to their sum as shown
  });

  test('walks it as the flags say: from where to where, twice, turned from last time, at a pace', async () => {
    const { code, out } = await platpace(
      ...['plan', RECTANGLE, '--load-area', '600m2', '--swath', '1.5m', '--json', '-'],
      ...['--start', 'Tap by the terrace', '--finish', '0,0', '--rounds', '2'],
      ...['--last', '60', '--turn', '45', '--pace', '1m/s', '--step', '0.75m'],
      ...['--hose', '30m', '--spigot', 'tap by the terrace', '--clear', '0.2m'],
    );
    expect(code).toBe(0);
    const { summary, features } = JSON.parse(out) as {
      summary: {
        request: Record<string, unknown>;
        sections: { load: number }[];
        loads: number;
        lengths: { totalM: number };
        timeS: number;
      };
      features: { properties: { role: string; round?: number } }[];
    };
    expect(summary.request).toMatchObject({
      headingDeg: 105, // 60 + 45
      rounds: 2,
      startAt: { yM: expect.any(Number) },
      finishAt: { xM: 0, yM: 0 },
      paceMPerS: 1,
      stepM: 0.75,
      hose: { lengthM: 30, clearanceM: 0.2, spigots: ['tap by the terrace'] },
    });
    expect([summary.loads, summary.sections[0]?.load]).toEqual([1, 1]); // 513 m² of lawn, 600 m² a load
    expectNear(summary.timeS, summary.lengths.totalM, 1e-6, 's'); // at a metre a second
    const rounds = features.flatMap(({ properties }) =>
      properties.role === 'pass' ? [properties.round] : [],
    );
    expect(new Set(rounds)).toEqual(new Set([1, 2])); // walked twice
  });

  test('gives the same bytes again', async () => {
    const words = ['plan', RECTANGLE, '--load-area', '100m2', '--swath', '1.8m', '--json'];
    const [one, again] = [await platpace(...words), await platpace(...words)];
    expect(one.out.length).toBeGreaterThan(1000); // a plan, not an empty answer
    expect(again.out).toBe(one.out);
  });

  test('prints the plan where --json has no path', async () => {
    const { code, out } = await platpace(
      'plan',
      RECTANGLE,
      '--load-area',
      '5000 ft2',
      '--swath',
      '6 ft',
      '--json',
    );
    expect(code).toBe(0);
    expect(JSON.parse(out).summary.sections).toHaveLength(2); // 513 m² / 464.5 m²
  });

  test.each([
    [['plan', RECTANGLE], 'no job'],
    [['plan', RECTANGLE, '--load-area', '100', '--swath', '1.8m'], 'unit'],
    [['plan', RECTANGLE, '--load-area', '-5m2', '--swath', '1.8m'], '--load-area'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath'], '--swath needs a value'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--policy', 'most'], '--policy'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--spigot', 'x'], '--hose'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--clear', '0.1m'], '--hose'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--last', '40'], '--turn'],
    [
      ['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--last', '40', '--turn', '30'],
      '45 or 90',
    ],
    [
      [
        'plan',
        RECTANGLE,
        '--load-area',
        '100m2',
        '--swath',
        '2m',
        '--heading',
        '9',
        '--last',
        '4',
        '--turn',
        '45',
      ],
      'not both',
    ],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--rounds', '3'], '1 or 2'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--pace', '2'], 'unit'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--rate', '3'], 'no flag --rate'],
    [['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--json', RECTANGLE], 'would be lost'],
    [['plan'], 'one file'],
    [['areas', RECTANGLE, RECTANGLE], 'one file'],
    [['convert', RECTANGLE], 'file to write'],
    [['convert', RECTANGLE, 'out.kml'], 'ends in'],
    [['mow'], 'no command mow'],
    [[], 'platpace areas FILE'],
  ])('usage is wrong, exit 2: %j', async (words, said) => {
    const { code, out, err } = await platpace(...words);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(out).toBe('');
  });

  test('bad input names the thing and the mend, exit 1', async () => {
    const path = join(folder, 'cross.geojson');
    const ring = [
      [0, 40],
      [0.0002, 40.0002],
      [0.0002, 40],
      [0, 40.0002],
      [0, 40],
    ];
    const feature = {
      type: 'Feature',
      properties: { name: 'Bow lawn' },
      geometry: { type: 'Polygon', coordinates: [ring] },
    };
    writeFileSync(path, JSON.stringify({ type: 'FeatureCollection', features: [feature] }));
    for (const command of ['areas', 'check']) {
      const { code, out, err } = await platpace(command, path);
      expect(code).toBe(1);
      expect(`${out}${err}`).toMatch(/Bow lawn crosses itself.*Move a corner/);
    }
  });

  test('a spigot that is not there is bad input, exit 1', async () => {
    const { code, err } = await platpace(
      ...['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--spigot', 'well', '--hose', '9m'],
    );
    expect(code).toBe(1);
    expect(err).toContain('well');
  });

  test('a start that is neither a mark nor a place is bad input, and the marks are named, exit 1', async () => {
    const { code, err } = await platpace(
      ...['plan', RECTANGLE, '--load-area', '100m2', '--swath', '2m', '--start', 'the gate'],
    );
    expect(code).toBe(1);
    expect(err).toMatch(/--start.*“the gate”.*tap by the terrace/i); // sample-maps: its spigot
  });

  test('a file that is not there is bad input, exit 1', async () => {
    const { code, err } = await platpace('areas', 'no-such.gpkg');
    expect(code).toBe(1);
    expect(err).toContain('no-such.gpkg is not there');
  });
});

describe('platpace convert', () => {
  test('goes to GeoJSON and back with the same outlines, and never overwrites unasked', async () => {
    const from = yardFileOf('there.gpkg');
    expect(await platpace('convert', from, 'there.geojson')).toMatchObject({ code: 0 });
    expect(await platpace('convert', 'there.geojson', 'back.gpkg')).toMatchObject({ code: 0 });
    const opened = openYardFile(join(folder, 'back.gpkg'), { readOnly: true });
    if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
    const yard = opened.value.readYard();
    opened.value.close();
    expect(yard).toMatchObject({ ok: true, value: { details: sampleYard().details } });
    const before = readFileSync(join(folder, 'back.gpkg'));
    const again = await platpace('convert', 'there.geojson', 'back.gpkg');
    expect(again.code).toBe(1);
    expect(again.err).toContain('not overwritten');
    expect(readFileSync(join(folder, 'back.gpkg'))).toEqual(before);
    expect(await platpace('convert', 'there.geojson', 'back.gpkg', '--replace', '--json')).toMatchObject({
      code: 0,
    });
  });

  test('does not replace a yard that is open', async () => {
    const path = yardFileOf('open.gpkg');
    const opened = openYardFile(path);
    if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
    const { code, err } = await platpace('convert', RECTANGLE, 'open.gpkg', '--replace');
    opened.value.close();
    expect(code).toBe(1);
    expect(err).toContain('open in another window');
  });

  test('leaves nothing half done behind where the folder is missing', async () => {
    const { code, err } = await platpace('convert', RECTANGLE, 'nowhere/out.gpkg');
    expect(code).toBe(1);
    expect(err).toContain('not there');
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  });
});

describe('platpace check', () => {
  test('finds nothing in the sample yard', async () => {
    const { code, out } = await platpace('check', yardFileOf('fine.gpkg'));
    expect(code).toBe(0);
    expect(out).toContain('nothing wrong');
  });

  test('lists what is doubtful as JSON, exit 0', async () => {
    const path = join(folder, 'outside.geojson');
    const box = (lon: number) => [
      [
        [lon, 40],
        [lon + 0.0001, 40],
        [lon + 0.0001, 40.0001],
        [lon, 40.0001],
        [lon, 40],
      ],
    ];
    const feature = (kind: string, name: string, lon: number) => ({
      type: 'Feature',
      properties: { kind, name },
      geometry: { type: 'Polygon', coordinates: box(lon) },
    });
    const features = [feature('zone', 'lawn', 5), feature('bed', 'lost bed', 5.0005)];
    writeFileSync(path, JSON.stringify({ type: 'FeatureCollection', features }));
    const { code, out } = await platpace('check', path, '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      problems: [],
      warnings: [{ kind: 'shape/cut-out-outside', where: { name: 'lost bed' } }],
    });
  });

  test.each(['areas', 'plan', 'convert', 'check'])(
    '%s --help says how it is used, exit 0',
    async (command) => {
      const { code, out } = await platpace(command, '--help');
      expect(code).toBe(0);
      expect(out).toContain(`platpace ${command}`);
      expect(out).toContain('Exit code');
    },
  );
});
