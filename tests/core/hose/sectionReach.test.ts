import { expect, test } from 'vitest';
import { clearGround } from '../../../core/hose/clearGround.ts';
import { hoseWays } from '../../../core/hose/hoseWays.ts';
import { closed, nearestOf, reachOf } from '../../../core/hose/sectionReach.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const GROUND = clearGround({ barriers: [region(rect(0, 0, 10, 8))], clearanceM: 0 });
const FRONT = hoseWays(GROUND, { id: 'front', name: 'front', at: at(5, 0) });
const BACK = hoseWays(GROUND, { id: 'back', name: 'back', at: at(5, 8) });

test('the best spigot takes the least hose to the farthest place; of equals it is the first', () => {
  const lawn = [closed(rect(0, -6, 10, 4))];
  const { each, best } = reachOf([BACK, FRONT], lawn);
  expect(best?.ways).toBe(FRONT);
  expectNear(best?.neededM ?? 0, Math.hypot(5, 6), 1e-3, 'm'); // (5, 0) to (0, −6)
  expect(each.map(({ ways }) => ways.spigot.id)).toEqual(['back', 'front']);
  const twin = hoseWays(GROUND, { ...FRONT.spigot, id: 'twin' });
  expect(reachOf([twin, FRONT], lawn).best?.ways).toBe(twin);
  expect(reachOf([], lawn).best).toBeUndefined();
});

test('a section is come to at its nearest edge, of a hole in it too, or at once when the spigot is in it', () => {
  expectNear(nearestOf(FRONT, region(rect(0, -6, 10, 4)))?.lengthM ?? 9, 2, 1e-3, 'm'); // straight south to y = −2
  const round = region(rect(-5, -5, 20, 18), rect(-1, -1, 12, 10));
  expectNear(nearestOf(FRONT, round)?.lengthM ?? 9, 1, 1e-3, 'm'); // the hole's edge at y = −1
  expect(nearestOf(FRONT, region(rect(0, -6, 10, 8)))?.lengthM).toBe(0);
});
