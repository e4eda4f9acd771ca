import { expect, test } from 'vitest';
import { checkTables } from '../../../core/sheet/checkTable.ts';
import { schedulePages } from '../../../core/sheet/schedulePages.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { SMALL_SQUARE } from '../../support/handMadeYards.ts';
import { contextOf } from '../../support/sheetContexts.ts';
import { textsOf } from '../../support/sheetPages.ts';

const lawn = outline('zone', 'Lawn', rect(0, 0, 30, 40));
const yard = yardOf({ outlines: [{ ...lawn, placing: { by: 'tape', pictureId: null, sigmaM: 0.1 } }] });
const diagonal = { id: 'd', name: 'Diagonal', from: { xM: 0, yM: 0 }, to: { xM: 30, yM: 40 }, tapedM: 50.4 };

test('taped distances stand with the map’s, the difference, its ± and how they stand', () => {
  const [table] = checkTables({ ...yard, checks: [diagonal] }, 'metric');
  expect(table?.kind === 'ledger' ? table.ledger.rows : null).toEqual([
    [
      'Diagonal',
      '50.00', // 30-40-50 triangle
      '50.40', // as taped
      { entry: '+0.40', soft: '± 0.14' }, // 50.4 − 50; √(0.1² + 0.1² + 0.01504²) = 0.1422
      'outside', // 0.40 is more than twice 0.14
    ],
  ]);
});

test('a tape that reads shorter than the map, or the same, has no plus before its difference', () => {
  const shorter = { ...diagonal, id: 's', tapedM: 49.6 };
  const same = { ...diagonal, id: 'e', tapedM: 50 };
  const [table] = checkTables({ ...yard, checks: [shorter, same] }, 'metric');
  const entries = table?.kind === 'ledger' ? table.ledger.rows.map((row) => row[3]) : [];
  expect(entries).toMatchObject([{ entry: '-0.40' }, { entry: '0.00' }]); // 49.6 − 50; 50 − 50
});

test('a yard nobody taped has no such table', () => {
  expect(checkTables(yard, 'us')).toEqual([]);
});

test('they are printed under the areas', () => {
  const context = contextOf(SMALL_SQUARE);
  const printed = (checks: readonly (typeof diagonal)[]) =>
    schedulePages({ ...context, yard: { ...context.yard, checks } }).flatMap(({ marks }) => textsOf(marks));
  expect(printed([diagonal])).toEqual(expect.arrayContaining(['Checked by tape', 'Diagonal']));
  expect(printed([])).not.toContain('Checked by tape');
});
