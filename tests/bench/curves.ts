/**
 * Times how traced curves come to rings and how those follow the points placed: 1,000 arcs, 1,000 smooth edges, all
 * new and with one corner moved. Run: `node tests/bench/curves.ts`. Numbers inform, they do not gate.
 */
import { ringSensitivity, tracedRing } from '../../core/curves/index.ts';
import type { EdgeRun, Traced, TracedCorner } from '../../core/yard.ts';

const ROUNDS = process.argv.includes('--quick') ? 3 : 15;
const EDGES = 1_000;
type Edges = Extract<Traced, { kind: 'corners' }>;

/** A wavy ring some 120 m across. */
function wavy(kind: EdgeRun['kind']): Edges {
  const at = (i: number, outM: number) => {
    const rad = (2 * Math.PI * i) / EDGES;
    const radiusM = 60 + 3 * Math.sin(17 * rad) + outM;
    return { xM: radiusM * Math.cos(rad), yM: radiusM * Math.sin(rad) };
  };
  const run = (i: number): EdgeRun => (kind === 'arc' ? { kind, via: at(i + 0.5, 0.05) } : { kind });
  return {
    kind: 'corners',
    corners: Array.from({ length: EDGES }, (_, i): TracedCorner => ({ ...at(i, 0), run: run(i) })),
  };
}

function withOneMoved(traced: Edges): Edges {
  return {
    ...traced,
    corners: traced.corners.map((corner, i) => (i === 5 ? { ...corner, xM: corner.xM + 0.01 } : corner)),
  };
}

/** Least time of a few rounds, each on edges never seen before, made ready outside the clock. */
function leastMs(make: () => Traced, work: (traced: Traced) => unknown): string {
  let least = Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    const traced = make();
    const start = performance.now();
    work(traced);
    least = Math.min(least, performance.now() - start);
  }
  return least.toFixed(2);
}

console.log(
  '| 1,000 edges | ring corners | ring ms | one corner moved ms | sensitivity ms | one corner moved ms |',
);
console.log('| --- | --- | --- | --- | --- | --- |');
for (const kind of ['arc', 'smooth'] as const) {
  const moved = (work: (traced: Traced) => unknown) => () => {
    const traced = wavy(kind);
    work(traced);
    return withOneMoved(traced);
  };
  const drawn = () => {
    const traced = wavy(kind);
    tracedRing(traced);
    return traced;
  };
  const cells = [
    tracedRing(wavy(kind)).length,
    leastMs(() => wavy(kind), tracedRing),
    leastMs(moved(tracedRing), tracedRing),
    leastMs(drawn, ringSensitivity),
    leastMs(moved(ringSensitivity), ringSensitivity),
  ];
  console.log(`| ${kind} | ${cells.join(' | ')} |`);
}
