import { expect, test } from 'vitest';
import { lineWays } from '../../../core/staking/lineWays.ts';
import type { NamedPoint } from '../../../core/staking/namedPoints.ts';

function stood(letter: string, xM: number, yM: number) {
  const point: NamedPoint = { at: { xM, yM }, kind: 'flag', own: `flag ${letter}`, of: null, outline: null };
  return { point, place: { xM, yM } };
}

const A = stood('a', 0, 0);
const B = stood('b', 20, 0);
const open = () => false;

test('a place on the line between two flags is taped from either', () => {
  const ways = lineWays({ xM: 6, yM: 0 }, [A, B], 'metric', open).toSorted((a, b) => a.cost - b.cost);
  const words = ways.map(({ setting }) =>
    setting.kind === 'line' ? [setting.from.own, setting.towards.own, setting.alongM] : null,
  );
  expect(words).toEqual([
    ['flag a', 'flag b', 6],
    ['flag b', 'flag a', 14],
  ]);
});

test('a place off the line, and one far past the second flag, is not taped along it', () => {
  expect(lineWays({ xM: 6, yM: 0.02 }, [A, B], 'metric', open)).toEqual([]);
  expect(lineWays({ xM: 31, yM: 0 }, [A, B], 'metric', open)).toEqual([]); // more than half as far again
  expect(lineWays({ xM: 29, yM: 0 }, [A, B], 'metric', open)).toHaveLength(1);
});

test('a flag that was set a little off takes those set along it with it', () => {
  const off = { ...B, point: { ...B.point, at: { xM: 20, yM: 0.02 } } };
  const [way] = lineWays({ xM: 10, yM: 0 }, [A, off], 'metric', open);
  expect(way?.asSet.yM).toBeCloseTo(0.01, 6); // half way to 0.02
});
