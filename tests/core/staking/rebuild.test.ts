import { expect, test } from 'vitest';
import { distanceM } from '../../../core/kernel/index.ts';
import { fullName, yardPoints } from '../../../core/staking/namedPoints.ts';
import { asPrintedM, placeAlong, placeByTapes, tapeStepM } from '../../../core/staking/placing.ts';
import type { PrintedFlag } from '../../../core/staking/printed.ts';
import { type Flag, rebuild, stakeCuts, stakingTable } from '../../../core/staking/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { formatTape, parseOffset } from '../../../core/units/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { type StakedYard, stakedYard } from '../../support/stakedYards.ts';

const YARDS = 210;
/** Two steps of the tape: what a reading may differ by before a person looks again. */
const STEPS = 2;

function* yards(): Generator<{ readonly seed: number; readonly made: StakedYard }> {
  let found = 0;
  for (let seed = 0; found < YARDS; seed++) {
    const made = stakedYard(seed);
    if (made === undefined) continue;
    found++;
    yield { seed, made };
  }
}

const STAKED = [...yards()].map(({ seed, made }) => {
  const staking = stakeCuts(made, made.cut, made.units);
  const table = stakingTable(staking, made.units);
  return { seed, made, staking, table, places: rebuild(table.flags, made, made.units) };
});

test('from the printed table alone every cut line is set within 5 cm of where it is', () => {
  const counts: Record<string, number> = {};
  for (const { seed, staking, places } of STAKED) {
    expect(places, `seed ${seed}`).toBeDefined();
    for (const { cutLine, flags } of staking.lines) {
      for (const [flag, end] of [
        [flags[0], cutLine.from],
        [flags[1], cutLine.to],
      ] as const) {
        const set = places?.get(flag.letter) as YardPoint;
        expect(distanceM(set, end), `seed ${seed}, flag ${flag.letter}`).toBeLessThan(0.05); // what the issue asks
      }
    }
    for (const flag of staking.flags) counts[sortOf(flag)] = (counts[sortOf(flag)] ?? 0) + 1;
  }
  expect(Object.keys(counts).sort()).toEqual(['edge', 'line', 'strip', 'tapes']); // every way is in the sample
  expect(STAKED.filter(({ made }) => made.heldCuts.length > 0).length).toBeGreaterThan(YARDS / 5);
});

function sortOf({ setting }: Flag): string {
  return setting.kind === 'edge' && setting.off !== null ? 'strip' : setting.kind;
}

test('lengths and checks read on the rebuilt flags what the table says, to two steps of the tape', () => {
  let checks = 0;
  for (const { seed, made, table, places } of STAKED) {
    const placeOf = placeFinder(made, places as ReadonlyMap<string, YardPoint>);
    for (const line of table.lines) {
      const mostM = STEPS * tapeStepM(made.units) + 1e-9;
      const lengthM = distanceM(placeOf(`flag ${line.from}`), placeOf(`flag ${line.to}`));
      expect(Math.abs(lengthM - read(line.length)), `seed ${seed}`).toBeLessThanOrEqual(mostM);
      expect(line.checks.length, `seed ${seed}`).toBeGreaterThan(0);
      for (const check of line.checks) {
        const checkM = distanceM(placeOf(`flag ${check.from}`), placeOf(check.to));
        expect(Math.abs(checkM - read(check.length)), `seed ${seed}`).toBeLessThanOrEqual(mostM);
        checks++;
      }
    }
  }
  expect(checks).toBeGreaterThan(YARDS);
});

test('a flag is set from flags that stand before it, and no check uses what its flag was set from', () => {
  for (const { table } of STAKED) {
    const stood = new Set<string>();
    for (const flag of table.flags) {
      for (const name of namesIn(flag)) if (name.startsWith('flag ')) expect(stood).toContain(name);
      stood.add(`flag ${flag.letter}`);
    }
    expect(stood.size).toBe(table.flags.length);
    for (const { from, to, checks } of table.lines) {
      for (const check of checks) {
        const flag = table.flags.find(({ letter }) => letter === check.from);
        if (flag === undefined) throw new Error(`no flag ${check.from}`);
        expect([from, to]).toContain(check.from);
        expect([...namesIn(flag), `flag ${from}`, `flag ${to}`]).not.toContain(check.to);
      }
    }
  }
});

function namesIn(flag: PrintedFlag): readonly string[] {
  if (flag.kind === 'edge') return [`${flag.corner} of ${flag.of}`, `${flag.towards} of ${flag.of}`];
  return flag.kind === 'line' ? [flag.from, flag.towards] : [flag.firstFrom, flag.secondFrom];
}

