import { describe, expect, test } from 'vitest';
import { sheetFigures } from '../../../core/sheet/sheetFigures.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { HAND_MADE_YARDS } from '../../support/handMadeYards.ts';
import { sheetOf } from '../../support/sheetPages.ts';
import { tablesOn } from '../../support/sheetTables.ts';

/** Printed figures in hundredths, so that sums are of whole numbers. */
function hundredths(printed: string): number {
  return Math.round(Number(printed.replace(/ .*/, '').replaceAll(',', '')) * 100);
}

describe('printed columns add up to their printed sum', () => {
  for (const [name, ground] of Object.entries(HAND_MADE_YARDS)) {
    test(name, () => {
      let columns = 0;
      for (const table of sheetOf(ground).flatMap((page) => tablesOn(page))) {
        if (table.sum === null) continue;
        table.heads.forEach((head, i) => {
          if (
            !/^(gross|cut-outs|turf|left out|treated|treats|product|water|carrier|spraying|over treated)\b.*,/.test(
              head,
            )
          )
            return;
          const total = table.rows.reduce((sum, row) => sum + hundredths(row[i] ?? ''), 0);
          expect(total, `${name}: ${head}`).toBe(hundredths(table.sum?.[i] ?? ''));
          columns++;
        });
      }
      // Overview, zones, sections and loads have at least ten such columns between them.
      expect(columns).toBeGreaterThanOrEqual(10);
    });
  }
});

test('each zone balances: gross = turf + cut-outs and turf = treated + left out, as printed', () => {
  let rows = 0;
  for (const ground of Object.values(HAND_MADE_YARDS)) {
    for (const table of sheetOf(ground).flatMap((page) => tablesOn(page))) {
      if (!table.heads[1]?.startsWith('gross')) continue;
      for (const row of [...table.rows, table.sum ?? []]) {
        const [gross, cutOuts, turf, leftOut, treated] = row.slice(1, 6).map(hundredths) as [
          number,
          number,
          number,
          number,
          number,
        ];
        expect(turf + cutOuts, row[0]).toBe(gross);
        expect(treated + leftOut, row[0]).toBe(turf);
        rows++;
      }
    }
  }
  expect(rows).toBeGreaterThan(10); // nine zones and their sums in the fixtures
});

test('sections add up to the zone they are cut from, in both units', () => {
  for (const ground of Object.values(HAND_MADE_YARDS)) {
    for (const units of ['us', 'metric'] as const) {
      const figures = sheetFigures(handMadePlan(ground).plan, units);
      for (const zone of figures.zones) {
        const own = figures.loads.filter((load) => load.section.zoneId === zone.zoneId);
        const step = units === 'us' ? 0.09290304 : 0.1; // 1 ft² in m² by definition; a tenth of a square metre
        const other = units === 'us' ? 0.1 : 0.09290304; // as above, the other way round
        const steps = (areasM2: readonly number[], of: number) =>
          areasM2.reduce((sum, areaM2) => sum + Math.round(areaM2 / of), 0);
        expect(
          steps(
            own.map((load) => load.areaM2),
            step,
          ),
        ).toBe(Math.round(zone.treatedM2 / step));
        expect(
          steps(
            own.map((load) => load.otherAreaM2),
            other,
          ),
        ).toBe(Math.round(zone.otherTreatedM2 / other));
      }
    }
  }
});

test('no printed area or amount is a whole step from the true one', () => {
  const { plan } = handMadePlan(HAND_MADE_YARDS.NINE_SECTIONS);
  const figures = sheetFigures(plan, 'us');
  figures.loads.forEach((load, i) => {
    expect(Math.abs(load.areaM2 - (plan.mixes[i]?.areaM2 ?? 0))).toBeLessThan(2 * 0.09290304); // zone and section each under 1 ft²
    expect(Math.abs(load.productL - (plan.mixes[i]?.productL ?? 0))).toBeLessThan(0.1 * 0.0295735295625); // a tenth of a US fl oz
  });
});
