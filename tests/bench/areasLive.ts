/**
 * Times what a person waits for: a corner dragged, a large yard opened and measured, and how the time grows with the
 * corners. Areas, their sigma and the balance every time. Run: `node tests/bench/areasLive.ts`, or with `--quick`.
 * Numbers inform, they do not gate.
 */
import { ROW_TABLES, type RowTable, decodeRow, encodeRow, LOOSE_SRS_ID } from '../../core/yardFile/index.ts';
import type { Outline } from '../../core/yard.ts';
import { printedSum, printedZones, resolveZones } from '../../core/zones/index.ts';
import { groundOf, outline } from '../support/builders.ts';
import { type RandomYard, randomYard, seededRandom, yardOutlines } from '../support/randomYards.ts';
import { tidyYard } from '../support/tidyYard.ts';

const ROUNDS = process.argv.includes('--quick') ? 3 : 15;
let sink = 0;

/** Areas, sigma and balance as the page shows them. */
function measure(outlines: readonly Outline[]): void {
  const resolved = resolveZones(groundOf(outlines, 0.05));
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems[0]));
  const all = printedSum(printedZones(resolved.value, 'us'));
  sink += all.groundM2 + (all.sigmaM2 ?? Number.NaN);
}

function report(name: string, timesMs: readonly number[]): void {
  const sorted = [...timesMs].sort((a, b) => a - b);
  const share = (part: number) => (sorted[Math.floor(part * sorted.length)] ?? Number.NaN).toFixed(2);
  console.log(
    `  ${name.padEnd(44)} median ${share(0.5)} ms  least ${share(0)} ms  nine in ten below ${share(0.9)} ms`,
  );
}

function timed(runs: number, run: (round: number) => void): number[] {
  return Array.from({ length: runs }, (_, round) => {
    const before = performance.now();
    run(round);
    return performance.now() - before;
  });
}

/** One outline is new each time, the others are the ones known before. */
function drag(name: string, { zone, beds }: RandomYard, strip: number | null): void {
  const others = beds.map((bed, i) => outline('bed', `${i}`, bed));
  const lawn = { ...outline('zone', 'z', zone), keepOffM: strip };
  report(
    name,
    timed((strip === null ? 20 : 2) * ROUNDS, (step) => {
      const corners = zone.map((corner, i) =>
        i === 5 ? { ...corner, xM: corner.xM + step * 1e-3 } : corner,
      );
      measure([{ ...lawn, outer: { kind: 'corners', corners } }, ...others]);
    }),
  );
  const moved = others[7];
  if (moved === undefined) return;
  report(
    `${name}, a bed's corner`,
    timed((strip === null ? 20 : 2) * ROUNDS, (step) => {
      const ring = (beds[7] ?? []).map((corner, i) =>
        i === 1 ? { ...corner, xM: corner.xM + step * 1e-4 } : corner,
      );
      const bed = { ...moved, outer: { kind: 'corners', corners: ring } as const };
      measure([lawn, ...others.map((other) => (other === moved ? bed : other))]);
    }),
  );
}

console.log('\none corner dragged');
drag('2,000 corners, 200 beds clear', tidyYard(2000, 200), null);
const across = tidyYard(2000, 200);
const astray = across.beds.map((bed, i) =>
  i % 10 === 0 ? bed.map(({ xM, yM }) => ({ xM: xM + 3, yM })) : bed,
);
drag('2,000 corners, 200 beds, 40 of them touching', { ...across, beds: astray }, null);
drag('2,000 corners, 200 beds clear, 1 m kept off', tidyYard(2000, 200), 1);

/** Lots side by side, each a lawn with beds that touch and cross. */
function lots(count: number, bedsEach: number): Outline[] {
  const side = Math.ceil(Math.sqrt(count));
  return Array.from({ length: count }, (_, lot) => {
    const away = (ring: readonly { xM: number; yM: number }[]) =>
      ring.map(({ xM, yM }) => ({
        xM: xM + 140 * ((lot % side) - side / 2),
        yM: yM + 140 * (Math.floor(lot / side) - side / 2),
      }));
    const { zone, beds } = randomYard(seededRandom(lot + 1), 16, bedsEach);
    return yardOutlines({ zone: away(zone), beds: beds.map(away) }).map((row) => ({
      ...row,
      id: `${lot} ${row.id}`,
    }));
  }).flat();
}

const tableOf = (name: string) => ROW_TABLES.find((table) => table.name === name) as RowTable;

console.log('\n10,000 outlines out of their rows, decoded, checked and measured');
for (const [name, outlines] of [
  ['400 lawns with 24 cut-outs each, many crossing', lots(400, 24)],
  ['one lawn of 2,000 corners with 9,999 beds', yardOutlines(tidyYard(2000, 9999))],
] as const) {
  const rows = outlines.map((row) => encodeRow('outlines', row, LOOSE_SRS_ID));
  report(
    name,
    timed(ROUNDS, () => {
      const opened = rows.flatMap(({ table, columns }) => {
        const read = decodeRow<'outlines'>(tableOf(table), columns);
        return read.ok ? [read.value] : [];
      });
      if (opened.length !== 10_000) throw new Error(`${opened.length} rows were read`);
      measure(opened);
    }),
  );
}

console.log('\ngrowth with the corners, one lawn with a tenth of its corners in beds of 12');
const points = [100, 300, 1000, 3000, 10_000, 30_000, 100_000].map((corners) => {
  const beds = Math.max(1, Math.round(corners / 120));
  // As jagged beside its edges however many they are; else the lawn turns into needles and boxes of edges all meet.
  const { zone, beds: rings } = tidyYard(corners - 12 * beds, beds, 5 / corners);
  const times = timed(corners > 20_000 ? 3 : ROUNDS, () => {
    measure([outline('zone', 'z', [...zone]), ...rings.map((ring, i) => outline('bed', `${i}`, [...ring]))]);
  });
  const least = Math.min(...times);
  console.log(`  ${String(corners).padStart(7)} corners  least ${least.toFixed(2).padStart(8)} ms`);
  return [Math.log(corners), Math.log(least)] as const;
});
/** Slope of the least-squares line through the logarithms. */
function exponent(of: readonly (readonly [number, number])[]): number {
  const [meanX, meanY] = [0, 1].map(
    (k) => of.reduce((sum, point) => sum + (point[k] ?? 0), 0) / of.length,
  ) as [number, number];
  const over = of.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  return over / of.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
}
console.log(
  `  time grows as corners^${exponent(points).toFixed(2)}; from 1,000 on ^${exponent(points.slice(2)).toFixed(2)}`,
);
console.log(`\n${ROUNDS} rounds each; sum ${sink.toExponential(3)}`);
