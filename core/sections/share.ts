import { regionAreaM2 } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { sum } from '../units/index.ts';

/** A part of a load done in one section: the head fills up the load begun before, the tail begins one. */
export interface Rest {
  readonly end: 'head' | 'tail';
  readonly areaM2: number;
  /** What its load has room for: a cut moved to a tape mark may give it up to this. */
  readonly mostM2: number;
}

/** `loads` sections alike, and up to two smaller ones, one for each end. */
export interface Loads {
  readonly loads: number;
  readonly rests: readonly Rest[];
}

/** Ground still to be cut into its loads. */
export interface Share extends Loads {
  readonly region: Region;
}

/** How many sections that is, the smaller ones counted. */
export function loadCount({ loads, rests }: Loads): number {
  return loads + rests.length;
}

/** The ground all of them together have room for. */
export function roomM2({ loads, rests }: Loads, loadAreaM2: number): number {
  return loads * loadAreaM2 + sum(rests.map((rest) => rest.mostM2));
}

/**
 * What is left to cut once a cut has been moved to tape marks and gives the region a little more or less: the smaller
 * sections take it up, the tail before the head, so that the full loads stay full.
 */
export function shareAfterSnap(region: Region, { loads, rests }: Loads, loadAreaM2: number): Share {
  if (rests.length === 0 || loads + rests.length === 1) return { region, loads, rests };
  const head = rests.find(({ end }) => end === 'head');
  const tail = rests.find(({ end }) => end === 'tail');
  const leftM2 = regionAreaM2(region) - loads * loadAreaM2;
  const besideHeadM2 = leftM2 - (head?.areaM2 ?? 0);
  const tailM2 = tail === undefined ? 0 : Math.max(0, Math.min(besideHeadM2, tail.mostM2));
  const left = rests.map((rest) => ({ ...rest, areaM2: rest === tail ? tailM2 : leftM2 - tailM2 }));
  return { region, loads, rests: left.filter(({ areaM2 }) => areaM2 > 0) };
}
