import { expect, test } from 'vitest';
import { regionsAreaM2 } from '../../../core/kernel/index.ts';
import { shapeOf } from '../../../core/zones/shape.ts';
import { zoneGround } from '../../../core/zones/zoneGround.ts';
import { outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const zone = shapeOf(outline('zone', 'lawn', rect(0, 0, 20, 10)));
const bed = shapeOf(outline('bed', 'bed', rect(1, 1, 2, 2)));
const none = { owners: [], cutOuts: [], untreated: [] };

test('is not worked out again while nothing near it changed', () => {
  const first = zoneGround(zone, { ...none, cutOuts: [bed] });
  expect(zoneGround(zone, { ...none, cutOuts: [bed] })).toBe(first);
  const moved = zoneGround(zone, { ...none, cutOuts: [shapeOf(outline('bed', 'bed', rect(2, 1, 2, 3)))] });
  expect(moved.turfAreaM2).toBe(194); // 200 - 6
});

test('lost to several owners is told one by one, and adds up', () => {
  const first = zoneGround(shapeOf(outline('zone', 'a', rect(-5, 0, 10, 10))), none);
  const second = zoneGround(shapeOf(outline('zone', 'b', rect(0, -5, 10, 10))), { ...none, owners: [first] });
  const third = zoneGround(zone, { ...none, owners: [first, second] });
  expect(third.shared.map(({ owner, areaM2 }) => [owner.outline.id, Math.round(areaM2 * 1e4) / 1e4])).toEqual(
    [
      ['a', 50], // 5 * 10
      ['b', 25], // its 10 * 5 less the 5 * 5 that is a's
    ],
  );
  expectNear(third.grossAreaM2 - third.ownAreaM2, 75, 1e-4, 'm²'); // 50 + 25
  for (const { regions, areaM2 } of third.shared) expectNear(regionsAreaM2(regions), areaM2, 1e-9, 'm²');
});

test('a zone that lies whole in this one and owns its ground is told too', () => {
  const island = zoneGround(shapeOf(outline('zone', 'island', rect(5, 5, 2, 2))), none);
  const round = zoneGround(zone, { ...none, owners: [island] });
  expect(round.shared).toMatchObject([{ areaM2: 4 }]); // 2 * 2
  expect(round.own.regions[0]?.holes.length).toBe(1);
});
