import { describe, expect, test } from 'vitest';
import { regionContains } from '../../../core/kernel/index.ts';
import { fits, insidePlace, placeLabels } from '../../../renderer/map/labels.ts';
import { Lens } from '../../../renderer/map/lens.ts';
import { YardOnMap } from '../../../renderer/map/yardOnMap.ts';
import { lShape, rect, region } from '../../support/builders.ts';
import { randomStar, seededRandom } from '../../support/randomYards.ts';

const map = new YardOnMap({ kind: 'loose' });
const lens = new Lens(map, 20, { x: 0, y: 0 });

describe('names on the sketch', () => {
  test('a name stands inside its shape, whatever the shape', () => {
    const random = seededRandom(3);
    for (let i = 0; i < 200; i += 1) {
      const star = region(randomStar(random, 12, { xM: 0, yM: 0 }, 10, 0.8));
      expect(regionContains(star, insidePlace(star, 0.5)), `star ${i}`).toBe(true);
    }
  });

  test('a name avoids a hole in the middle', () => {
    const ground = region(rect(0, 0, 20, 20), rect(6, 6, 8, 8));
    expect(regionContains(ground, insidePlace(ground, 2))).toBe(true);
  });

  test('a name stands in the wide leg of an L where its height has room', () => {
    const place = insidePlace(region(lShape(20, 20, 14, 14)), 3);
    expect(place.yM).toBeLessThan(6 - 1.5); // the south leg is 6 m deep, half the height below its top
  });

  test('a name fits where there is room for it and not where there is none', () => {
    const box = region(rect(0, 0, 100 * lens.metresPerPx, 30 * lens.metresPerPx));
    const middle = { xM: 50 * lens.metresPerPx, yM: 15 * lens.metresPerPx };
    expect(fits(box, middle, lens, 90, 20)).toBe(true);
    expect(fits(box, middle, lens, 110, 20)).toBe(false);
    expect(fits(box, middle, lens, 90, 40)).toBe(false);
  });

  test('no two names overlap; the one asked first keeps its best place', () => {
    const ask = (key: string, ...places: [number, number][]) => ({
      key,
      widthPx: 40,
      heightPx: 20,
      places: places.map(([x, y]) => ({ x, y })),
    });
    const placed = placeLabels([ask('a', [0, 0]), ask('b', [10, 5], [10, 30]), ask('c', [20, 0])]);
    expect(placed.get('a')).toEqual({ x: 0, y: 0 });
    expect(placed.get('b')).toEqual({ x: 10, y: 30 }); // its second place, 30 px lower, is free
    expect(placed.has('c')).toBe(false);
  });

  test('a name keeps off what already stands there, and is left out where it cannot', () => {
    const ask = {
      key: 'a',
      widthPx: 20,
      heightPx: 10,
      places: [
        { x: 0, y: 0 },
        { x: 40, y: 0 },
      ],
    };
    const flag = { at: { x: 5, y: 3 }, widthPx: 20, heightPx: 13 };
    expect(placeLabels([ask]).get('a')).toEqual({ x: 0, y: 0 });
    expect(placeLabels([ask], [flag]).get('a')).toEqual({ x: 40, y: 0 });
    expect(placeLabels([ask], [flag, { ...flag, at: { x: 45, y: 3 } }]).has('a')).toBe(false);
  });
});
