import { expect, test } from 'vitest';
import { figuresLedger } from '../../../core/sheet/sectionLedgers.ts';
import { type LoadFigures, sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { LONG_STRIP, THREE_ZONES } from '../../support/handMadeYards.ts';
import { contextOf, inOneLoad } from '../../support/sheetContexts.ts';

test('a hose-end load says what goes in the bottle and where the dial stands', () => {
  const context = contextOf(THREE_ZONES);
  const ledger = figuresLedger(context, context.figures.loads[0] as LoadFigures);
  expect(ledger.columns.map((column) => column.title)).toEqual(
    expect.arrayContaining(['in the bottle', 'through the hose', 'dial']),
  );
  expect(ledger.rows[0]).toHaveLength(ledger.columns.length);
});

test('a section that shares a load says with which, and that its product is a part of what is in the bottle', () => {
  const context = contextOf(THREE_ZONES);
  const plan = inOneLoad(context.plan, 'B1', 'C1');
  const figures = sheetFigures(plan, context.units);
  const ledger = figuresLedger({ ...context, plan, figures }, figures.loads.at(-1) as LoadFigures);
  expect(ledger.rows[0]?.[0]).toEqual({ entry: '4', soft: 'with B1' }); // C1, in the load after the three of A
  expect(ledger.columns.map((column) => column.title)).toContain('product of it');
});

test('a tank has no dial', () => {
  const context = contextOf(LONG_STRIP);
  const ledger = figuresLedger(context, context.figures.loads[0] as LoadFigures);
  expect(ledger.columns.map((column) => column.title)).not.toContain('dial');
  expect(ledger.rows[0]).toHaveLength(ledger.columns.length);
});
