import { expect, test } from 'vitest';
import { fullName, yardPoints } from '../../../core/staking/namedPoints.ts';
import type { Mark, Outline, Traced } from '../../../core/yard.ts';
import { outline, points, rect } from '../../support/builders.ts';

const post: Mark = { id: 'm', kind: 'landmark', name: 'lamp post', at: { xM: -3, yM: 0 } };

function namesOf(outlines: readonly Outline[], marks: readonly Mark[] = []): string[] {
  return yardPoints({ outlines, marks }).all.map(fullName);
}

test('corners are called after the side they lie on, landmarks by their own name', () => {
  expect(namesOf([outline('zone', 'back lawn', rect(0, 0, 10, 6))], [post])).toEqual([
    'lamp post',
    'SW corner of back lawn',
    'SE corner of back lawn',
    'NE corner of back lawn',
    'NW corner of back lawn',
  ]);
});

test('several corners on one side are numbered clockwise', () => {
  // Two steps down in the north-east of a lawn 10 m square; from the box's middle (5, 5) all four lie to the NE.
  const steps = points([0, 0], [10, 0], [10, 8], [9, 8], [9, 9.5], [7.5, 9.5], [7.5, 10], [0, 10]);
  const names = namesOf([outline('zone', 'lawn', steps)]);
  expect(names.slice(2, 7)).toEqual([
    'NE corner 5 of lawn',
    'NE corner 4 of lawn',
    'NE corner 3 of lawn',
    'NE corner 2 of lawn',
    'NE corner 1 of lawn',
  ]);
  const turned = namesOf([outline('zone', 'lawn', [...steps].reverse())]);
  expect(turned.toReversed()).toEqual(names); // the same corners, traced the other way round
});

test('no two points of a yard are called the same', () => {
  const names = namesOf(
    [
      outline('bed', 'bed', rect(0, 0, 2, 2)),
      outline('bed', 'bed', rect(5, 0, 2, 2)),
      outline('water', '', rect(9, 0, 2, 2)),
    ],
    [post, { ...post, id: 'n' }],
  );
  expect(names).toContain('NE corner of bed (2)');
  expect(names).toContain('NE corner of water');
  expect(names).toContain('lamp post (2)');
  expect(new Set(names).size).toBe(names.length);
});

test('a point among steps too short to be seen, and one on a curve, are bends and not corners', () => {
  const kindsOf = (outer: Traced) =>
    yardPoints({ outlines: [{ ...outline('zone', 'lawn', rect(0, 0, 1, 1)), outer }], marks: [] }).all.map(
      ({ kind }) => kind,
    );
  const steps = Array.from({ length: 12 }, (_, i) => ({
    xM: 1.5 * Math.cos((i * Math.PI) / 6),
    yM: 1.5 * Math.sin((i * Math.PI) / 6),
  }));
  // Chords of 2 × 1.5 × sin 15° = 0.78 m.
  expect(new Set(kindsOf({ kind: 'corners', corners: steps }))).toEqual(new Set(['bend']));
  const smooth = rect(0, 0, 10, 6).map((corner) => ({ ...corner, run: { kind: 'smooth' as const } }));
  expect(new Set(kindsOf({ kind: 'corners', corners: smooth }))).toEqual(new Set(['bend']));
  expect(kindsOf({ kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 3 })).toEqual(Array(5).fill('bend'));
});

test('the trunk of a tree is as good as a corner, and a hole says whose it is', () => {
  const tree: Outline = {
    ...outline('tree', 'maple', rect(0, 0, 1, 1)),
    outer: { kind: 'circle', centre: { xM: 4, yM: 4 }, radiusM: 1 },
  };
  const trunk = yardPoints({ outlines: [tree], marks: [] }).all.find(({ own }) => own === 'middle');
  expect([trunk?.kind, trunk?.at, trunk && fullName(trunk)]).toEqual([
    'corner',
    { xM: 4, yM: 4 },
    'middle of maple',
  ]);
  const holed = { ...outline('zone', 'lawn', rect(0, 0, 20, 20)) };
  const hole: Traced = { kind: 'corners', corners: rect(12, 12, 3, 3) };
  expect(namesOf([{ ...holed, holes: [hole] }])).toContain('NE corner of hole 1 of lawn');
});
