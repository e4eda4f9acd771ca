import { expect, test } from 'vitest';
import { checksOf, type SetFlag } from '../../../core/staking/checks.ts';
import { type NamedPoint, yardPoints } from '../../../core/staking/namedPoints.ts';
import { outline, rect } from '../../support/builders.ts';

const { all } = yardPoints({ outlines: [outline('zone', 'lawn', rect(0, 0, 20, 10))], marks: [] });
const [sw, se, ne, nw] = all as [NamedPoint, NamedPoint, NamedPoint, NamedPoint];

function onEdge(letter: string, xM: number, yM: number, corner: NamedPoint, towards: NamedPoint): SetFlag {
  const point: NamedPoint = { at: { xM, yM }, kind: 'flag', own: `flag ${letter}`, of: null, outline: null };
  return { point, setting: { kind: 'edge', corner, towards, alongM: xM, off: null } };
}

const SOUTH = onEdge('a', 6, 0, sw, se);
const NORTH = onEdge('b', 6, 10, nw, ne);
const open = () => false;

test('a line square to two edges has a check for either end: its length shows no slip along them', () => {
  const [checks] = checksOf([[SOUTH, NORTH]], all, 'metric', open);
  expect(checks?.map(({ from }) => from.own).sort()).toEqual(['flag a', 'flag b']);
  const fromSouth = checks?.find(({ from }) => from === SOUTH.point);
  // Of the corners a's setting did not use, a slip along the edge shows better from the north-east: √(14² + 10²) m.
  expect([fromSouth?.to.own, fromSouth?.lengthM.toFixed(2)]).toEqual(['NE corner', '17.20']);
});

test('of two lines side by side a diagonal from flag to flag checks both ends', () => {
  const lines = [
    [SOUTH, NORTH],
    [onEdge('c', 12, 0, sw, se), onEdge('d', 12, 10, nw, ne)],
  ] as const;
  const checks = checksOf(lines, all, 'metric', open);
  expect(checks.map((each) => each.length)).toEqual([1, 1]);
  expect(checks.flat().every(({ to }) => to.kind === 'flag')).toBe(true);
});

test('a line whose length shows slips of both ends has one check, to a landmark where one is near', () => {
  const post: NamedPoint = { at: { xM: 10, yM: 5 }, kind: 'landmark', own: 'post', of: null, outline: null };
  const slanted = [SOUTH, onEdge('b', 15, 10, nw, ne)] as const;
  const [checks] = checksOf([slanted], [...all, post], 'metric', open);
  expect(checks?.map(({ to }) => to.own)).toEqual(['post']);
});

test('with nothing else to hold a tape to there is no check', () => {
  expect(checksOf([[SOUTH, NORTH]], [sw, se, nw, ne].slice(0, 0), 'metric', open)).toEqual([[]]);
});
