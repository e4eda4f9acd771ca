import { describe, expect, test } from 'vitest';
import {
  type AreaChange,
  compareYards,
  type YardComparison,
  ZONE_MEASURES,
} from '../../../core/compare/index.ts';
import { emptyYard } from '../../../core/edits/index.ts';
import { regionsAreaM2 } from '../../../core/kernel/index.ts';
import type { Outline, Yard, YardFrame } from '../../../core/yard.ts';
import { outline, points, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomYard, seededRandom, yardOutlines } from '../../support/randomYards.ts';

/** Perimeter of the largest yard here, times the kernel grid of 1e-6 m, some overlays after one another. */
const GRID_SLACK_M2 = 4e-3;

function yardOf(outlines: readonly Outline[], frame: YardFrame = { kind: 'loose' }): Yard {
  return { ...emptyYard('Yard', frame, 'metric', '2026-05-01'), outlines };
}

function compared(before: Yard, after: Yard): YardComparison {
  const comparison = compareYards(before, after);
  if (!comparison.ok) throw new Error(JSON.stringify(comparison.problems));
  return comparison.value;
}

function expectChange(change: AreaChange | undefined, worked: Partial<AreaChange>): void {
  for (const [name, areaM2] of Object.entries(worked)) {
    expectNear(change?.[name as keyof AreaChange] ?? Number.NaN, areaM2, 1e-4, `m² ${name}`);
  }
}

const LAWN = outline('zone', 'Back lawn', rect(0, 0, 20, 10));

describe('by hand', () => {
  test('a bed of 3 by 2 m moved by 1 m along its length gains 2 m² on one side and loses 2 m² on the other', () => {
    const was = outline('bed', 'Roses', rect(5, 4, 3, 2));
    const is = outline('bed', 'Roses', rect(6, 4, 3, 2));
    const { zones, kinds, all } = compared(yardOf([LAWN, was]), yardOf([LAWN, is]));
    const bed = kinds.find(({ kind }) => kind === 'bed');
    // 1 m of its 2 m wide end: 1 * 2 = 2; the rest, 2 * 2 = 4, stays.
    expectChange(bed?.ground, { beforeM2: 6, lostM2: 2, gainedM2: 2, unchangedM2: 4, afterM2: 6 });
    expect([bed?.appeared, bed?.vanished]).toEqual([[], []]);
    // Turf is 20 * 10 - 6 = 194 both times; it loses what the bed gains.
    const turf = { beforeM2: 194, lostM2: 2, gainedM2: 2, unchangedM2: 192, afterM2: 194 };
    expectChange(zones[0]?.turf, turf);
    expectChange(all.turf, turf);
    expectChange(zones[0]?.gross, { beforeM2: 200, lostM2: 0, gainedM2: 0, unchangedM2: 200, afterM2: 200 });
    expectNear(regionsAreaM2(bed?.ground.lost ?? []), 2, 1e-4, 'm²'); // the ground itself: 1 * 2
  });

  test('a bed that is new takes its ground from turf and treated, and is named', () => {
    const bed = outline('bed', 'Herbs', rect(2, 2, 4, 1));
    const { zones, kinds } = compared(yardOf([LAWN]), yardOf([LAWN, bed]));
    expectChange(zones[0]?.treated, { beforeM2: 200, lostM2: 4, gainedM2: 0, afterM2: 196 }); // 4 * 1 gone
    expect(kinds.find(({ kind }) => kind === 'bed')?.appeared).toMatchObject([{ name: 'Herbs' }]);
    const { kinds: back } = compared(yardOf([LAWN, bed]), yardOf([LAWN]));
    expect(back.find(({ kind }) => kind === 'bed')?.vanished).toMatchObject([{ name: 'Herbs' }]);
  });

  test('a check plot changes what is treated and not the turf', () => {
    const plot = outline('check-plot', 'Plot', rect(1, 1, 1, 1));
    const { zones } = compared(yardOf([LAWN]), yardOf([LAWN, plot]));
    expectChange(zones[0]?.turf, { lostM2: 0, gainedM2: 0 });
    expectChange(zones[0]?.treated, { lostM2: 1, gainedM2: 0 }); // 1 * 1
  });

  test('two beds on the same ground count it once', () => {
    const beds = [outline('bed', 'a', rect(1, 1, 2, 2)), outline('bed', 'b', rect(2, 1, 2, 2))];
    const { kinds } = compared(yardOf([LAWN]), yardOf([LAWN, ...beds]));
    expectChange(kinds.find(({ kind }) => kind === 'bed')?.ground, { beforeM2: 0, gainedM2: 6 }); // 4 + 4 - 2
  });

  test('a zone drawn anew under its old name is the same zone; one renamed keeps its id', () => {
    const anew = { ...LAWN, id: 'other' };
    expect(compared(yardOf([LAWN]), yardOf([anew])).zones).toMatchObject([
      { zoneId: 'other', state: 'in both', formerName: null },
    ]);
    const renamed = { ...LAWN, name: 'South lawn' };
    expect(compared(yardOf([LAWN]), yardOf([renamed])).zones).toMatchObject([
      { name: 'South lawn', formerName: 'Back lawn', state: 'in both' },
    ]);
  });

  test('zones that are new or gone are said to be, and gain or lose all they have', () => {
    const side = outline('zone', 'Side', points([30, 0], [36, 0], [30, 4]));
    const { zones, all } = compared(yardOf([LAWN]), yardOf([side]));
    expect(zones).toMatchObject([
      { name: 'Side', state: 'new' },
      { name: 'Back lawn', state: 'gone' },
    ]);
    expectChange(zones[0]?.gross, { beforeM2: 0, lostM2: 0, gainedM2: 12, afterM2: 12 }); // 6 * 4 / 2
    expectChange(all.gross, { beforeM2: 200, lostM2: 200, gainedM2: 12, unchangedM2: 0, afterM2: 12 }); // 20 * 10
  });

  test('a bed made a path has gone as a bed and come as a path', () => {
    const bed = outline('bed', 'Strip', rect(1, 1, 5, 1));
    const { kinds, zones } = compared(yardOf([LAWN, bed]), yardOf([LAWN, { ...bed, kind: 'hardscape' }]));
    expect(kinds.map(({ kind, appeared, vanished }) => [kind, appeared.length, vanished.length])).toEqual([
      ['zone', 0, 0],
      ['bed', 0, 1],
      ['hardscape', 1, 0],
    ]);
    expectChange(zones[0]?.turf, { lostM2: 0, gainedM2: 0 });
  });
});

