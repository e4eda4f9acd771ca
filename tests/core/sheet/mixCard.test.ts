import { expect, test } from 'vitest';
import { cardHeightMm, drawCard } from '../../../core/sheet/mixCard.ts';
import type { SheetContext } from '../../../core/sheet/sheetContext.ts';
import { type FillFigures, sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { contextOf, inOneLoad } from '../../support/sheetContexts.ts';
import { textsOf } from '../../support/sheetPages.ts';

function contextFor(plan: SheetContext['plan']): SheetContext {
  const context = contextOf(THREE_ZONES);
  return { ...context, plan, figures: sheetFigures(plan, context.units) };
}

function cardOf(context: SheetContext, fill: FillFigures): string[] {
  return textsOf(drawCard(context, fill, { xMm: 0, yMm: 0, widthMm: 88, heightMm: cardHeightMm(fill) }));
}

const { plan } = handMadePlan(THREE_ZONES);

test('a load of one section names it and its zone', () => {
  const context = contextFor(plan);
  const words = cardOf(context, context.figures.fills[0] as FillFigures);
  expect(words).toEqual(expect.arrayContaining(['Load 1', 'A1, Back lawn', 'mixed', 'done', 'left over']));
});

test('a load that sections share gives what is poured, and what of it goes on each', () => {
  const context = contextFor(inOneLoad(plan, 'B1', 'C1'));
  const fill = context.figures.fills.at(-1) as FillFigures;
  const words = cardOf(context, fill);
  // B1 is 240 less two round and square beds; C1 12 x 8 less the drive: 0.95 mL/m² each, as the ledger has them.
  const parts = fill.parts.map(({ productL }) => `${(productL / 0.0295735295625).toFixed(1)} fl oz`); // NIST SP 811: fl oz
  for (const part of parts) expect(words).toContain(part);
  expect(words).toContain((fill.productL / 0.0295735295625).toFixed(1)); // the whole load, large
  expect(words.filter((word) => /^[BC]1 {2}/.test(word)).length).toBe(2); // a line for each section
  expect(cardHeightMm(fill)).toBeGreaterThan(cardHeightMm(context.figures.fills[0] as FillFigures));
});

test('a load of more sections than a card lists says how many more there are', () => {
  const context = contextFor(plan);
  const [first] = context.figures.loads;
  const fill = {
    ...(context.figures.fills[0] as FillFigures),
    parts: Array.from({ length: 30 }, () => first),
  };
  expect(cardOf(context, fill as FillFigures)).toContain('and 6 sections more'); // 30 less the 24 listed
});
