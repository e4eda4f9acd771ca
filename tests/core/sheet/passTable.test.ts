import { expect, test } from 'vitest';
import { passTables } from '../../../core/sheet/passTable.ts';
import { type LoadFigures, sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { expectNear } from '../../support/expectNear.ts';
import { NINE_SECTIONS, LONG_STRIP, THREE_ZONES } from '../../support/handMadeYards.ts';
import { contextOf, inOneLoad } from '../../support/sheetContexts.ts';

function rowsOf(ground: typeof NINE_SECTIONS, rowsEach: number, groups: number) {
  const context = contextOf(ground);
  const load = context.figures.loads[0];
  if (load === undefined) throw new Error('no load');
  const passes = context.plan.ground.passes.filter((pass) => pass.sectionId === load.section.id);
  const tables = passTables(context, load, rowsEach, groups, 60);
  return { context, load, passes, tables, rows: tables.flatMap((table) => table.rows) };
}

function entry(cell: unknown): string {
  return typeof cell === 'string' ? cell : (cell as { entry: string }).entry;
}

test('every pass is listed once in walking order', () => {
  const { passes, rows } = rowsOf(NINE_SECTIONS, 20, 3);
  expect(rows.map((row) => entry(row[0]))).toEqual(passes.map((pass) => String(pass.order)));
});

test('the bottle is empty after the last pass, and falls with the way walked', () => {
  const { rows, load, passes } = rowsOf(NINE_SECTIONS, 20, 3);
  const levels = rows.map((row) => Number(entry(row.at(-1))));
  expect(levels.at(-1)).toBe(0);
  for (let i = 1; i < levels.length; i++) expect(levels[i]).toBeLessThan(levels[i - 1] ?? 0);
  const total = passes.reduce((sum, pass) => sum + pass.lengthM, 0);
  const walked = passes[0]?.lengthM ?? 0;
  // proportion by hand: what is left is the part of the way left; printed to a tenth of a US fl oz of 29.57 mL
  expectNear(levels[0] ?? 0, ((load.productL / 0.0295735295625) * (total - walked)) / total, 0.05, 'fl oz');
});

test('where two sections share a load, what the second one takes is left after the first', () => {
  const made = contextOf(THREE_ZONES);
  const plan = inOneLoad(made.plan, 'B1', 'C1');
  const context = { ...made, plan, figures: sheetFigures(plan, made.units) };
  const [first, second] = context.figures.loads.slice(-2) as [LoadFigures, LoadFigures];
  const lastLevelOf = (load: LoadFigures): number => {
    return Number(entry(passTables(context, load, 40, 1, 60)[0]?.rows.at(-1)?.at(-1)));
  };
  expectNear(lastLevelOf(first), second.productL / 0.0295735295625, 0.05, 'fl oz'); // 29.57 mL; to a tenth
  expect(lastLevelOf(second)).toBe(0);
});

test('a tank is read by its whole mix, in litres', () => {
  const { tables, rows, load } = rowsOf(LONG_STRIP, 20, 1);
  expect(tables[0]?.columns.at(-1)?.title).toBe('left, L');
  // two equal lanes: half of product and carrier is left after the first
  expectNear(Number(entry(rows[0]?.at(-1))), (load.productL + load.carrierL) / 2, 0.005, 'L');
});

test('more passes than rows are thinned out evenly and the last is always there', () => {
  const { rows, passes } = rowsOf(NINE_SECTIONS, 3, 2);
  expect(rows.length).toBeLessThanOrEqual(6); // three rows in two tables
  expect(entry(rows.at(-1)?.[0])).toBe(String(passes.at(-1)?.order));
});

test('steps are listed where the table is wide enough', () => {
  const context = contextOf(NINE_SECTIONS);
  const load = context.figures.loads[0];
  if (load === undefined) throw new Error('no load');
  const [wide] = passTables(context, load, 20, 1, 60);
  const [narrow] = passTables(context, load, 20, 1, 45);
  expect(wide?.columns.map(({ title }) => title)).toContain('steps'); // 60 mm
  expect(narrow?.columns.map(({ title }) => title)).not.toContain('steps'); // 45 mm
  expect(narrow?.rows[0]?.length).toBe(narrow?.columns.length); // rows as wide as their head
});
