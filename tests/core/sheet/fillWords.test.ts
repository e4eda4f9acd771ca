import { expect, test } from 'vitest';
import { sectionsOfFill, zonesOfFill } from '../../../core/sheet/fillWords.ts';
import { sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { MANY_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';
import { inOneLoad } from '../../support/sheetContexts.ts';

const { plan } = handMadePlan(THREE_ZONES);

function wordsOf(shared: typeof plan): (readonly [string, string])[] {
  return sheetFigures(shared, 'us').fills.map((fill) => [sectionsOfFill(fill), zonesOfFill(fill)] as const);
}

test('one section is named alone', () => {
  expect(wordsOf(plan).at(-1)).toEqual(['C1', 'Front lawn']);
});

test('of many the first few are listed and the others counted', () => {
  const parts = sheetFigures(handMadePlan(MANY_SECTIONS).plan, 'us').loads.slice(0, 6);
  expect(sectionsOfFill({ parts })).toBe('A1, A2, A3 and 3 more'); // six
  expect(sectionsOfFill({ parts: parts.slice(0, 4) })).toBe('A1, A2, A3 and A4');
});

test('sections that share a load are listed, their zones each once', () => {
  expect(wordsOf(inOneLoad(plan, 'B1', 'C1')).at(-1)).toEqual(['B1 and C1', 'West side and Front lawn']);
  expect(wordsOf(inOneLoad(plan, 'A1', 'A3'))[0]).toEqual(['A1 and A3', 'Back lawn']);
  const three = inOneLoad(inOneLoad(plan, 'B1', 'C1'), 'B1', 'A1');
  expect(wordsOf(three).map(([ids]) => ids)).toContain('A1, B1 and C1');
});
