import { expect, test } from 'vitest';
import { figuresLedger, flagsLedger } from '../../../core/sheet/sectionLedgers.ts';
import type { LoadFigures } from '../../../core/sheet/sheetFigures.ts';
import { LONG_STRIP, THREE_ZONES } from '../../support/handMadeYards.ts';
import { contextOf } from '../../support/sheetContexts.ts';

test('a hose-end load says what goes in the bottle and where the dial stands', () => {
  const context = contextOf(THREE_ZONES);
  const ledger = figuresLedger(context, context.figures.loads[0] as LoadFigures);
  expect(ledger.columns.map((column) => column.title)).toEqual(
    expect.arrayContaining(['in the bottle', 'through the hose', 'dial']),
  );
  expect(ledger.rows[0]).toHaveLength(ledger.columns.length);
});

test('a tank has no dial', () => {
  const context = contextOf(LONG_STRIP);
  const ledger = figuresLedger(context, context.figures.loads[0] as LoadFigures);
  expect(ledger.columns.map((column) => column.title)).not.toContain('dial');
  expect(ledger.rows[0]).toHaveLength(ledger.columns.length);
});

test('each cut line of a section names the neighbour, its length and both tape distances', () => {
  const context = contextOf(THREE_ZONES);
  const { sections, cutLines } = context.plan.ground;
  const own = cutLines.filter(({ between }) => between.includes('A2'));
  const section = sections.find(({ id }) => id === 'A2');
  if (section === undefined) throw new Error('no A2');
  expect(flagsLedger(context, section, own)?.rows).toEqual([
    // 10 m is 32 ft 10 in, 13.2 m 43 ft 4 in, 13.6 m 44 ft 7 in, to the inch
    ['to A1', '32 ft 10 in', '43 ft 4 in', 'SW corner'],
    ['', '', '43 ft 4 in', 'NW corner'],
    ['to A3', '32 ft 10 in', '44 ft 7 in', 'SE corner'],
    ['', '', '44 ft 7 in', 'NE corner'],
  ]);
});

test('a section without cut lines has no flags', () => {
  const context = contextOf(THREE_ZONES);
  const section = context.plan.ground.sections.find(({ id }) => id === 'C1');
  if (section === undefined) throw new Error('no C1');
  expect(flagsLedger(context, section, [])).toBeNull();
});
