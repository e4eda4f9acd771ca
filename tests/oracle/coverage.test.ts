import { expect, test } from 'vitest';
import { regionContains } from '../../core/kernel/index.ts';
import { planGround } from '../../core/plan/index.ts';
import type { Region, YardPoint } from '../../core/spaces.ts';
import { expectNear } from '../support/expectNear.ts';
import { planRequest } from '../support/planRequest.ts';
import { randomGround, resolvedOf } from '../support/randomGround.ts';

/** Points along one side of the counting grid. */
const SIDE = 420;

/** What the swath sweeps on the outside of a turn; of a gentle one it belongs to the walk it is part of. */
interface Pivot {
  readonly at: YardPoint;
  readonly from: number;
  readonly turn: number;
  readonly walk: number;
}

/** One straight step of a pass. */
interface Strip {
  readonly a: YardPoint;
  readonly b: YardPoint;
  /** Strips of one walk without a pivot between them count a spot once. */
  readonly walk: number;
}

function stripsOf(lines: readonly (readonly YardPoint[])[]): {
  strips: Strip[];
  pivots: Pivot[];
} {
  const strips: Strip[] = [];
  const pivots: Pivot[] = [];
  let walk = 0;
  for (const walked of lines) {
    // A point that repeats the one before it is no turn.
    const line = walked.filter(
      ({ xM, yM }, i) =>
        i === 0 || Math.hypot(xM - (walked[i - 1]?.xM ?? 0), yM - (walked[i - 1]?.yM ?? 0)) > 1e-9,
    );
    walk++;
    let curled = 0;
    const [first, last] = [line[0], line.at(-1)];
    const closes =
      line.length > 3 &&
      first !== undefined &&
      last !== undefined &&
      Math.hypot(first.xM - last.xM, first.yM - last.yM) <= 1e-9;
    for (let i = 1; i < line.length; i++) {
      const [a, b] = [line[i - 1] as YardPoint, line[i] as YardPoint];
      strips.push({ a, b, walk });
      const c = line[i + 1] ?? (closes ? line[1] : undefined);
      if (c === undefined) continue;
      const from = Math.atan2(b.yM - a.yM, b.xM - a.xM);
      let turn = Math.atan2(c.yM - b.yM, c.xM - b.xM) - from;
      if (turn > Math.PI) turn -= 2 * Math.PI;
      if (turn <= -Math.PI) turn += 2 * Math.PI;
      curled += Math.abs(turn);
      const isPivot = Math.abs(turn) > Math.PI / 6 || curled > (5 * Math.PI) / 6;
      pivots.push({ at: b, from, turn, walk: isPivot ? -pivots.length - 1 : walk });
      if (isPivot) {
        walk++;
        curled = 0;
      }
    }
  }
  return { strips, pivots };
}

function counted(treated: readonly Region[], lines: readonly (readonly YardPoint[])[], swathM: number) {
  const corners = treated.flatMap((piece) => piece.outer);
  const xs = corners.map((p) => p.xM);
  const ys = corners.map((p) => p.yM);
  const [west, east, south, north] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const cellM = Math.max(east - west, north - south) / SIDE;
  const { strips, pivots } = stripsOf(lines);
  const half = swathM / 2;
  const tally = { treated: 0, missed: 0, twice: 0, outside: 0 };
  for (let y = south - swathM + cellM / 2; y < north + swathM; y += cellM) {
    const row = strips.filter(
      ({ a, b }) => Math.min(a.yM, b.yM) < y + half && Math.max(a.yM, b.yM) > y - half,
    );
    const turns = pivots.filter(({ at }) => Math.abs(at.yM - y) < half);
    for (let x = west - swathM + cellM / 2; x < east + swathM; x += cellM) {
      const walks = new Set<number>();
      for (const { a, b, walk } of row) {
        const [dx, dy] = [b.xM - a.xM, b.yM - a.yM];
        const lengthM = Math.hypot(dx, dy);
        const along = ((x - a.xM) * dx + (y - a.yM) * dy) / lengthM;
        const off = ((x - a.xM) * dy - (y - a.yM) * dx) / lengthM;
        if (along >= 0 && along <= lengthM && Math.abs(off) <= half) walks.add(walk);
      }
      for (const { at, from, turn, walk } of turns) {
        if (Math.hypot(x - at.xM, y - at.yM) > half) continue;
        // Outside the turn: ahead of the old strip's end and behind the new one's start.
        const toward = Math.atan2(y - at.yM, x - at.xM) - from;
        if (Math.cos(toward) >= 0 && Math.cos(toward - turn) <= 0) walks.add(walk);
      }
      const isIn = treated.some((piece) => regionContains(piece, { xM: x, yM: y }));
      const isReached = walks.size > 0;
      if (isIn) tally.treated++;
      if (isIn && !isReached) tally.missed++;
      if (isIn && walks.size > 1) tally.twice++;
      if (!isIn && isReached) tally.outside++;
    }
  }
  const cellM2 = cellM * cellM;
  return {
    treatedM2: tally.treated * cellM2,
    missedM2: tally.missed * cellM2,
    twiceM2: tally.twice * cellM2,
    outsideM2: tally.outside * cellM2,
  };
}

test.each([1, 4, 9, 15])('coverage of random yard %i is what counting points on a grid gives', (seed) => {
  const treated = randomGround(seed, 11, 3);
  const areaM2 = resolvedOf({ Yard: treated }).zones[0]?.treatedAreaM2 ?? 0;
  const swathM = Math.sqrt(areaM2) / 12;
  const planned = planGround(resolvedOf({ Yard: treated }), planRequest({ loadAreaM2: areaM2 / 3, swathM }));
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  const { coverage, passes } = planned.value;
  const byCount = counted(
    treated,
    passes.map((pass) => pass.line),
    swathM,
  );
  // Stated error of counting 420 x 420 points: 0.3 % of the ground (edges x cell / sqrt of the cells they meet).
  const errorM2 = 0.003 * areaM2;
  expectNear(coverage.treatedM2, byCount.treatedM2, errorM2, 'm²');
  expectNear(coverage.missedM2, byCount.missedM2, errorM2, 'm²');
  expectNear(coverage.twiceM2, byCount.twiceM2, errorM2, 'm²');
  expectNear(coverage.outsideM2, byCount.outsideM2, errorM2, 'm²');
  expect(byCount.twiceM2).toBeGreaterThan(0.01 * areaM2); // the case does arise
});
