import { describe, expect, test } from 'vitest';
import { clearGround, depthInWallM, MOST_IN_WALL_M, standAt } from '../../../core/hose/clearGround.ts';
import { rect, region } from '../../support/builders.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const HOUSE = region(rect(0, 0, 10, 8));
/** A metre from the house. */
const SHED = region(rect(11, 0, 4, 8));
/** A place is put this far beside an edge. */
const BESIDE_M = 1e-8;

describe('without a clearance', () => {
  const ground = clearGround({ barriers: [HOUSE], clearanceM: 0 });

  test('a place in the open stands where it is', () => {
    expect(standAt(ground, at(5, -1))).toEqual({ at: at(5, -1), way: [at(5, -1)], wayM: 0 });
  });

  test('a place on a wall, or a grid step inside it, stands at the wall', () => {
    for (const place of [at(5, 0), at(5, 1e-6), at(10, 8), at(0, 0)]) {
      const stand = standAt(ground, place);
      expect(Math.hypot((stand?.at.xM ?? 9) - place.xM, (stand?.at.yM ?? 9) - place.yM)).toBeLessThan(2e-6);
      expect(stand?.wayM).toBe(0);
    }
  });

  test('a spigot drawn in its wall stands at the nearest place on the wall, and no hose is counted for it', () => {
    const stand = standAt(ground, at(5, 0.6), MOST_IN_WALL_M);
    expect(Math.hypot((stand?.at.xM ?? 9) - 5, stand?.at.yM ?? 9)).toBeLessThan(BESIDE_M); // straight south: (5, 0)
    expect(stand?.wayM).toBe(0);
  });

  test('a spigot deep in the house stands nowhere', () => {
    expect(standAt(ground, at(5, 4), MOST_IN_WALL_M)).toBeUndefined();
    expect(depthInWallM(ground, at(5, 3))).toBeCloseTo(3, 12); // to the south wall
    expect(depthInWallM(ground, at(5, -3))).toBe(0);
  });
});

describe('with a clearance', () => {
  test('a place nearer to the wall is carried straight out, and the way counts', () => {
    const ground = clearGround({ barriers: [HOUSE], clearanceM: 0.3 });
    const stand = standAt(ground, at(5, -0.1));
    expect(stand?.wayM).toBeCloseTo(0.2, 6); // 0.3 kept off, 0.1 from the wall already
    expect(stand?.at.yM).toBeCloseTo(-0.3, 6);
    expect(standAt(ground, at(5, 0.5), MOST_IN_WALL_M)?.wayM).toBeCloseTo(0.3, 6); // from the wall itself
  });

  test('which closes a gate, a place in the gate is carried along it, not through a wall', () => {
    const ground = clearGround({ barriers: [HOUSE, SHED], clearanceM: 0.6 });
    const stand = standAt(ground, at(10.5, 1));
    expect(stand?.at.yM).toBeLessThan(0);
  });
});
