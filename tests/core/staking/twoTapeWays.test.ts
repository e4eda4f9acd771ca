import { expect, test } from 'vitest';
import { distanceM } from '../../../core/kernel/index.ts';
import { type NamedPoint, yardPoints } from '../../../core/staking/namedPoints.ts';
import { twoTapeWays } from '../../../core/staking/twoTapeWays.ts';
import { outline, rect } from '../../support/builders.ts';

const post = (own: string, xM: number, yM: number): NamedPoint => {
  return { at: { xM, yM }, kind: 'landmark', own, of: null, outline: null };
};
const open = () => false;

function bestOf(points: readonly NamedPoint[], at = { xM: 4, yM: 3 }, isBlocked: () => boolean = open) {
  const [way] = twoTapeWays(at, points, 'metric', isBlocked).toSorted((a, b) => a.cost - b.cost);
  if (way?.setting.kind !== 'tapes') throw new Error('no way by two tapes');
  const { first, second, side } = way.setting;
  return { words: [first.point.own, first.tapeM, second.point.own, second.tapeM, side], way };
}

test('a place is where the tapes from two landmarks meet, on the side that is said', () => {
  const { words, way } = bestOf([post('post', 0, 0), post('pole', 8, 0)]);
  expect(words).toEqual(['pole', 5, 'post', 5, 'right']); // 3-4-5; going west, north is on the right
  expect(distanceM(way.asSet, { xM: 4, yM: 3 })).toBeLessThan(1e-9);
});

test('tapes that cross well come before shorter ones that cross flat', () => {
  const flat = [post('left', 0, 2.9), post('right', 8, 2.9)];
  const { words } = bestOf([...flat, post('far', 4, 14)]);
  expect(words).toContain('far');
});

test('landmarks come before corners as near', () => {
  const { all } = yardPoints({ outlines: [outline('zone', 'lawn', rect(0, 0, 8, 8))], marks: [] });
  const { words } = bestOf([...all, post('post', 0, 0.5), post('pole', 8, 0.5)]);
  expect(words.filter((word) => word === 'post' || word === 'pole')).toHaveLength(2);
});

test('rounding and flat crossings are told apart from good ones by what the printed tapes leave', () => {
  const { way } = bestOf([post('post', 0.003, 0.004), post('pole', 8.002, 0.001)]);
  expect(distanceM(way.asSet, { xM: 4, yM: 3 })).toBeLessThan(0.015); // two tapes to the centimetre that cross at 74°
});
