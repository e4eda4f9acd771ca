/**
 * How long the surface of a zone over an elevation grid takes: the first time, when the grid is laid out, and again
 * with a corner moved, as while it is dragged. Run: `node tests/bench/slope.ts`
 */
import { surfaceByFacets } from '../../core/slope/index.ts';
import { regularPolygon } from '../support/builders.ts';
import { elevationOf } from '../support/elevations.ts';

const ROUNDS = 25;
const CASES: readonly (readonly [nodes: number, spacingM: number, corners: number, radiusM: number])[] = [
  [61, 2, 40, 50],
  [141, 1, 200, 60],
  [141, 1, 2000, 60],
  [500, 1, 2000, 240],
  [500, 0.5, 2000, 120],
];

let sink = 0;
for (const [nodes, spacingM, corners, radiusM] of CASES) {
  const start = (-(nodes - 1) * spacingM) / 2;
  const hills = (xM: number, yM: number): number => 3 * Math.sin(xM / 7) + 2 * Math.cos(yM / 5);
  const elevation = elevationOf(start, start, nodes, nodes, spacingM, hills);
  const timesMs = Array.from({ length: ROUNDS + 1 }, (_, round) => {
    const ring = regularPolygon({ xM: 0, yM: 0 }, radiusM, corners);
    const dragged = [{ xM: radiusM - round / 50, yM: 0 }, ...ring.slice(1)];
    const before = performance.now();
    sink += surfaceByFacets([{ outer: dragged, holes: [] }], elevation).surfaceM2;
    return performance.now() - before;
  });
  const [first = 0, ...again] = timesMs;
  again.sort((a, b) => a - b);
  console.log(
    `${nodes} × ${nodes} heights ${spacingM} m apart, ${corners} corners: first ${first.toFixed(1)} ms, ` +
      `then least ${again[0]?.toFixed(2)} ms, middle ${again[ROUNDS >> 1]?.toFixed(2)} ms`,
  );
}
console.log(`${ROUNDS} rounds each; sum ${sink.toExponential(3)}`);
