import { describe, expect, test } from 'vitest';
import { regionsAreaM2, subtractRegions } from '../../../core/kernel/index.ts';
import { shapeOf } from '../../../core/zones/shape.ts';
import { takeAway } from '../../../core/zones/takeAway.ts';
import { outline, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { randomYard, seededRandom } from '../../support/randomYards.ts';

const lawn = [region(rect(0, 0, 20, 10))];
const bed = (name: string, ...box: [number, number, number, number]) =>
  shapeOf(outline('bed', name, rect(...box)));

describe('taking shapes away', () => {
  test('hands back the very same lawn when there is nothing to take', () => {
    expect(takeAway(lawn, []).regions).toBe(lawn);
  });

  test('makes a hole of a bed that is clear of everything', () => {
    const { regions, whole } = takeAway(lawn, [bed('a', 1, 1, 2, 2)]);
    expect(whole.length).toBe(1);
    expect(regions[0]?.outer).toBe(lawn[0]?.outer); // the edge was not touched
    expect(regions[0]?.holes).toEqual([rect(1, 1, 2, 2).reverse()]);
  });

  test('gives a hole to the piece it lies in when others part the lawn', () => {
    const path = bed('path', 9, -1, 2, 12);
    const { regions, whole } = takeAway(lawn, [bed('west', 1, 1, 2, 2), path, bed('east', 15, 1, 2, 2)]);
    expect(whole.map(({ outline: { id } }) => id)).toEqual(['west', 'east']);
    expect(regions.map(({ holes }) => holes.length)).toEqual([1, 1]);
    expectNear(regionsAreaM2(regions), 200 - 20 - 8, 1e-9, 'm²'); // the path's 2 * 10 and two beds of 4
  });

  test('does not take ground twice where boxes meet', () => {
    const { regions, whole } = takeAway(lawn, [bed('a', 1, 1, 3, 3), bed('b', 2, 2, 3, 3)]);
    expect(whole).toEqual([]);
    expectNear(regionsAreaM2(regions), 200 - 14, 1e-9, 'm²'); // 9 + 9 - 4
  });

  test('leaves the number one overlay of everything leaves', () => {
    let whole = 0;
    for (let seed = 1; seed <= 120; seed++) {
      const yard = randomYard(seededRandom(seed), 24, 9);
      const zone = shapeOf(outline('zone', 'z', yard.zone));
      const shapes = yard.beds.map((ring, i) => shapeOf(outline('bed', `${i}`, ring)));
      const left = takeAway(zone.regions, shapes);
      const overlaid = subtractRegions(
        zone.regions,
        shapes.flatMap(({ regions }) => regions),
      );
      // Both run on one grid: corners differ where a crossing is rounded, by a step along a bed's edge.
      expectNear(regionsAreaM2(left.regions), regionsAreaM2(overlaid), 1e-6 * 100, `m² (seed ${seed})`);
      whole += left.whole.length;
    }
    expect(whole).toBeGreaterThan(50); // both ways were taken
  });
});
