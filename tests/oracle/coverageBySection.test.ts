import { expect, test } from 'vitest';
import { lineLengthM, regionAreaM2, regionsAreaM2, subtractRegions } from '../../core/kernel/index.ts';
import { type CoverageRequest, measureCoverage } from '../../core/passes/index.ts';
import { planGround } from '../../core/plan/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import { region } from '../support/builders.ts';
import { windsRound } from '../support/geosFaces.ts';
import { planRequest } from '../support/planRequest.ts';
import { resolvedOf } from '../support/randomGround.ts';
import { between, type Random, randomYard, seededRandom } from '../support/randomYards.ts';

interface Piece {
  /** It is the ground in any of them. */
  readonly rings: readonly Ring[];
  readonly round: number;
}

const radOf = (a: YardPoint, b: YardPoint): number => Math.atan2(b.yM - a.yM, b.xM - a.xM);

/** In (-pi, pi], to the left. */
function turnOf(a: YardPoint, b: YardPoint, c: YardPoint): number {
  const turn = radOf(b, c) - radOf(a, b);
  return turn - 2 * Math.PI * Math.ceil((turn - Math.PI) / (2 * Math.PI));
}

/** What half the swath sweeps to each side of one straight step. */
function boxAlong(a: YardPoint, b: YardPoint, halfM: number): Ring {
  const [rad, sides] = [radOf(a, b), [-1, 1] as const];
  const beside = ({ xM, yM }: YardPoint, side: number): YardPoint => {
    return { xM: xM - side * halfM * Math.sin(rad), yM: yM + side * halfM * Math.cos(rad) };
  };
  return [...sides.map((side) => beside(a, side)), ...sides.map((side) => beside(b, -side))];
}

/** What it sweeps on the outside of a turn, in 64 chords a quarter; nothing straight on or straight back. */
function sectorAt(a: YardPoint, b: YardPoint, turn: number, halfM: number): Ring[] {
  if (Math.abs(turn) > Math.PI - 1e-3 || Math.abs(turn) < 1e-6) return [];
  const from = radOf(a, b) - (Math.sign(turn) * Math.PI) / 2;
  const steps = Math.ceil((Math.abs(turn) * 128) / Math.PI);
  const arc = Array.from({ length: steps + 1 }, (_, i) => {
    const rad = from + (turn * i) / steps;
    return { xM: b.xM + halfM * Math.cos(rad), yM: b.yM + halfM * Math.sin(rad) };
  });
  return [[b, ...arc]];
}

/**
 * The pieces of a walk by what a pass is said to treat: what a bar as wide as the swath sweeps, begun anew at turns of
 * more than 30°, or 150° in all, where the outside of the turn is a piece of its own.
 */
function piecesOf(line: readonly YardPoint[], halfM: number): Ring[][] {
  const pieces: Ring[][] = [];
  const put = (rings: Ring[]): void => {
    if (rings.length > 0) pieces.push(rings);
  };
  const last = line.length - 1;
  let [strip, curled]: [Ring[], number] = [[], 0];
  for (let i = 1; i <= last; i++) {
    const [before, here, next] = [line[i - 1] as YardPoint, line[i] as YardPoint, line[i + 1]];
    strip.push(boxAlong(before, here, halfM));
    if (next === undefined) break;
    const turn = turnOf(before, here, next);
    const sector = sectorAt(before, here, turn, halfM);
    curled += Math.abs(turn);
    if (Math.abs(turn) <= Math.PI / 6 && curled <= (5 * Math.PI) / 6) {
      strip.push(...sector);
      continue;
    }
    put(strip);
    put(sector);
    [strip, curled] = [[], 0];
  }
  put(strip);
  const [first, before, second] = [line[0], line[last - 1], line[1]] as [YardPoint, YardPoint, YardPoint];
  const isClosed = line.length > 3 && first.xM === line[last]?.xM && first.yM === line[last]?.yM;
  if (isClosed) put(sectorAt(before, first, turnOf(before, first, second), halfM));
  return pieces;
}

type Box = readonly [west: number, east: number, south: number, north: number];

