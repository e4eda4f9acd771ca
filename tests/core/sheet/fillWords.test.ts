import { expect, test } from 'vitest';
import { sectionsOfFill, zonesOfFill } from '../../../core/sheet/fillWords.ts';
import { sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { inOneLoad } from '../../support/sheetContexts.ts';

const { plan } = handMadePlan(THREE_ZONES);

function wordsOf(shared: typeof plan): (readonly [string, string])[] {
  return sheetFigures(shared, 'us').fills.map((fill) => [sectionsOfFill(fill), zonesOfFill(fill)] as const);
}

test('one section is named alone', () => {
  expect(wordsOf(plan).at(-1)).toEqual(['C1', 'Front lawn']);
});

test('sections that share a load are listed, their zones each once', () => {
  expect(wordsOf(inOneLoad(plan, 'B1', 'C1')).at(-1)).toEqual(['B1 and C1', 'West side and Front lawn']);
  expect(wordsOf(inOneLoad(plan, 'A1', 'A3'))[0]).toEqual(['A1 and A3', 'Back lawn']);
  const three = inOneLoad(inOneLoad(plan, 'B1', 'C1'), 'B1', 'A1');
  expect(wordsOf(three).map(([ids]) => ids)).toContain('A1, B1 and C1');
});