describe('laws on random pairs', () => {
  const pairs = Array.from({ length: 60 }, (_, i) => {
    const random = seededRandom(i + 1);
    const yard = randomYard(random, 5 + Math.floor(random() * 30), Math.floor(random() * 8));
    const shiftM = between(random, -3, 3);
    const shifted = yard.beds.map((bed) => bed.map(({ xM, yM }) => ({ xM: xM + shiftM, yM })));
    const other = randomYard(random, 5 + Math.floor(random() * 30), 3);
    const zone = random() < 0.5 ? yard.zone : other.zone;
    const beds = random() < 0.5 ? shifted : other.beds;
    return { seed: i + 1, before: yardOf(yardOutlines(yard)), after: yardOf(yardOutlines({ zone, beds })) };
  });

  test('before - lost + gained = after, for every zone, kind and sum', () => {
    let changed = 0;
    for (const { seed, before, after } of pairs) {
      const { zones, kinds, all } = compared(before, after);
      const changes = [
        ...zones.flatMap((zone) => ZONE_MEASURES.map((measure) => zone[measure])),
        ...kinds.map(({ ground }) => ground),
        ...ZONE_MEASURES.map((measure) => all[measure]),
      ];
      for (const { beforeM2, lostM2, gainedM2, unchangedM2, afterM2 } of changes) {
        expectNear(beforeM2 - lostM2 + gainedM2, afterM2, GRID_SLACK_M2, `m² (seed ${seed})`);
        expectNear(unchangedM2 + lostM2, beforeM2, GRID_SLACK_M2, `m² (seed ${seed})`);
        expectNear(unchangedM2 + gainedM2, afterM2, GRID_SLACK_M2, `m² (seed ${seed})`);
        if (lostM2 > 1) changed++;
      }
    }
    expect(changed).toBeGreaterThan(100); // the pairs do differ
  });

  test('a yard compared with itself has lost and gained nothing', () => {
    for (const { before } of pairs) {
      const { zones, kinds } = compared(before, before);
      const changes = [
        ...zones.flatMap((zone) => ZONE_MEASURES.map((m) => zone[m])),
        ...kinds.map((k) => k.ground),
      ];
      for (const { lostM2, gainedM2 } of changes) expect([lostM2, gainedM2]).toEqual([0, 0]);
      expect(kinds.flatMap(({ appeared, vanished }) => [...appeared, ...vanished])).toEqual([]);
    }
  });

  test('compared the other way round, lost and gained change places', () => {
    for (const { before, after } of pairs) {
      const [there, back] = [compared(before, after), compared(after, before)];
      for (const kind of there.kinds) {
        const mirror = back.kinds.find((row) => row.kind === kind.kind);
        expect(mirror?.ground.lostM2).toBe(kind.ground.gainedM2);
        expect(mirror?.ground.gainedM2).toBe(kind.ground.lostM2);
        expect(mirror?.vanished).toEqual(kind.appeared);
      }
      expect(back.all.treated.lostM2).toBe(there.all.treated.gainedM2);
    }
  });
});

describe('what cannot be compared', () => {
  const PLACED: YardFrame = { kind: 'placed', origin: { lonDeg: -104.9, latDeg: 39.7 } };

  test('a loose yard and a placed one, whichever is the loose one', () => {
    const [loose, placed] = [yardOf([LAWN]), yardOf([LAWN], PLACED)];
    const problem = { kind: 'compare/only-one-placed', facts: { looseIs: 'earlier', looseName: 'Yard' } };
    expect(compareYards(loose, placed)).toMatchObject({ ok: false, problems: [problem] });
    expect(compareYards(placed, loose)).toMatchObject({ problems: [{ facts: { looseIs: 'later' } }] });
  });

  test('outlines that cannot stand, named with the state they are in; only the later one’s are on the map', () => {
    const bowTie = outline('bed', 'Knot', points([0, 0], [4, 4], [4, 0], [0, 4]));
    const broken = compareYards(yardOf([LAWN, bowTie]), yardOf([LAWN, { ...bowTie, name: 'Bow' }]));
    expect(broken).toMatchObject({
      ok: false,
      problems: [
        { kind: 'shape/self-crossing', where: { name: 'Knot, in the earlier state of 2026-05-01,' } },
        { kind: 'shape/self-crossing', where: { name: 'Bow', at: { xM: 2, yM: 2 } } }, // the diagonals' middle
      ],
    });
    expect(broken.ok ? [] : broken.problems[0].where).not.toHaveProperty('at');
  });
});
