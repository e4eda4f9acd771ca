import { describe, expect, test } from 'vitest';
import { hoseGround, planHose } from '../../../core/hose/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { JobHose } from '../../../core/yard.ts';
import { outline, rect, region } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const HOUSE = outline('building', 'house', rect(0, 0, 10, 8));
const NEAR = { id: 'A1', region: region(rect(0, -8, 10, 4)) };
const FAR = { id: 'A2', region: region(rect(0, -16, 10, 8)) };
const BACK = { id: 'B1', region: region(rect(0, 10, 10, 4)) };

function laid(
  sections: readonly { id: string; region: typeof NEAR.region }[],
  spigots: readonly YardPoint[] = [at(5, 0)],
  said: Partial<JobHose> = {},
  passes: readonly { sectionId: string; line: YardPoint[] }[] = [],
) {
  const marks = spigots.map((place, i) => ({
    id: `s${i}`,
    kind: 'spigot' as const,
    name: `spigot ${i}`,
    at: place,
  }));
  const yard = yardOf({ outlines: [HOUSE], marks });
  const hose = hoseGround(yard, { lengthM: 30, spigotIds: null, clearanceM: 0, ...said });
  return planHose(hose, { sections, passes });
}

describe('the hose of a plan', () => {
  test('is laid to the nearest place of each section, and needed to the farthest', () => {
    const { sections, shortestHoseM } = laid([NEAR, BACK]);
    const [near, back] = sections;
    expectNear(near?.lengthM ?? 0, 4, 1e-3, 'm'); // straight south to y = −4
    expectNear(near?.neededM ?? 0, Math.hypot(5, 8), 1e-3, 'm'); // (5, 0) to (0, −8)
    // Along the wall to a corner, up the side to it, to the nearest corner of the section: 5 + 8 + 2.
    expectNear(back?.lengthM ?? 0, 15, 1e-3, 'm');
    expect(back?.bends.map(({ name }) => name.slice(1))).toEqual(['W corner of house']); // north of it, straight on
    // The farthest: the middle of the far edge, by either corner: 13 + √(5² + 6²).
    expectNear(shortestHoseM ?? 0, 13 + Math.hypot(5, 6), 1e-3, 'm');
  });

  test('is needed as far as the passes go, not to the edge', () => {
    const passes = [{ sectionId: 'A1', line: [at(1, -6), at(9, -6)] }];
    expectNear(laid([NEAR], [at(5, 0)], {}, passes).shortestHoseM ?? 0, Math.hypot(4, 6), 1e-3, 'm'); // to (9, −6)
  });

  test('takes the best of two spigots', () => {
    const { sections } = laid([NEAR, BACK], [at(5, 0), at(5, 8)]);
    expect(sections.map(({ spigotId }) => spigotId)).toEqual(['s0', 's1']);
    expect(sections[0]?.bySpigot.map(({ spigotId }) => spigotId)).toEqual(['s0', 's1']);
    expect(laid([NEAR, BACK], [at(5, 0), at(5, 8)], { spigotIds: ['s1'] }).sections[0]?.spigotId).toBe('s1');
  });

  test('lies over no wet turf from far to near, and over the near section the other way', () => {
    expect(laid([FAR, NEAR]).overWetM).toBe(0);
    const { sections, overWetM } = laid([NEAR, FAR]);
    expectNear(sections[1]?.overWetM ?? 0, 4, 1e-3, 'm'); // straight across the near section, 4 m deep
    expectNear(overWetM, 4, 1e-3, 'm'); // that alone
  });
});

describe('what a hose cannot do is said with what mends it', () => {
  const told = (...given: Parameters<typeof laid>) =>
    laid(...given).warnings.map(({ kind, where, facts }) => ({ kind, where, facts }));

  test('when there is no spigot', () => {
    expect(told([NEAR], [])).toMatchObject([{ kind: 'plan/no-spigot' }]);
    expect(laid([NEAR], []).sections[0]).toMatchObject({
      spigotId: null,
      neededM: null,
      isBeyond: true,
      line: [],
    });
  });

  test('when a spigot is inside the house, with how deep', () => {
    const [only] = told([NEAR], [at(5, 3)]);
    expect(only).toMatchObject({ kind: 'plan/spigot-in-wall', facts: { depthM: 3 } }); // to the south wall
    const [one, ...more] = told([NEAR], [at(5, 3), at(5, 0)]);
    expect(one).toMatchObject({ kind: 'plan/spigot-in-wall', where: { thing: 'spigot 0' } });
    expect(more).toEqual([]);
  });

  test('when the hose is too short for some, and for every section', () => {
    const [some] = told([NEAR, BACK], [at(5, 0)], { lengthM: 15 });
    expect(some).toMatchObject({
      kind: 'plan/hose-too-short',
      where: { thing: 'B1' },
      facts: { isAll: false },
    });
    const [all] = told([FAR, NEAR], [at(5, 0)], { lengthM: 3 });
    expect(all).toMatchObject({ where: { thing: 'A2 and A1' }, facts: { isAll: true, lengthM: 3 } });
  });
});

describe('a gate between the house and a fence', () => {
  // The fence runs round the back, with a gate a metre wide at the south-east corner of the house.
  const FENCE = outline('hardscape', 'fence', [
    at(11, 0),
    at(12, 0),
    at(12, 20),
    at(-2, 20),
    at(-2, 0),
    at(0, 0),
    at(0, 1),
    at(-1, 1),
    at(-1, 19),
    at(11, 19),
  ]);
  const through = (clearanceM: number) => {
    const marks = [{ id: 's', kind: 'spigot' as const, name: 'front', at: at(5, -1) }];
    const outlines = [HOUSE, { ...FENCE, blocksHose: true }];
    const hose = hoseGround(yardOf({ outlines, marks }), { lengthM: 60, spigotIds: null, clearanceM });
    return planHose(hose, { sections: [NEAR, BACK], passes: [] });
  };

  test('is gone through with little kept off, and closed by much', () => {
    expect(through(0.2).sections[1]?.neededM).not.toBeNull();
    expect(through(0.2).warnings).toEqual([]);
    const shut = through(0.6);
    expect(shut.sections.map(({ neededM }) => neededM === null)).toEqual([false, true]);
    expect(shut.shortestHoseM).toBeNull();
    expect(shut.warnings).toMatchObject([
      { kind: 'plan/hose-no-way', where: { thing: 'B1' }, facts: { clearanceM: 0.6, isByClearance: true } },
    ]);
  });

  test('a spigot shut in by what it keeps off is told of', () => {
    const marks = [{ id: 's', kind: 'spigot' as const, name: 'back', at: at(5, 9) }];
    const outlines = [HOUSE, { ...FENCE, blocksHose: true }];
    const hose = hoseGround(yardOf({ outlines, marks }), { lengthM: 60, spigotIds: null, clearanceM: 0.6 });
    expect(planHose(hose, { sections: [NEAR], passes: [] }).warnings).toMatchObject([
      { kind: 'plan/spigot-shut-in', where: { thing: 'back' }, facts: { isByClearance: true } },
    ]);
  });
});
