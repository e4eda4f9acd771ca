import { expect, test } from 'vitest';
import type { PlanRequest } from '../../../core/plan/plan.ts';
import { walkSections } from '../../../core/plan/walkSections.ts';
import type { Section } from '../../../core/sections/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { planRequest } from '../../support/planRequest.ts';
import { resolvedOf } from '../../support/randomGround.ts';

const LEFT = region(rect(0, 0, 10, 9));
const RIGHT = region(rect(30, 0, 10, 9));
const RESOLVED = resolvedOf({ Left: [LEFT], Right: [RIGHT] });
const SECTIONS: Section[] = [
  { id: 'A1', zoneId: 'Left', zoneName: 'Left', region: LEFT, areaM2: 90 },
  { id: 'B1', zoneId: 'Right', zoneName: 'Right', region: RIGHT, areaM2: 90 },
];
const REQUEST = planRequest({
  loadAreaM2: 100,
  swathM: 1.8,
  paceMPerS: 0.5,
  heading: { kind: 'picked', deg: 0 },
});

test('the way from one zone to the next is straight and counts as the next one’s', () => {
  const told: number[] = [];
  const walked = walkSections(
    RESOLVED,
    SECTIONS,
    REQUEST,
    () => false,
    (part) => told.push(part),
  );
  expect(told).toEqual([...told].sort((a, b) => a - b)); // rising
  expect(told.at(-1)).toBe(1); // done
  const [first, second] = walked?.sectionFigures ?? [];
  const passes = walked?.passes ?? [];
  const last = passes.findLast((pass) => pass.sectionId === 'A1')?.line.at(-1);
  const next = passes.find((pass) => pass.sectionId === 'B1')?.line[0];
  const betweenM = Math.hypot((next?.xM ?? 0) - (last?.xM ?? 0), (next?.yM ?? 0) - (last?.yM ?? 0));
  expect(betweenM).toBeGreaterThan(20 - 1e-9); // the gap between the zones
  // Alike but for the way there and how the first is entered.
  expect((second?.offLengthM ?? 0) - betweenM).toBeLessThanOrEqual((first?.offLengthM ?? 0) + 3.6); // two swaths
  expectNear(second?.timeS ?? 0, ((second?.onLengthM ?? 0) + (second?.offLengthM ?? 0)) / 0.5, 1e-9, 's'); // at 0.5 m/s
});

test('a stop is heeded before each section', () => {
  expect(
    walkSections(
      RESOLVED,
      SECTIONS,
      REQUEST,
      () => true,
      () => undefined,
    ),
  ).toBeUndefined();
});

function walk(said: Partial<PlanRequest> = {}) {
  const walked = walkSections(
    RESOLVED,
    SECTIONS,
    { ...REQUEST, ...said },
    () => false,
    () => undefined,
  );
  if (walked === undefined) throw new Error('nobody stopped it');
  return walked;
}

function offM(walked: ReturnType<typeof walk>): number {
  return walked.sectionFigures.reduce((sum, { offLengthM }) => sum + offLengthM, 0);
}

test('a section ends where the next begins', () => {
  const { passes } = walk();
  const last = passes.findLast((pass) => pass.sectionId === 'A1')?.line.at(-1);
  const next = passes.find((pass) => pass.sectionId === 'B1')?.line[0];
  const betweenM = Math.hypot((next?.xM ?? 0) - (last?.xM ?? 0), (next?.yM ?? 0) - (last?.yM ?? 0));
  expect(betweenM).toBeLessThan(20 + 2 * 1.8 + 1e-6); // the gap, and no more than a swath to each side of it
});

