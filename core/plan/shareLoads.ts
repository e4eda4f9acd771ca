import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import { sum } from '../units/index.ts';
import type { SectionPolicy } from '../yard.ts';

/** A section as something to be carried. */
export interface Parcel {
  readonly id: string;
  readonly areaM2: number;
  readonly at: YardPoint;
  /** When it was cut; those cut one after the other were meant to fill a load together. */
  readonly turn: number;
}

type Load = readonly Parcel[];

/** A load may be over by this part of it: areas cut to fill it exactly carry rounding. */
const LOAD_SLACK = 1e-8;
/** More parcels than this that could share are not searched through: the best of two simple ways is taken. */
const MOST_SEARCHED = 30;
/** Steps of the search; the best found by then is taken. */
const MOST_STEPS = 30_000;

/**
 * Parcels in as few loads as hold them and, among as many loads, with the least way between those that share one.
 *
 * @param policy 'fewest': as they were cut to fill one load after the other, unless fewer loads hold them
 * @param loadAreaM2 what a load holds; a larger parcel has a load for itself
 * Cost: exact by branch and bound for some thirty parcels that could share, as far as MOST_STEPS goes; n^2 beyond
 * Source: the bin packing problem; largest first as in Johnson 1973 (from memory), the bound is the ground left over
 *   the room left
 */
export function shareLoads(parcels: readonly Parcel[], policy: SectionPolicy, loadAreaM2: number): Load[] {
  const mostM2 = loadAreaM2 * (1 + LOAD_SLACK);
  const leastM2 = Math.min(...parcels.map(({ areaM2 }) => areaM2));
  const alone = parcels.filter(({ areaM2 }) => areaM2 + leastM2 > mostM2);
  const others = parcels
    .filter((parcel) => !alone.includes(parcel))
    .sort((a, b) => b.areaM2 - a.areaM2 || a.turn - b.turn);
  const filled = asCut(others, mostM2);
  const simple = better(filled, largestFirst(others, mostM2));
  const found = others.length > MOST_SEARCHED ? simple : searched(others, mostM2, simple);
  const shared = policy === 'fewest' && filled.length <= found.length ? filled : found;
  return [...alone.map((parcel) => [parcel]), ...shared];
}

/** In the order they were cut, each into the load begun or else a new one. */
function asCut(parcels: readonly Parcel[], mostM2: number): Load[] {
  const loads: Parcel[][] = [];
  for (const parcel of parcels.toSorted((a, b) => a.turn - b.turn)) {
    const begun = loads.at(-1);
    if (begun !== undefined && roomM2(begun, mostM2) >= parcel.areaM2) begun.push(parcel);
    else loads.push([parcel]);
  }
  return loads;
}

/** The largest first, each into the first load that has room. */
function largestFirst(parcels: readonly Parcel[], mostM2: number): Load[] {
  const loads: Parcel[][] = [];
  for (const parcel of parcels) {
    const found = loads.find((load) => roomM2(load, mostM2) >= parcel.areaM2);
    if (found === undefined) loads.push([parcel]);
    else found.push(parcel);
  }
  return loads;
}

function roomM2(load: Load, mostM2: number): number {
  return mostM2 - sum(load.map(({ areaM2 }) => areaM2));
}

/** The way to a parcel from the nearest of those its load holds; none to the first. */
function wayM(load: Load, { at }: Parcel): number {
  return load.length === 0 ? 0 : Math.min(...load.map((other) => distanceM(other.at, at)));
}

function wholeWayM(loads: readonly Load[]): number {
  return sum(loads.flatMap((load) => load.map((parcel, place) => wayM(load.slice(0, place), parcel))));
}

function better(best: Load[], other: Load[]): Load[] {
  if (best.length !== other.length) return best.length < other.length ? best : other;
  return wholeWayM(other) < wholeWayM(best) ? other : best;
}

/** Branch and bound: each parcel in turn into every load begun, nearest first, or into a new one. */
function searched(parcels: readonly Parcel[], mostM2: number, start: Load[]): Load[] {
  let best = start;
  let bestWayM = wholeWayM(start);
  let steps = 0;
  const leftM2 = parcels.map((_, place) => sum(parcels.slice(place).map(({ areaM2 }) => areaM2)));
  const visit = (place: number, loads: readonly Load[], soFarM: number): void => {
    const overM2 = (leftM2[place] ?? 0) - sum(loads.map((load) => roomM2(load, mostM2)));
    const least = loads.length + Math.max(0, Math.ceil(overM2 / mostM2 - LOAD_SLACK));
    if (least > best.length || (least === best.length && soFarM >= bestWayM)) return;
    if (++steps > MOST_STEPS) return;
    const parcel = parcels[place];
    if (parcel === undefined) {
      best = [...loads];
      bestWayM = soFarM;
      return;
    }
    loads
      .map((load, index) => ({ load, index, addedM: wayM(load, parcel) }))
      .filter(({ load }) => roomM2(load, mostM2) >= parcel.areaM2)
      .sort((a, b) => a.addedM - b.addedM)
      .forEach(({ load, index, addedM }) => {
        visit(place + 1, loads.with(index, [...load, parcel]), soFarM + addedM);
      });
    visit(place + 1, [...loads, [parcel]], soFarM);
  };
  visit(0, [], 0);
  return best;
}
