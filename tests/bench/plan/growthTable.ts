import { planQuality } from './planQuality.ts';
import { bedded } from './shapeTable.ts';
import { printTable } from './table.ts';

const HOLES = [5, 10, 20, 40, 80];
const GROUND_A_HOLE_M2 = 333;
const SEED = 11;

/** How the time grows with the beds, on a square that grows with them: as many sections and passes to a bed. */
export function printGrowth(rounds: number): void {
  console.log(
    `Growth: a square with ${GROUND_A_HOLE_M2} m² to a round bed, loads of 1,500 m², swath 3 m, seed ${SEED}; ` +
      `least of ${rounds} rounds.\n`,
  );
  const logs: (readonly [number, number])[] = [];
  const rows = HOLES.map((holes) => {
    const sideM = Math.sqrt(GROUND_A_HOLE_M2 * holes);
    const ground = bedded(SEED, holes, sideM, sideM, 2.5, 4);
    const plans = Array.from({ length: rounds + 1 }, () =>
      planQuality(ground, { loadAreaM2: 1500, swathM: 3 }),
    )
      .slice(1)
      .filter((plan) => typeof plan !== 'string');
    const [first] = plans;
    if (first === undefined) return [`${holes}`, 'no plan'];
    const leastMs = Math.min(...plans.map(({ cpuMs }) => cpuMs));
    logs.push([Math.log(holes), Math.log(leastMs)]);
    return [`${holes}`, `${first.sections}`, `${first.passes}`, leastMs.toFixed(0)];
  });
  printTable(['beds', 'sections', 'passes', 'CPU ms'], rows);
  console.log(`CPU time grows as beds^${slope(logs).toFixed(2)} (least squares on logarithms).\n`);
}

/** Of the line of least squares. */
function slope(of: readonly (readonly [number, number])[]): number {
  const meanX = of.reduce((sum, [x]) => sum + x, 0) / of.length;
  const meanY = of.reduce((sum, [, y]) => sum + y, 0) / of.length;
  const over = of.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0);
  return over / of.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
}
