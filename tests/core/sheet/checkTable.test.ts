import { expect, test } from 'vitest';
import { checkTables } from '../../../core/sheet/checkTable.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';

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
      { entry: '0.40', soft: '± 0.14' }, // 50.4 − 50; √(0.1² + 0.1² + 0.01504²) = 0.1422
      'outside', // 0.40 is more than twice 0.14
    ],
  ]);
});

test('a yard nobody taped has no such table', () => {
  expect(checkTables(yard, 'us')).toEqual([]);
});
