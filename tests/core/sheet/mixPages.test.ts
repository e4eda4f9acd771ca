import { expect, test } from 'vitest';
import { mixPages } from '../../../core/sheet/mixPages.ts';
import { LONG_STRIP, MANY_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';
import { sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { contextOf, inOneLoad, onASlope } from '../../support/sheetContexts.ts';
import { textsOf } from '../../support/sheetPages.ts';

test('every load has a card, over as many pages as it takes', () => {
  const pages = mixPages(contextOf(MANY_SECTIONS));
  expect(pages.length).toBeGreaterThan(1);
  const cards = pages.flatMap((page) => textsOf(page.marks)).filter((word) => /^Load \d+$/.test(word));
  expect(cards).toEqual(Array.from({ length: 30 }, (_, i) => `Load ${i + 1}`)); // 30 sections, one load each
});

test('a hose-end card gives product, water and dial; a tank card what to fill it to', () => {
  const hose = mixPages(contextOf(THREE_ZONES)).flatMap((page) => textsOf(page.marks));
  for (const word of ['in the bottle', 'water', 'dial', 'fl oz/gal']) expect(hose).toContain(word);
  const tank = mixPages(contextOf(LONG_STRIP)).flatMap((page) => textsOf(page.marks));
  for (const word of ['product', 'carrier', 'fill to']) expect(tank).toContain(word);
  expect(tank).not.toContain('dial');
});

test('a card shows the amounts of the table', () => {
  const context = contextOf(THREE_ZONES);
  const words = mixPages(context).flatMap((page) => textsOf(page.marks));
  // A1 is 132 m² at 0.95 mL/m²: 125.4 mL, 4.24 US fl oz of 29.57 mL
  expect(words.filter((word) => word === '4.2')).toHaveLength(2); // in the table and on the card
});

test('amounts by the sloping surface are said to be so, with the area they are for', () => {
  const context = contextOf(THREE_ZONES);
  const plan = onASlope(context.plan, 1.25);
  const sloping = { ...context, plan, figures: sheetFigures(plan, context.units) };
  const [level, said] = [context, sloping].map((each) =>
    mixPages(each)
      .flatMap((page) => textsOf(page.marks))
      .join(' '),
  );
  expect(level).not.toContain('surface');
  expect(said).toContain('by the sloping surface, not the map’s area');
  expect(said).toContain('surface, '); // the column's head, in place of “treats”
});

test('sections that share a load have one card and one row between them, and as many cards as loads', () => {
  const context = contextOf(THREE_ZONES);
  const plan = inOneLoad(context.plan, 'B1', 'C1');
  const figures = sheetFigures(plan, context.units);
  const words = mixPages({ ...context, plan, figures }).flatMap((page) => textsOf(page.marks));
  expect(words.filter((word) => word.startsWith('Load '))).toEqual(['Load 1', 'Load 2', 'Load 3', 'Load 4']); // 5 sections
  expect(words.filter((word) => word === 'B1 and C1')).toHaveLength(2); // in the table and on the card
  expect(words).toContain('West side and Front lawn');
});
