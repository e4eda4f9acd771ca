import { expect, test } from 'vitest';
import { clearGround } from '../../../core/hose/clearGround.ts';
import { hoseGround } from '../../../core/hose/index.ts';
import { hoseWays } from '../../../core/hose/hoseWays.ts';
import { nameBends } from '../../../core/hose/nameBends.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { Outline } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';

const at = (xM: number, yM: number) => ({ xM, yM });

function bendsOf(outlines: readonly Outline[], from: YardPoint, to: YardPoint, clearanceM = 0) {
  const marks = [{ id: 's', kind: 'spigot' as const, name: 'front', at: from }];
  const hose = hoseGround(yardOf({ outlines: [...outlines], marks }), {
    lengthM: 50,
    spigotIds: null,
    clearanceM,
  });
  const [spigot] = hose.spigots;
  const way = spigot && hoseWays(clearGround(hose), spigot).wayTo(to);
  if (way === undefined) throw new Error('no way');
  return nameBends(way, hose);
}

const HOUSE = outline('building', 'house', rect(0, 0, 10, 8));

test('a bend is named by the corner of the outline it goes round, also at a distance from it', () => {
  for (const clearanceM of [0, 0.3]) {
    const bends = bendsOf([HOUSE], at(8, -2), at(8, 10), clearanceM);
    expect(bends.map(({ name, outlineId }) => [name, outlineId])).toEqual([
      ['SE corner of house', 'house'],
      ['NE corner of house', 'house'],
    ]);
    // Each turns by 90° less atan(2/2): from (8, −2) to the corner (10, 0) at 45°, then straight north.
    for (const { turnRad } of bends) expect(turnRad).toBeCloseTo(Math.PI / 4, clearanceM === 0 ? 9 : 0);
  }
});

test('a slight bend slides, a sharp one may snag', () => {
  const [slight] = bendsOf([HOUSE], at(8, -20), at(11, 12));
  expect(slight?.maySnag).toBe(false);
  const [sharp] = bendsOf([HOUSE], at(2, -0.5), at(12, 4));
  expect(sharp).toMatchObject({ name: 'SE corner of house', maySnag: true }); // some 60 degrees
});

test('round a pond it is one bend at a side, however many corners it is computed with', () => {
  const pond: Outline = {
    ...outline('water', 'pond', rect(0, 0, 1, 1)),
    outer: { kind: 'circle', centre: at(0, 0), radiusM: 5 },
  };
  const bends = bendsOf([pond], at(-6, -1), at(6, -1));
  expect(bends.map(({ name }) => name)).toContain('S side of pond');
  expect(bends.length).toBeLessThan(4); // SW, S and SE at most
});

test('a straight hose has no bends', () => {
  expect(bendsOf([HOUSE], at(8, -2), at(2, -5))).toEqual([]);
});