test('two tapes cross at 30° to 150°', () => {
  let crossings = 0;
  let flat = 0;
  for (const { staking } of STAKED) {
    for (const { at, setting } of staking.flags) {
      if (setting.kind !== 'tapes') continue;
      const [a, b] = [setting.first.point.at, setting.second.point.at];
      const [ax, ay, bx, by] = [a.xM - at.xM, a.yM - at.yM, b.xM - at.xM, b.yM - at.yM];
      const deg = (Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) * 180) / Math.PI;
      crossings++;
      if (deg < 30 || deg > 150) flat++;
    }
  }
  expect(crossings).toBeGreaterThan(100);
  expect(flat).toBe(0);
});

test('a slip of a foot shows in the length or the check of a line', () => {
  let slips = 0;
  let shown = 0;
  for (const { made, staking } of STAKED) {
    const stepM = tapeStepM(made.units);
    for (const flag of staking.flags) {
      const slipped = slippedPlace(flag);
      if (slipped === undefined) continue;
      slips++;
      const isOut = (from: YardPoint, to: YardPoint, printedM: number): boolean =>
        Math.abs(distanceM(from, to) - printedM) > STEPS * stepM;
      const own = `flag ${flag.letter}`;
      const seen = staking.lines.some(({ flags, lengthM, checks }) => {
        const other = flags[0] === flag ? flags[1] : flags[0];
        if (flags.includes(flag) && isOut(slipped, other.asSet, lengthM)) return true;
        return checks.some(
          (check) =>
            (fullName(check.from) === own && isOut(slipped, check.to.at, check.lengthM)) ||
            (fullName(check.to) === own && isOut(check.from.at, slipped, check.lengthM)),
        );
      });
      if (seen) shown++;
    }
  }
  expect(slips).toBeGreaterThan(1000);
  expect(shown).toBe(slips);
});

const SLIP_M = 0.3048; // the foot, by definition

/** Where a flag ends up when its first reading is a foot too long. */
function slippedPlace({ setting, asSet, at }: Flag): YardPoint | undefined {
  if (setting.kind === 'tapes') {
    const { first, second, side } = setting;
    return placeByTapes([first.point.at, first.tapeM + SLIP_M], [second.point.at, second.tapeM], side);
  }
  const [from, towards] =
    setting.kind === 'edge' ? [setting.corner.at, setting.towards.at] : [setting.from.at, setting.towards.at];
  const one = placeAlong(from, towards, 0);
  const two = placeAlong(from, towards, SLIP_M);
  expect(distanceM(asSet, at)).toBeLessThan(0.05);
  return { xM: asSet.xM + two.xM - one.xM, yM: asSet.yM + two.yM - one.yM };
}

function placeFinder(made: StakedYard, flags: ReadonlyMap<string, YardPoint>): (name: string) => YardPoint {
  const points = new Map(yardPoints(made).all.map((point) => [fullName(point), point.at]));
  for (const [letter, at] of flags) points.set(`flag ${letter}`, at);
  return (name) => {
    const at = points.get(name);
    if (at === undefined) throw new Error(`nothing is called ${name}`);
    return at;
  };
}

function read(tape: string): number {
  const length = parseOffset(tape, 'tape', null);
  if (!length.ok) throw new Error(`${tape} is no reading`);
  return length.value;
}

test('what is printed is what is rounded: a step of the tape and its reading agree', () => {
  for (const units of ['us', 'metric'] as const) {
    for (const lengthM of [0, 0.004, 1.2345, 12.7, 33.33]) {
      const printedM = asPrintedM(lengthM, units);
      expect(Math.abs(printedM - lengthM)).toBeLessThanOrEqual(tapeStepM(units) / 2 + 1e-12);
      expect(Math.abs(read(formatTape(lengthM, units)) - printedM)).toBeLessThan(1e-9);
    }
  }
});

test('a table that names a corner the yard has not sets nothing', () => {
  const yard = { outlines: [outline('zone', 'lawn', rect(0, 0, 10, 6))], marks: [] };
  const row = { letter: 'a', kind: 'edge', along: '3.00 m', of: 'lawn', off: null, offSide: null } as const;
  const good = { ...row, corner: 'SW corner', towards: 'SE corner' };
  expect(rebuild([good], yard, 'metric')?.get('a')).toEqual({ xM: 3, yM: 0 }); // 3 m along y = 0 from x = 0
  expect(rebuild([{ ...good, corner: 'S corner' }], yard, 'metric')).toBeUndefined();
  expect(rebuild([{ ...good, along: 'about three' }], yard, 'metric')).toBeUndefined();
});