function boxOf(points: readonly YardPoint[], byM: number): Box {
  const [xs, ys] = [points.map(({ xM }) => xM), points.map(({ yM }) => yM)];
  return [Math.min(...xs) - byM, Math.max(...xs) + byM, Math.min(...ys) - byM, Math.max(...ys) + byM];
}

function isInBox([west, east, south, north]: Box, { xM, yM }: YardPoint): boolean {
  return xM > west && xM < east && yM > south && yM < north;
}

/** A planned yard; in two of three the passes are walked beside where they should be, each a little differently. */
function walkedYard(seed: number, random: Random): CoverageRequest {
  const yard = randomYard(random, 5 + (seed % 8), 3);
  const beds = yard.beds.map((bed) => region(bed));
  const ground = subtractRegions([region(yard.zone)], beds);
  const areaM2 = regionsAreaM2(ground);
  const swathM = Math.sqrt(areaM2) / between(random, 6, 9);
  const rounds = seed % 2 === 0 ? 1 : 2;
  const plan = planGround(
    resolvedOf({ Yard: ground }),
    planRequest({ loadAreaM2: areaM2 / 2.5, swathM, rounds }),
  );
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  const offM = seed % 3 === 0 ? 0 : 0.3 * swathM;
  const passes = plan.value.passes.map((pass) => {
    const [x, y] = [between(random, -offM, offM), between(random, -offM, offM)];
    const line = pass.line.map(({ xM, yM }) => ({ xM: xM + x, yM: yM + y }));
    return { line, sectionId: pass.sectionId, round: pass.round, lengthM: lineLengthM(line) };
  });
  return {
    sections: plan.value.sections.map(({ id, region: own }) => ({ id, region: own })),
    untreated: [],
    passes,
    swathM,
    rounds,
  };
}

/** Areas of a section under 0, 1, 2, 3 and more pieces, by counting the middles of a grid of cells. */
function countedDepths(rings: readonly Ring[], pieces: readonly Piece[]): number[] {
  const [west, east, south, north] = boxOf(rings.flat(), 0);
  const [dx, dy] = [(east - west) / CELLS, (north - south) / CELLS];
  const boxes = pieces.map((piece) => boxOf(piece.rings.flat(), 1e-3));
  const depthsM2 = [0, 0, 0, 0, 0];
  for (let cell = 0; cell < CELLS * CELLS; cell++) {
    const at = {
      xM: west + ((cell % CELLS) + 0.5) * dx,
      yM: south + (Math.floor(cell / CELLS) + 0.5) * dy,
    };
    if (!windsRound(rings, at)) continue;
    const on = pieces.filter(
      (piece, i) => isInBox(boxes[i] as Box, at) && piece.rings.some((ring) => windsRound([ring], at)),
    );
    const depth = Math.min(4, on.length);
    depthsM2[depth] = (depthsM2[depth] as number) + dx * dy;
  }
  return depthsM2;
}

const CELLS = 400;
/** What counting errs by: the cells an edge meets, their errors cancelling as random ones do; worst seen 2e-4. */
const COUNT_PART = 6e-4;

test.each([3, 5, 14, 21, 27, 40])(
  'every section of random yard %i is covered as often as counted point by point',
  (seed) => {
    const request = walkedYard(seed, seededRandom(seed));
    const pieces = request.passes.flatMap(({ line, round }) =>
      piecesOf(line, request.swathM / 2).map((rings): Piece => ({ rings, round })),
    );
    const coverage = measureCoverage(request);
    expect(request.sections.length).toBeGreaterThan(1); // several sections a yard
    request.sections.forEach((section, i) => {
      const groundM2 = regionAreaM2(section.region);
      const counted = countedDepths([section.region.outer, ...section.region.holes], pieces);
      const ours = coverage.sections[i]?.depthsM2 ?? [];
      counted.forEach((areaM2, depth) => {
        const off = Math.abs((ours[depth] ?? Number.NaN) - areaM2);
        expect(off, `section ${i + 1}, ${depth} deep`).toBeLessThanOrEqual(COUNT_PART * groundM2);
      });
    });
  },
  60_000,
);
