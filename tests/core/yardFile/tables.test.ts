import { expect, test } from 'vitest';
import { YARD_PARTS } from '../../../core/edits/index.ts';
import { OUTLINE_KINDS } from '../../../core/yard.ts';
import { FEATURE_TABLES, outlineTable, ROW_TABLES, tablesOf } from '../../../core/yardFile/index.ts';
import { kindOfTable } from '../../../core/yardFile/tables.ts';

test('every part of a yard has a table, and every table a part', () => {
  for (const part of YARD_PARTS) expect(tablesOf(part).length).toBeGreaterThan(0);
  expect(YARD_PARTS.flatMap((part) => tablesOf(part)).length).toBe(ROW_TABLES.length);
});

test('every kind of outline has a table among those of outlines that can say its kind', () => {
  const names = tablesOf('outlines').map((table) => table.name);
  for (const kind of OUTLINE_KINDS) {
    const table = tablesOf('outlines').find(({ name }) => name === outlineTable(kind));
    expect(names).toContain(table?.name);
    const saysKind = kindOfTable(table?.name ?? '') === kind || table?.columns.includes('kind');
    expect(saysKind).toBe(true);
  }
});

test('what a GIS draws has geometry, and nothing else has', () => {
  for (const table of ROW_TABLES) {
    const drawn = FEATURE_TABLES.some(({ name }) => name === table.name);
    expect((table.columns as readonly string[]).includes('geom')).toBe(drawn);
  }
});
