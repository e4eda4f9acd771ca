import { GRID_M } from '../kernel/index.ts';
import type { Outline } from '../yard.ts';
import { type PlacedPoint, placedPointsOf } from './placedPoints.ts';

/** Exactly the factor by which the kernel goes to its grid. */
const PER_M = 1 / GRID_M;

interface Places {
  readonly points: readonly PlacedPoint[];
  /** Grid steps east and north, point after point. */
  readonly steps: Float64Array;
}

/** Outlines do not change; while one is dragged the places of the others are as they were. */
const places = new WeakMap<Outline, Places>();

/**
 * Points of several outlines at the same place on the kernel grid, in groups: they were snapped together and are one.
 *
 * Cost: a hash table over all points, some 20 ns each; a table of strings took 20 times that
 */
export function sharedPoints(outlines: readonly Outline[]): readonly (readonly PlacedPoint[])[] {
  const all = outlines.map(placesOf);
  const count = all.reduce((sum, { points }) => sum + points.length, 0);
  const bits = Math.max(4, Math.ceil(Math.log2(2 * count + 1)));
  const mask = 2 ** bits - 1;
  // Open addressing: a slot holds one more than a point's number, 0 is free.
  const table = new Int32Array(2 ** bits);
  const steps = new Float64Array(2 * count);
  const points = new Array<PlacedPoint>(count);
  let at = 0;
  const groups = new Map<number, PlacedPoint[]>();
  for (const place of all) {
    steps.set(place.steps, 2 * at);
    for (const point of place.points) {
      points[at] = point;
      const x = steps[2 * at] as number;
      const y = steps[2 * at + 1] as number;
      let slot = mixed(x, y) & mask;
      let held = table[slot] as number;
      while (held !== 0 && (steps[2 * held - 2] !== x || steps[2 * held - 1] !== y)) {
        slot = (slot + 1) & mask;
        held = table[slot] as number;
      }
      if (held === 0) table[slot] = at + 1;
      else {
        const group = groups.get(held) ?? [points[held - 1] as PlacedPoint];
        group.push(point);
        groups.set(held, group);
      }
      at++;
    }
  }
  return [...groups.values()];
}

function placesOf(outline: Outline): Places {
  const known = places.get(outline);
  if (known !== undefined) return known;
  const rings = placedPointsOf(outline);
  const isPlain = outline.outer.kind === 'corners' && outline.holes.length === 0;
  const points = (isPlain && rings[0]) || rings.flat().filter(({ from }) => from === null);
  const steps = new Float64Array(2 * points.length);
  points.forEach(({ at }, i) => {
    // + 0, for -0 and 0 are one place.
    steps[2 * i] = Math.round(at.xM * PER_M) + 0;
    steps[2 * i + 1] = Math.round(at.yM * PER_M) + 0;
  });
  const made = { points, steps };
  places.set(outline, made);
  return made;
}

/** Two whole numbers to 32 well-mixed bits (the last steps of MurmurHash3, Austin Appleby, public domain). */
function mixed(x: number, y: number): number {
  let bits = Math.imul(x | 0, 0x9e3779b1) ^ Math.imul(y | 0, 0x85ebca77);
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return bits ^ (bits >>> 16);
}
