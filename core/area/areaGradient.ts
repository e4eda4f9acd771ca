import { reversedRing } from '../kernel/index.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import { EdgeFinder } from './EdgeFinder.ts';
import type { Mover, SourceRing } from './edgeSource.ts';
import type { PlacedPoint } from './placedPoints.ts';

/** What an area gains for each metre a placed point goes east, and north: m² per metre. */
export interface GradientTerm {
  readonly point: PlacedPoint;
  readonly east: number;
  readonly north: number;
}

/** How an area follows the points a person placed; a point on two outlines may have two terms. */
export interface AreaGradient {
  readonly terms: readonly GradientTerm[];
}

/**
 * The gradient of the area of regions to the placed points.
 *
 * Each edge a→b of a region lies on an edge P→Q of a source; t runs from 0 at P to 1 at Q. Moving P by d moves the
 * place t by (1 - t) d, and with it the ground's border by n · d (1 - t), n the outward normal. Over the piece
 *   dA/dP = n ∫ (1 - t) ds = (b_y - a_y, a_x - b_x) (1 - t_m),   dA/dQ = (b_y - a_y, a_x - b_x) t_m,
 * t_m its middle, for n |ab| = (b_y - a_y, a_x - b_x) on a ring that keeps its ground on the left. A corner where two
 * outlines cross slides along both: to first order its own motion adds nothing. The far edge of a strip is parallel
 * to what it is kept off and goes with it; its round corners go with the corner they are about. (Worked out here;
 * a whole ring gives the coordinate formula's (y_{i+1} - y_{i-1})/2, (x_{i-1} - x_{i+1})/2.)
 *
 * @param regions that do not overlap, outer rings counter-clockwise, holes clockwise
 * @param sources all that their edges lie on, the outline they are of first
 * Accuracy: first order; where outlines only touch, to one side. Held against differences of `resolveZones`
 * Cost: a ring that is a source's own costs its corners, and nothing the second time; others log n an edge
 */
export function areaGradient(regions: readonly Region[], sources: readonly SourceRing[]): AreaGradient {
  const own = new Map<Ring, SourceRing>(sources.map((source) => [source.ring, source]));
  const whole: WholeRing[] = [];
  const sums = new Map<SourceRing, Float64Array>();
  let finder: EdgeFinder | undefined;
  for (const ring of regions.flatMap(({ outer, holes }) => [outer, ...holes])) {
    const [forward, backward] = [own.get(ring), own.get(reversedRing(ring))];
    if (forward !== undefined) whole.push({ source: forward, sign: 1 });
    else if (backward !== undefined) whole.push({ source: backward, sign: -1 });
    else {
      finder ??= new EdgeFinder(sources);
      addEdges(ring, finder, sums);
    }
  }
  const terms = whole.flatMap((ring) => {
    const sum = sums.get(ring.source);
    if (sum === undefined) return wholeTerms(ring);
    addWhole(ring, sum);
    return [];
  });
  return { terms: terms.concat(...[...sums].map(([source, sum]) => termsOf(source, sum))) };
}

interface WholeRing {
  readonly source: SourceRing;
  /** -1 = it runs the other way about. */
  readonly sign: 1 | -1;
}

/** The two ways about of each source. */
const known = new WeakMap<SourceRing, Map<1 | -1, readonly GradientTerm[]>>();

function wholeTerms(ring: WholeRing): readonly GradientTerm[] {
  const made = known.get(ring.source)?.get(ring.sign);
  if (made !== undefined) return made;
  const sum = new Float64Array(2 * ring.source.ring.length);
  addWhole(ring, sum);
  const terms = termsOf(ring.source, sum);
  const both = known.get(ring.source) ?? new Map<1 | -1, readonly GradientTerm[]>();
  known.set(ring.source, both.set(ring.sign, terms));
  return terms;
}

function addWhole({ source: { ring }, sign }: WholeRing, sum: Float64Array): void {
  for (let i = 0; i < ring.length; i++) {
    const before = ring[(i + ring.length - 1) % ring.length] as YardPoint;
    const after = ring[(i + 1) % ring.length] as YardPoint;
    sum[2 * i] = (sum[2 * i] ?? 0) + (sign * (after.yM - before.yM)) / 2;
    sum[2 * i + 1] = (sum[2 * i + 1] ?? 0) + (sign * (before.xM - after.xM)) / 2;
  }
}

function addEdges(ring: Ring, finder: EdgeFinder, sums: Map<SourceRing, Float64Array>): void {
  for (const [i, from] of ring.entries()) {
    const to = ring[(i + 1) % ring.length] as YardPoint;
    const place = finder.find(from, to);
    if (place === undefined) continue;
    const sum = sums.get(place.source) ?? new Float64Array(2 * place.source.ring.length);
    sums.set(place.source, sum);
    addAt(sum, place.from, from, to, 1 - place.t);
    addAt(sum, place.to, from, to, place.t);
  }
}

function addAt(sum: Float64Array, corner: number, from: YardPoint, to: YardPoint, share: number): void {
  sum[2 * corner] = (sum[2 * corner] ?? 0) + share * (to.yM - from.yM);
  sum[2 * corner + 1] = (sum[2 * corner + 1] ?? 0) + share * (from.xM - to.xM);
}

/** From the corners computed with to the points placed. */
function termsOf({ moves }: SourceRing, sum: Float64Array): readonly GradientTerm[] {
  const direct: GradientTerm[] = [];
  const led = new Map<PlacedPoint, { east: number; north: number }>();
  for (let i = 0; i < moves.length; i++) {
    const east = sum[2 * i] as number;
    const north = sum[2 * i + 1] as number;
    if (east === 0 && north === 0) continue;
    const move = moves[i] as SourceRing['moves'][number];
    if ('own' in move) direct.push({ point: move, east, north });
    else for (const mover of move) addLed(led, mover, east, north);
  }
  if (led.size === 0) return direct;
  return [...direct, ...[...led].map(([point, { east, north }]) => ({ point, east, north }))];
}

function addLed(
  led: Map<PlacedPoint, { east: number; north: number }>,
  { point, xx, xy, yx, yy }: Mover,
  east: number,
  north: number,
): void {
  const sum = led.get(point) ?? { east: 0, north: 0 };
  // The chain rule: dA/dp = dA/d(corner) · d(corner)/dp.
  sum.east += east * xx + north * yx;
  sum.north += east * xy + north * yy;
  led.set(point, sum);
}
