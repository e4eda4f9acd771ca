import { expect, test } from 'vitest';
import { sharedPoints } from '../../../core/area/sharedPoints.ts';
import { newOutline } from '../../../core/edits/index.ts';
import { outline, points, rect } from '../../support/builders.ts';
import { placeOf } from '../../support/movedOutlines.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

const namesOf = (groups: ReturnType<typeof sharedPoints>) =>
  groups.map((group) => group.map(({ outlineId, own }) => `${outlineId}${own}`));

test('corners at one place of the kernel’s grid are one point, a micrometre apart they are two', () => {
  const west = outline('zone', 'w', rect(0, 0, 10, 10));
  const east = outline('zone', 'e', points([10, 0], [20, 0], [20, 10], [10.0000004, 10]));
  expect(namesOf(sharedPoints([west, east]))).toEqual([
    ['w1', 'e0'], // (10, 0)
    ['w2', 'e3'], // (10, 10), 0.4 µm off
  ]);
  const apart = outline('zone', 'e', points([10.000001, 0], [20, 0], [20, 10]));
  expect(sharedPoints([west, apart])).toEqual([]); // 1 µm off
});

test('what is measured from a middle stands at no place of its own', () => {
  const pond = newOutline({
    id: 'p',
    kind: 'water',
    name: 'pond',
    outer: { kind: 'circle', centre: { xM: 8, yM: 0 }, radiusM: 2 },
  });
  expect(sharedPoints([outline('zone', 'w', rect(0, 0, 10, 10)), pond])).toEqual([]); // its rim is on (10, 0)
});

test('on a lattice of many outlines the groups are those of equal places', () => {
  const random = seededRandom(7);
  const whole = () => Math.floor(between(random, -20, 20));
  const outlines = Array.from({ length: 300 }, (_, i) =>
    outline('bed', `b${i}`, rect(whole(), whole(), 1, 1)),
  );
  const counts = new Map<string, number>();
  for (const { outer } of outlines) {
    for (const at of outer.kind === 'corners' ? outer.corners : []) {
      counts.set(placeOf(at), (counts.get(placeOf(at)) ?? 0) + 1);
    }
  }
  const expected = [...counts].filter(([, count]) => count > 1).sort(); // by a table of texts
  const found = sharedPoints(outlines).map((group) => [
    placeOf(group[0]?.at ?? { xM: 0, yM: 0 }),
    group.length,
  ]);
  expect(found.sort()).toEqual(expected);
});
