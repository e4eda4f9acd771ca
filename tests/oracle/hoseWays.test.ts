import { expect, test } from 'vitest';
import { clearGround } from '../../core/hose/clearGround.ts';
import { hoseGround } from '../../core/hose/index.ts';
import { hoseWays } from '../../core/hose/hoseWays.ts';
import { offsetRegions } from '../../core/kernel/index.ts';
import type { Region, Ring, YardPoint } from '../../core/spaces.ts';
import { outline, rect } from '../support/builders.ts';
import { yardOf } from '../support/drawing.ts';
import { between, pick, type Random, randomStar, seededRandom } from '../support/randomYards.ts';

/** The number the project holds itself to. */
const MOST_OFF_M = 1e-6;
const YARDS = 240;

/**
 * By another method: every corner and every place sees every other or not, found by cutting the line at all edges and
 * counting edges round the middle of each stretch (even-odd, plain floating point); then the shortest way is relaxed
 * over all pairs until nothing gets shorter (Bellman 1958, Ford 1956). No corner is left out, no direction ruled out.
 */
function lengthsByAllPairs(
  barriers: readonly Region[],
  start: YardPoint,
  ends: readonly YardPoint[],
): number[] {
  const rings = barriers.flatMap((region) => [region.outer, ...region.holes]);
  const places = [start, ...ends, ...rings.flat()];
  const apart = places.map((a, i) =>
    places.map((b, j) => (i < j && sees(rings, a, b) ? straightM(a, b) : Infinity)),
  );
  const so = places.map((_, i) => (i === 0 ? 0 : Infinity));
  for (let isSettled = false; !isSettled; ) {
    isSettled = true;
    for (let i = 0; i < places.length; i++) {
      for (let j = 0; j < places.length; j++) {
        const m = (so[i] as number) + ((apart[Math.min(i, j)] as number[])[Math.max(i, j)] as number);
        if (m < (so[j] as number) - 1e-12) [so[j], isSettled] = [m, false];
      }
    }
  }
  return so.slice(1, 1 + ends.length);
}

const straightM = (a: YardPoint, b: YardPoint): number => Math.hypot(b.xM - a.xM, b.yM - a.yM);

function sees(rings: readonly Ring[], a: YardPoint, b: YardPoint): boolean {
  const [dx, dy] = [b.xM - a.xM, b.yM - a.yM];
  const stops = [0, 1];
  for (const ring of rings) {
    ring.forEach((c, i) => {
      const d = ring[(i + 1) % ring.length] as YardPoint;
      const [ex, ey] = [d.xM - c.xM, d.yM - c.yM];
      const det = dx * ey - dy * ex;
      if (Math.abs(det) < 1e-14) return;
      const t = ((c.xM - a.xM) * ey - (c.yM - a.yM) * ex) / det;
      const u = ((c.xM - a.xM) * dy - (c.yM - a.yM) * dx) / det;
      if (t > 0 && t < 1 && u > -1e-9 && u < 1 + 1e-9) stops.push(t);
    });
  }
  stops.sort((p, q) => p - q);
  return stops.every((to, i) => {
    const from = i === 0 ? 0 : (stops[i - 1] as number);
    // A stretch this short may be where two edges meet the line at one corner.
    if ((to - from) * Math.hypot(dx, dy) < 1e-7) return true;
    const t = (from + to) / 2;
    return depthM(rings, { xM: a.xM + t * dx, yM: a.yM + t * dy }) < 1e-8;
  });
}

/** Distance to the nearest edge inside a barrier; 0 outside. */
function depthM(rings: readonly Ring[], { xM: x, yM: y }: YardPoint): number {
  let isInside = false;
  let leastM = Infinity;
  for (const ring of rings) {
    ring.forEach((c, i) => {
      const d = ring[(i + 1) % ring.length] as YardPoint;
      if (c.yM > y !== d.yM > y && x < c.xM + ((y - c.yM) / (d.yM - c.yM)) * (d.xM - c.xM))
        isInside = !isInside;
      const [ex, ey] = [d.xM - c.xM, d.yM - c.yM];
      const t = Math.min(1, Math.max(0, ((x - c.xM) * ex + (y - c.yM) * ey) / (ex * ex + ey * ey)));
      leastM = Math.min(leastM, Math.hypot(x - c.xM - t * ex, y - c.yM - t * ey));
    });
  }
  return isInside ? leastM : 0;
}

