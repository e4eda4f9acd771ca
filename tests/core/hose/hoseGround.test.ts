import { expect, test } from 'vitest';
import { blocksHose, hoseGround } from '../../../core/hose/index.ts';
import { regionsAreaM2 } from '../../../core/kernel/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';

const HOSE = { lengthM: 20, spigotIds: null, clearanceM: 0 };
const HOUSE = outline('building', 'house', rect(0, 0, 10, 8));
const BED = outline('bed', 'bed', rect(20, 0, 3, 2));

test('a hose goes round buildings and water unless the person says otherwise', () => {
  expect(blocksHose(HOUSE)).toBe(true);
  expect(blocksHose(BED)).toBe(false);
  expect(blocksHose({ ...HOUSE, blocksHose: false })).toBe(false);
  expect(blocksHose({ ...BED, blocksHose: true })).toBe(true);
  const { barriers } = hoseGround(
    yardOf({ outlines: [outline('zone', 'lawn', rect(0, 0, 40, 30)), HOUSE, BED] }),
    HOSE,
  );
  expect(regionsAreaM2(barriers)).toBeCloseTo(80, 9); // the house alone: 10 x 8
});

test('a job that names its spigots has no others', () => {
  const marks = ['front', 'back'].map((id) => ({
    id,
    kind: 'spigot' as const,
    name: id,
    at: { xM: 0, yM: 0 },
  }));
  const yard = yardOf({ marks });
  expect(hoseGround(yard, HOSE).spigots.map(({ id }) => id)).toEqual(['front', 'back']);
  expect(hoseGround(yard, { ...HOSE, spigotIds: ['back'] }).spigots.map(({ id }) => id)).toEqual(['back']);
});
