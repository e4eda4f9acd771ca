import { straight } from '../../../core/curves/index.ts';
import { newOutline } from '../../../core/edits/index.ts';
import { describe, expect, test } from 'vitest';
import type { Pass } from '../../../core/passes/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { Outline } from '../../../core/yard.ts';
import { hoseReach } from '../../../core/hose/index.ts';
import { expectNear } from '../../support/expectNear.ts';

const point = (xM: number, yM: number): YardPoint => ({ xM, yM });
const box = (west: number, south: number, east: number, north: number): YardPoint[] => [
  point(west, south),
  point(east, south),
  point(east, north),
  point(west, north),
];
const outline = (kind: Outline['kind'], outer: YardPoint[]): Outline =>
  newOutline({ id: kind, kind, name: kind, outer: straight(outer) });
const pass = (sectionId: string, ...line: YardPoint[]): Pass => {
  const lengthM = line.slice(1).reduce((sum, b, at) => {
    const a = line[at] ?? b;
    return sum + Math.hypot(b.xM - a.xM, b.yM - a.yM);
  }, 0);
  return { sectionId, order: 1, kind: 'lane', round: 1, line, lengthM };
};
const section = (id: string, outer: YardPoint[]) => ({
  id,
  zoneId: 'z',
  zoneName: 'lawn',
  region: { outer, holes: [] },
  areaM2: 1,
});

const ZONE = outline('zone', box(-10, -10, 20, 20));
const HOUSE = outline('building', box(0, 0, 10, 4));
const FRONT = section('A1', box(0, -6, 10, -4));
const BACK = section('A2', box(4, 5, 6, 7));
const PASSES = [pass('A1', point(5, -5), point(9, -5)), pass('A2', point(4, 6), point(6, 6))];

function neededFrom(at: YardPoint, outlines: readonly Outline[], hoseM = 10) {
  const marks = [{ id: 's', kind: 'spigot', name: 'front spigot', at } as const];
  const reach = hoseReach(
    { outlines, marks },
    { sections: [FRONT, BACK], passes: PASSES },
    'front spigot',
    hoseM,
  );
  if (!reach.ok) throw new Error(JSON.stringify(reach.problems));
  return reach.value.sections;
}

describe('the hose a section needs', () => {
  test('is the way to the farthest place of its passes where nothing is in between', () => {
    const [front] = neededFrom(point(5, 0), [ZONE, HOUSE]);
    expectNear(front?.neededM ?? Number.NaN, Math.hypot(4, 5), 1e-6, 'm'); // (5, 0) to (9, −5)
  });

  test('goes round a house by the nearer corner, and is most where both ways are as long', () => {
    const [, back] = neededFrom(point(5, 0), [ZONE, HOUSE]);
    // (5, 0) along the wall to (0, 0), up to (0, 4), then to (5, 6), the middle of the pass: 5 + 4 + √(5² + 2²)
    expectNear(back?.neededM ?? Number.NaN, 9 + Math.sqrt(29), 1e-4, 'm'); // 1e-5 m a bend, see makeWalkable
    expect(back?.isBeyond).toBe(true);
  });

  test('crosses everything that is no building', () => {
    const [, back] = neededFrom(point(5, 0), [ZONE, { ...HOUSE, kind: 'bed' }]);
    expectNear(back?.neededM ?? Number.NaN, Math.hypot(1, 6), 1e-6, 'm'); // (5, 0) straight to (4, 6) or (6, 6)
  });

  test('begins at the wall when the spigot is drawn a hand inside it', () => {
    const [front] = neededFrom(point(5, 0.1), [ZONE, HOUSE]);
    expectNear(front?.neededM ?? Number.NaN, Math.hypot(4, 5), 1e-6, 'm'); // from (5, 0), the nearest place of the wall
  });

  test('is not known from a spigot that is not there', () => {
    const reach = hoseReach({ outlines: [ZONE], marks: [] }, { sections: [], passes: [] }, 'well', 10);
    expect(reach).toMatchObject({ ok: false, problems: [{ kind: 'value/missing' }] });
  });
});