test('the way from the start and to the finish counts as walking off', () => {
  const startAt = { xM: -50, yM: 4.5 };
  const finishAt = { xM: 100, yM: 4.5 };
  const [free, bound] = [walk(), walk({ startAt, finishAt })];
  const passes = bound.passes;
  const [first, last] = [passes[0]?.line[0], passes.at(-1)?.line.at(-1)];
  const inM = Math.hypot((first?.xM ?? 0) + 50, (first?.yM ?? 0) - 4.5);
  const outM = Math.hypot(100 - (last?.xM ?? 0), (last?.yM ?? 0) - 4.5);
  expect(inM).toBeLessThan(50 + 2 * 1.8); // begins within two swaths of the near side
  expect(outM).toBeLessThan(60 + 2 * 1.8); // ends within two swaths of the far side, at 40 m
  let betweenM = 0;
  passes.forEach((pass, i) => {
    const [a, b] = [passes[i - 1]?.line.at(-1), pass.line[0]];
    if (a !== undefined && b !== undefined) betweenM += Math.hypot(b.xM - a.xM, b.yM - a.yM);
  });
  expectNear(offM(bound), inM + betweenM + outM, 1e-6, 'm'); // own sum of straight ways: nothing stands between
  expect(offM(free)).toBeLessThan(offM(bound)); // the ways to and fro are not walked where nobody asks for them
});

test('in two rounds each section is walked twice before the next, the second time square to the first', () => {
  const { passes, sectionFigures } = walk({ rounds: 2 });
  const blocks = passes.map(({ sectionId, round }) => `${sectionId} ${round}`);
  expect(blocks.filter((block, i) => block !== blocks[i - 1])).toEqual(['A1 1', 'A1 2', 'B1 1', 'B1 2']); // one fill a section
  for (const round of [1, 2]) {
    const lanes = passes.filter((pass) => pass.round === round && pass.kind === 'lane');
    expect(lanes.length).toBeGreaterThan(0);
    for (const { line } of lanes) {
      const [a, b] = [line[0], line.at(-1)];
      const alongM =
        Math.abs((round === 1 ? b?.xM : b?.yM) ?? 0) - Math.abs((round === 1 ? a?.xM : a?.yM) ?? 0);
      expectNear(alongM, 0, 1e-9, 'm'); // picked north, so x stays; the second round y
    }
  }
  expect(passes.map(({ order }) => order)).toEqual(passes.map((_, i) => i + 1)); // counted through
  const onM = passes.reduce((sum, { lengthM }) => sum + lengthM, 0);
  expectNear(sectionFigures[0]?.onLengthM ?? 0, onM / 2, 1e-6, 'm'); // two like squares: half of both rounds each
});

test('progress rises a little with every section, and with every section put in order', () => {
  const many = Array.from({ length: 8 }, (_, i): Section => {
    const plot = region(rect(20 * i, 0, 10, 9));
    return { id: `A${i + 1}`, zoneId: 'Yard', zoneName: 'Yard', region: plot, areaM2: 90 };
  });
  const told: number[] = [];
  walkSections(
    resolvedOf({ Yard: many.map((section) => section.region) }),
    many,
    REQUEST,
    () => false,
    (part) => told.push(part),
  );
  expect(told.length).toBe(8 * 3); // laid once and put in order twice
  for (const [i, part] of told.entries()) {
    const rise = part - (told[i - 1] ?? 0);
    expect(rise).toBeGreaterThan(0); // never stands still
    expect(rise).toBeLessThan(1 / 8); // no step counts for more than a section
  }
  expectNear(told.at(-1) ?? Number.NaN, 1, 1e-9, ''); // all of it
});

test('a section no pass fits in is stepped over: the walk goes on from the one before it', () => {
  const strip = region(rect(15, 0, 10, 1)); // 1 m wide, the swath is 1.8 m
  const narrow: Section = { id: 'S1', zoneId: 'Strip', zoneName: 'Strip', region: strip, areaM2: 10 };
  const walked = walkSections(
    resolvedOf({ Left: [LEFT], Strip: [strip], Right: [RIGHT] }),
    [SECTIONS[0] as Section, narrow, SECTIONS[1] as Section],
    REQUEST,
    () => false,
    () => undefined,
  );
  const { passes, onLengthM, offLengthM, wetM, timeS } = walked?.sectionFigures[1] ?? {};
  expect([passes, onLengthM, offLengthM, wetM, timeS]).toEqual([0, 0, 0, 0, 0]); // nothing is walked for it
  expect(walked?.passes.map(({ order }) => order)).toEqual(walked?.passes.map((_, i) => i + 1)); // counted through
  expect(new Set(walked?.passes.map(({ sectionId }) => sectionId))).toEqual(new Set(['A1', 'B1']));
  const alone = walk();
  expect(walked?.passes.map(({ line }) => line.length)).toEqual(alone.passes.map(({ line }) => line.length)); // as without it
});
