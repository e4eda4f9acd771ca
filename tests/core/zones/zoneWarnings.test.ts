import { expect, test } from 'vitest';
import { shapeOf } from '../../../core/zones/shape.ts';
import { coveredWarnings, outsideWarnings, overlapWarnings } from '../../../core/zones/zoneWarnings.ts';
import { outline, rect, region, LEVEL, spreadOf } from '../../support/builders.ts';

const lawn = shapeOf(outline('zone', 'lawn', rect(0, 0, 10, 10)));

test('each kind that belongs in a lawn is missed outside one, the others are not', () => {
  const outside = (['bed', 'hardscape', 'building', 'water', 'tree', 'keep-off', 'check-plot'] as const).map(
    (kind) => shapeOf(outline(kind, kind, rect(20, 0, 2, 2))),
  );
  const named = outsideWarnings(outside, [lawn], new Set()).map(({ where }) => where);
  expect(named).toMatchObject([
    { name: 'bed' },
    { name: 'tree' },
    { name: 'keep-off' },
    { name: 'check-plot' },
  ]);
});

test('a sliver under a square centimetre from two hands tracing one edge is still outside', () => {
  const traced = shapeOf(outline('bed', 'border', rect(9.99999, 0, 3, 5))); // 1e-5 * 5 = 0.5 cm² inside
  expect(outsideWarnings([traced], [lawn], new Set()).length).toBe(1);
  expect(outsideWarnings([traced], [lawn], new Set([traced]))).toEqual([]); // already known to lie inside
});

test('a zone with nothing left to treat is named, one with some is not', () => {
  const zone = {
    zoneId: 'z',
    name: 'Side strip',
    grossAreaM2: 20,
    cutOutAreaM2: 20,
    ownedByOtherAreaM2: 0,
    turfAreaM2: 0,
    treatedAreaM2: 0,
    sigmaM2: null,
    spread: spreadOf('z', null),
    ...LEVEL,
    turf: [],
    treated: [],
  };
  const half = { ...zone, zoneId: 'h', turfAreaM2: 12, treatedAreaM2: 10 };
  expect(coveredWarnings([half, zone])).toEqual([
    { kind: 'shape/covered-whole', where: { outlineId: 'z', name: 'Side strip' }, facts: {} },
  ]);
});

test('shared ground is told at the zone that does not own it', () => {
  const regions = [region(rect(6, 0, 4, 3))];
  const overlap = { ownerId: 'a', otherId: 'b', by: 'larger', areaM2: 12, regions } as const;
  const outlines = [outline('zone', 'a', rect(0, 0, 10, 10)), outline('zone', 'b', rect(6, -5, 9, 8))];
  expect(overlapWarnings([overlap], outlines)).toEqual([
    {
      kind: 'shape/overlaps',
      where: { outlineId: 'b', name: 'b', at: { xM: 6, yM: 0 } },
      facts: { ownerName: 'a', by: 'larger', overlapM2: 12 },
    },
  ]);
});
