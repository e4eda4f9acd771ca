import { intersectRegions, regionsAreaM2 } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import type { Shape } from './shape.ts';
import { type Left, takeAway } from './takeAway.ts';

/** What may take ground from a zone. */
export interface Takers {
  /** Zones that own what they share with it, resolved themselves. */
  readonly owners: readonly ZoneGround[];
  readonly cutOuts: readonly Shape[];
  /** Keep-offs, check plots and strips. */
  readonly untreated: readonly Shape[];
}

/** A zone's ground, step by step; each step takes from what the one before left, so no ground is taken twice. */
export interface ZoneGround {
  readonly zone: Shape;
  readonly takers: Takers;
  /** What it owns of itself. */
  readonly own: Left;
  readonly turf: Left;
  readonly treated: Left;
  /** What it lost to each of the zones that own ground of it. */
  readonly shared: readonly SharedGround[];
  readonly grossAreaM2: number;
  readonly ownAreaM2: number;
  readonly turfAreaM2: number;
  readonly treatedAreaM2: number;
}

export interface SharedGround {
  readonly owner: Shape;
  readonly regions: readonly Region[];
  readonly areaM2: number;
}

/** The last answer for each zone: while something is dragged elsewhere it is still right. */
const latest = new WeakMap<Shape, ZoneGround>();

/**
 * Accuracy: perimeter times the kernel grid
 * Cost: as `takeAway`; nothing where neither the zone nor anything near it changed
 */
export function zoneGround(zone: Shape, takers: Takers): ZoneGround {
  const known = latest.get(zone);
  if (known !== undefined && sameTakers(known.takers, takers)) return known;
  const ground = takeInTurn(zone, takers);
  latest.set(zone, ground);
  return ground;
}

function takeInTurn(zone: Shape, takers: Takers): ZoneGround {
  const own = takeAway(
    zone.regions,
    takers.owners.map((owner) => owner.zone),
  );
  const turf = takeAway(own.regions, takers.cutOuts);
  const treated = takeAway(turf.regions, takers.untreated);
  const grossAreaM2 = regionsAreaM2(zone.regions);
  const ownAreaM2 = own.regions === zone.regions ? grossAreaM2 : regionsAreaM2(own.regions);
  const turfAreaM2 = turf.regions === own.regions ? ownAreaM2 : regionsAreaM2(turf.regions);
  const treatedAreaM2 = treated.regions === turf.regions ? turfAreaM2 : regionsAreaM2(treated.regions);
  const shared = sharedGround(zone, takers.owners, own);
  return { zone, takers, own, turf, treated, shared, grossAreaM2, ownAreaM2, turfAreaM2, treatedAreaM2 };
}

function sharedGround(zone: Shape, owners: readonly ZoneGround[], own: Left): readonly SharedGround[] {
  if (own.regions === zone.regions) return [];
  const [only, ...others] = owners;
  const isWhole = only?.own.regions === only?.zone.regions;
  return owners.map((owner) => {
    const regions =
      others.length === 0 && isWhole
        ? [...own.cut, ...own.whole.flatMap((shape) => shape.regions)]
        : intersectRegions(zone.regions, owner.own.regions);
    return { owner: owner.zone, regions, areaM2: regionsAreaM2(regions) };
  });
}

function sameTakers(a: Takers, b: Takers): boolean {
  return sameRows(a.owners, b.owners) && sameRows(a.cutOuts, b.cutOuts) && sameRows(a.untreated, b.untreated);
}

function sameRows<T>(a: readonly T[], b: readonly T[]): boolean {
  return a.length === b.length && a.every((row, i) => row === b[i]);
}
