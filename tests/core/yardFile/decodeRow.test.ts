import { expect, test } from 'vitest';
import { rowsOf, YARD_PARTS } from '../../../core/edits/index.ts';
import { decodeRow, encodeRow, fromJson, type RowTable, ROW_TABLES } from '../../../core/yardFile/index.ts';
import { fullYard } from '../../support/storedYards.ts';

const YARD = fullYard();

function tableNamed(name: string): RowTable {
  const table = ROW_TABLES.find((known) => known.name === name);
  if (table === undefined) throw new Error(`no table ${name}`);
  return table;
}

test('every row comes back from its columns exactly', () => {
  for (const part of YARD_PARTS) {
    for (const row of rowsOf(YARD, part)) {
      const { table, columns } = encodeRow(part, row, -1);
      expect(decodeRow(tableNamed(table), columns)).toStrictEqual({ ok: true, value: row });
    }
  }
});

test('a column that is missing, or of any wrong kind, is told and never passed on', () => {
  for (const part of YARD_PARTS) {
    for (const row of rowsOf(YARD, part)) {
      const { table, columns } = encodeRow(part, row, -1);
      for (const name of Object.keys(columns)) {
        for (const wrong of [undefined, Uint8Array.of(1), Number.NaN, 10n]) {
          const read = decodeRow(tableNamed(table), { ...columns, [name]: wrong });
          expect(read.ok, `${table}.${name} = ${wrong}`).toBe(false);
          if (!read.ok) expect(read.detail).toContain(`${table} `);
        }
      }
    }
  }
});

test('text that is not JSON is told', () => {
  expect(fromJson('{')).toMatchObject({ ok: false });
  expect(fromJson(7)).toMatchObject({ ok: false });
  expect(fromJson('[1]')).toStrictEqual({ ok: true, value: [1] });
});

test('a member called __proto__ in a file’s JSON reaches nothing', () => {
  const { columns } = encodeRow('pictures', YARD.pictures[0] as never, -1);
  const placement = '{"__proto__":{"kind":"unscaled"}}';
  expect(decodeRow(tableNamed('pictures'), { ...columns, placement }).ok).toBe(false);
});
