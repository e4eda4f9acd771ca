import { describe, expect, test } from 'vitest';
import { regionsAreaM2, signedAreaM2 } from '../../../core/kernel/index.ts';
import { near, shapeOf } from '../../../core/zones/shape.ts';
import { outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

describe('an outline made ready', () => {
  test('runs counter-clockwise whichever way it was drawn', () => {
    const [drawn] = shapeOf(outline('bed', 'b', rect(0, 0, 3, 2).reverse())).regions;
    expect(signedAreaM2(drawn?.outer ?? [])).toBe(6); // 3 * 2
  });

  test('has its holes taken out, also one that parts it', () => {
    const { regions } = shapeOf(outline('zone', 'z', rect(0, 0, 10, 10), rect(4, -1, 2, 12)));
    expect(regions.length).toBe(2);
    expectNear(regionsAreaM2(regions), 80, 1e-9, 'm²'); // 100 - 2 * 10
  });

  test('is near what its box meets, and not near itself', () => {
    const a = shapeOf(outline('zone', 'a', rect(0, 0, 10, 10)));
    const b = shapeOf(outline('zone', 'b', rect(10, 10, 5, 5)));
    const c = shapeOf(outline('zone', 'c', rect(10.1, 0, 5, 5)));
    expect(near(a, [a, b, c])).toEqual([b]); // boxes that touch meet
  });
});
