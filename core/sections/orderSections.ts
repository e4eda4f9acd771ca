import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';

/** Rounds of improvement; more changes little once neighbours follow each other. */
const MOST_ROUNDS = 12;

/**
 * An order to walk places in with little ground between them: from the most south-westerly one always on to
 * the nearest, then stretches turned round while that shortens the way.
 *
 * @returns indexes into `places`
 * Cost: n^2 a round
 */
export function orderSections(places: readonly YardPoint[]): number[] {
  const left = places.map((_, index) => index);
  left.sort((a, b) => southWest(places[a] as YardPoint) - southWest(places[b] as YardPoint) || a - b);
  const order: number[] = left.splice(0, 1);
  while (left.length > 0) {
    const here = places[order.at(-1) as number] as YardPoint;
    let nearest = 0;
    left.forEach((candidate, k) => {
      const best = places[left[nearest] as number] as YardPoint;
      if (apartM(here, places[candidate] as YardPoint) < apartM(here, best)) nearest = k;
    });
    order.push(...left.splice(nearest, 1));
  }
  for (let round = 0; round < MOST_ROUNDS && turnStretches(order, places); round++);
  return order;
}

function southWest(place: YardPoint): number {
  return place.xM + place.yM;
}

function apartM(a: YardPoint | undefined, b: YardPoint | undefined): number {
  return a === undefined || b === undefined ? 0 : distanceM(a, b);
}

/** Turns round every stretch that is shorter the other way; true when any was. */
function turnStretches(order: number[], places: readonly YardPoint[]): boolean {
  const at = (i: number): YardPoint | undefined => places[order[i] ?? -1];
  let isBetter = false;
  for (let i = 0; i < order.length - 1; i++) {
    for (let j = i + 1; j < order.length; j++) {
      const now = apartM(at(i - 1), at(i)) + apartM(at(j), at(j + 1));
      const turned = apartM(at(i - 1), at(j)) + apartM(at(i), at(j + 1));
      if (turned >= now - 1e-9) continue;
      order.splice(i, j - i + 1, ...order.slice(i, j + 1).reverse());
      isBetter = true;
    }
  }
  return isBetter;
}
