import { lineLengthM } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { layPasses } from './layPasses.ts';
import type { Ends, Walk } from './leg.ts';
import { orderPasses } from './orderPasses.ts';
import type { Pass } from './pass.ts';

export interface PassRequest extends Ends {
  readonly swathM: number;
  /** Compass bearing of the lanes; null = the one with the least walking. */
  readonly headingDeg: number | null;
}

export interface SectionPasses {
  /** In walking order, `order` counted from 1. */
  readonly passes: readonly Pass[];
  /** Bearing of the lanes, in [0, 180). */
  readonly headingDeg: number;
}

/** Passes over one section, laid and put in order: see layPasses and orderPasses. */
export function planPasses(
  section: { readonly id: string; readonly region: Region },
  { swathM, headingDeg, from, to }: PassRequest,
): SectionPasses {
  const laid = layPasses(section.region, swathM, headingDeg);
  const walks = orderPasses(laid.walks, { from, to });
  return { passes: passesOf(walks, section.id, 1, 1), headingDeg: laid.headingDeg };
}

/** Walks in order as passes of one round, numbered on from `first`. */
export function passesOf(
  walks: readonly Walk[],
  sectionId: string,
  round: Pass['round'],
  first: number,
): Pass[] {
  return walks.map(({ kind, line }, place) => {
    return { sectionId, order: first + place, kind, round, line, lengthM: lineLengthM(line) };
  });
}