/** Houses, ponds and sheds: boxes and stars, some of them overlapping or wall to wall. */
function randomBarriers(random: Random): Region[] {
  const count = 2 + Math.floor(random() * 5);
  const outlines = Array.from({ length: count }, (_, i) => {
    const [xM, yM] = [Math.round(between(random, 0, 30)), Math.round(between(random, 0, 30))];
    const ring =
      random() < 0.5
        ? rect(xM, yM, 1 + Math.floor(random() * 10), 1 + Math.floor(random() * 10))
        : randomStar(random, 3 + Math.floor(random() * 6), { xM, yM }, between(random, 1, 7), random() * 0.8);
    return outline(pick(random, ['building', 'water'] as const), `b${i}`, ring);
  });
  // Now and then a house with a court in it, which no hose gets into or out of.
  if (random() < 0.2) outlines.push(outline('building', 'court', rect(4, 4, 16, 12), rect(7, 7, 10, 6)));
  return [...hoseGround(yardOf({ outlines }), { lengthM: 50, spigotIds: null, clearanceM: 0 }).barriers];
}

test(`on ${YARDS} random yards every way is as long as the shortest over all pairs of corners`, () => {
  let [compared, bent, shut, worstM] = [0, 0, 0, 0];
  for (let seed = 1; seed <= YARDS; seed++) {
    const random = seededRandom(seed);
    const barriers = randomBarriers(random);
    const clearanceM = seed % 6 === 0 ? pick(random, [0.05, 0.3, 0.8]) : 0;
    const grown = clearanceM > 0 ? offsetRegions(barriers, clearanceM) : barriers;
    const rings = grown.flatMap((region) => [region.outer, ...region.holes]);
    const corners = rings.flat();
    const somewhere = (): YardPoint => {
      // In a third of the cases on a wall: at a corner, or on a whole metre of an edge.
      if (random() < 0.3) return pick(random, corners);
      for (;;) {
        const place = { xM: between(random, -6, 42), yM: between(random, -6, 42) };
        if (depthM(rings, place) === 0) return place;
      }
    };
    const at = somewhere();
    const ends = Array.from({ length: 6 }, somewhere);
    const ways = hoseWays(clearGround({ barriers, clearanceM }), { id: 's', name: 's', at });
    const expected = lengthsByAllPairs(grown, at, ends);
    ends.forEach((end, i) => {
      const lengthM = ways.lengthM(end);
      const way = ways.wayTo(end);
      compared += 1;
      if (expected[i] === Infinity) {
        shut += 1;
        expect(lengthM, `yard ${seed}`).toBe(Infinity);
        return;
      }
      if ((way?.bends.length ?? 0) > 0) bent += 1;
      const offM = Math.abs(lengthM - (expected[i] as number));
      worstM = Math.max(worstM, offM);
      expect(offM, `yard ${seed}, to ${end.xM} ${end.yM}`).toBeLessThanOrEqual(MOST_OFF_M);
      // The line that is drawn is as long as it says, and enters nothing.
      const line = way?.line ?? [];
      const drawnM = line.slice(1).reduce((sum, b, k) => sum + straightM(line[k] as YardPoint, b), 0);
      expect(Math.abs(drawnM - lengthM)).toBeLessThanOrEqual(MOST_OFF_M);
      line.slice(1).forEach((b, k) => {
        expect(sees(rings, line[k] as YardPoint, b), `yard ${seed}`).toBe(true);
      });
    });
  }
  console.info(
    `hose ways: ${compared} compared, ${bent} bent, ${shut} shut off, worst ${worstM.toExponential(1)} m`,
  );
  expect(compared).toBe(YARDS * 6);
  expect(shut).toBeGreaterThan(0);
  expect(bent).toBeGreaterThan(YARDS); // of six places in each yard at least one lies round a corner
}, 120_000);
