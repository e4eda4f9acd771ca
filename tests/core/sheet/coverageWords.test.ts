import { expect, test } from 'vitest';
import { byKind } from '../../../core/passes/coverage.ts';
import { coverageFigures, coveredWords, loadUseWords, outsideWords } from '../../../core/sheet/index.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';

const { coverage } = handMadePlan(THREE_ZONES).plan.ground;

function use(number: number, ratio: number) {
  return { number, mixedM2: 100, sweptM2: 100 * ratio, ratio, lastingPaceMPerS: ratio };
}

test('what is thrown outside is told by what it falls on, worst first', () => {
  const outsideOntoM2 = byKind((kind) => (kind === 'bed' ? 2 : kind === 'water' ? 1 : 0));
  const figures = coverageFigures({ ...coverage, outsideM2: 3, outsideOntoM2 }, 700, 'metric');
  expect(outsideWords(figures, 'metric')).toBe('1.0 m² onto water, 2.0 m² onto beds'); // 1 + 2 = 3 m²
});

test('nothing outside says nothing', () => {
  const figures = coverageFigures(
    { ...coverage, outsideM2: 0, outsideOntoM2: byKind(() => 0) },
    700,
    'metric',
  );
  expect(outsideWords(figures, 'metric')).toBe(''); // no kind
});

test('of two rounds, ground covered by one has half the rate', () => {
  expect(coveredWords(2).short).toContain('half the rate'); // the second round brings the other half
  expect(coveredWords(1).short).toBe(''); // one round leaves none short
});

test('the load that is swept furthest beyond its mix is told, with the pace at which it lasts', () => {
  const words = loadUseWords([use(1, 1.02), use(2, 1.06)], 'metric');
  expect(words?.text).toContain('load 2 sweep 6.0% more'); // 106 of 100
  expect(words?.text).toContain('1.06 m/s'); // 6 % faster than 1 m/s
  expect(words?.warns).toBe(false); // up to a tenth is the usual
});

test('above a tenth it warns; a load that lasts says nothing', () => {
  expect(loadUseWords([use(1, 1.11)], 'metric')?.warns).toBe(true); // 11 % more
  expect(loadUseWords([use(1, 0.97)], 'metric')).toBeNull(); // some is left over
  expect(loadUseWords([], 'metric')).toBeNull(); // no load
});
