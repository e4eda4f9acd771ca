import { expect, test } from 'vitest';
import { hoseDistances } from '../../../core/hose/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const HOUSE = region(rect(0, 0, 10, 4));
const FRONT = { id: 'A1', region: region(rect(0, -6, 10, 2)) };
const BACK = { id: 'A2', region: region(rect(0, 6, 10, 2)) };
const GROUND = { lengthM: 20, clearanceM: 0, barriers: [HOUSE], obstacles: [] };
const spigot = (id: string, xM: number, yM: number) => ({ id, name: id, at: at(xM, yM) });

test('each section takes its best spigot, and that hose gets to its farthest corner', () => {
  const ground = { ...GROUND, spigots: [spigot('front', 5, 0), spigot('back', 5, 4)] };
  const [front, back] = hoseDistances(ground, [FRONT, BACK]);
  expect([front?.spigotId, back?.spigotId]).toEqual(['front', 'back']);
  expectNear(front?.neededM ?? 0, Math.hypot(5, 6), 1e-3, 'm'); // (5, 0) to (0, −6)
  expectNear(front?.nearestM ?? 0, 4, 1e-3, 'm'); // straight south to y = −4
  expectNear(back?.neededM ?? 0, Math.hypot(5, 4), 1e-3, 'm'); // (5, 4) to (0, 8)
});

test('without a spigot, or with one shut in, no hose gets there', () => {
  const none = { sectionId: 'A1', spigotId: null, neededM: Infinity, nearestM: Infinity };
  expect(hoseDistances({ ...GROUND, spigots: [] }, [FRONT])).toEqual([none]);
  expect(hoseDistances({ ...GROUND, spigots: [spigot('cellar', 5, 2)] }, [FRONT])).toEqual([none]);
});
