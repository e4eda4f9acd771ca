import { LOAD_SLACK, loadsFor } from '../applicators/index.ts';
import { regionAreaM2 } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import { sum } from '../units/index.ts';
import type { SectionPolicy } from '../yard.ts';
import type { Rest, Share } from './share.ts';

/** The load that was begun on the way here, and what all loads together may leave unused, as areas of the map. */
export interface Begun {
  /** What it still has room for; 0 = none is begun. */
  readonly roomM2: number;
  readonly spareM2: number;
}

/** Where a zone is cut by itself: no load is begun, and one more is nobody's loss. */
export const NOTHING_BEGUN: Begun = { roomM2: 0, spareM2: Infinity };

interface LoadRequest {
  readonly loadAreaM2: number;
  readonly policy: SectionPolicy;
  readonly swathM: number;
}

/** Less than this part of a load, or than a square of one swath, is not worth a cut and its flags. */
const LEAST_PART = 0.1;

/**
 * What a piece of ground is to be cut to. Even: as few equal loads as it takes. Fewest: what fills up the load begun,
 * then full loads, and what is left begins the next one. Neither end is made too small to be worth its flags, nor is
 * ground parted that fits a load, as long as the loads can spare it.
 */
export function shareOf(region: Region, request: LoadRequest, { roomM2, spareM2 }: Begun): Share {
  const { loadAreaM2, policy, swathM } = request;
  const areaM2 = regionAreaM2(region);
  const slackM2 = LOAD_SLACK * loadAreaM2;
  if (policy === 'even') {
    return { region, loads: loadsFor(areaM2, loadAreaM2), rests: [] };
  }
  const leastM2 = Math.max(swathM * swathM, LEAST_PART * loadAreaM2);
  if (areaM2 <= roomM2 + slackM2) return { region, loads: 0, rests: [head(areaM2, roomM2)] };
  // Ground that fits a load by itself is not parted for what the loads can spare: the person may have cut it so.
  const isWhole = areaM2 <= loadAreaM2 + slackM2;
  const isLeft = roomM2 < slackM2 || ((roomM2 < leastM2 || isWhole) && roomM2 <= spareM2);
  let headM2 = isLeft ? 0 : roomM2;
  let toSpareM2 = Math.max(0, spareM2 - (isLeft ? roomM2 : 0));
  let loads = Math.floor((areaM2 - headM2 + slackM2) / loadAreaM2);
  let tailM2 = Math.max(0, areaM2 - headM2 - loads * loadAreaM2);
  if (tailM2 <= slackM2) tailM2 = 0;
  const shortM2 = leastM2 - tailM2;
  const isFromHead = headM2 >= shortM2 + leastM2;
  if (tailM2 > 0 && shortM2 > 0 && shortM2 <= toSpareM2 && (isFromHead || loads > 0)) {
    // Taken from the head, or else a little from every full load.
    if (isFromHead) headM2 -= shortM2;
    tailM2 = leastM2;
    toSpareM2 -= shortM2;
  }
  if (loads === 0 && tailM2 === 0) loads = 1;
  const rests = headM2 > 0 ? [head(headM2, roomM2)] : [];
  if (tailM2 > 0)
    rests.push({ end: 'tail', areaM2: tailM2, mostM2: Math.min(loadAreaM2, tailM2 + toSpareM2) });
  return { region, loads, rests };
}

function head(areaM2: number, mostM2: number): Rest {
  return { end: 'head', areaM2, mostM2 };
}

/** The load that is begun once a piece has been cut to `parts`, and what is left to spare. */
export function begunAfter(parts: readonly Share[], loadAreaM2: number, { roomM2, spareM2 }: Begun): Begun {
  const areaOf = (end: Rest['end'] | null): number =>
    sum(parts.filter((part) => endOf(part) === end).map((part) => regionAreaM2(part.region)));
  const [headM2, tailM2] = [areaOf('head'), areaOf('tail')];
  const full = parts.filter((part) => endOf(part) === null).length;
  if (full === 0 && tailM2 === 0) return { roomM2: Math.max(0, roomM2 - headM2), spareM2 };
  const unusedM2 = roomM2 - headM2 + full * loadAreaM2 - areaOf(null);
  return {
    roomM2: tailM2 > 0 ? Math.max(0, loadAreaM2 - tailM2) : 0,
    spareM2: Math.max(0, spareM2 - Math.max(0, unusedM2)),
  };
}

/** The load begun goes no further: what it has room for counts as unused. */
export function leftUnfilled({ roomM2, spareM2 }: Begun): Begun {
  return { roomM2: 0, spareM2: Math.max(0, spareM2 - roomM2) };
}

/** The head first, for it fills the load begun before, and the tail last. */
export function inFillingOrder(parts: readonly Share[]): Share[] {
  const turn = (part: Share): number => ['head', null, 'tail'].indexOf(endOf(part));
  return parts.toSorted((a, b) => turn(a) - turn(b));
}

/** Which end a part fills; null = a load of its own. */
function endOf(part: Share): Rest['end'] | null {
  return part.rests[0]?.end ?? null;
}
