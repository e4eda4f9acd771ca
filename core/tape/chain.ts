import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Ring, YardPoint } from '../spaces.ts';
import { groundRing, placed, requireCount, requirePositive } from './place.ts';

/** Which way a leg goes: on a bearing, turned from the leg before, or straight on. */
export type LegDirection =
  | { readonly kind: 'bearing'; readonly deg: number }
  | { readonly kind: 'turn'; readonly rightDeg: number }
  | { readonly kind: 'on' };

export interface Leg {
  readonly lengthM: number;
  readonly direction: LegDirection;
}

export interface WalkedChain {
  /** The corners after the misclosure was shared out. */
  readonly ring: Ring;
  readonly lengthM: number;
  /** From the start to where the legs ended; they should have ended at the start. */
  readonly misclosure: { readonly eastM: number; readonly northM: number; readonly lengthM: number };
  /** The n of a precision of 1:n; null when the legs close but for rounding. */
  readonly oneIn: number | null;
  /** One standard deviation of a corner, as far as the misclosure tells; nought when the legs close. */
  readonly cornerSigmaM: number;
  /** value/closes-badly, when the precision is worse than 1:100. */
  readonly cautions: readonly Problem[];
}

/** A tape and a sighted bearing do better than this; worse is more likely a slip than an error. Our own choice. */
const LEAST_ONE_IN = 100;
/** A misclosure below this share of the way round is rounding of the sines. */
const CLOSED_SHARE = 1e-12;

/**
 * Ground walked round by legs back to the start, the last leg included. What is missing at the end is shared
 * out by the compass rule: each leg takes the part of the misclosure that its length is of the whole way.
 *
 * Problems: value/too-few, value/not-positive, value/missing (a first leg without a bearing); shape/ as `checkRing`
 * Source: Bowditch's compass rule as in textbooks of plane surveying; latitude = length × cos(bearing),
 * departure = length × sin(bearing), precision = misclosure over perimeter as 1:n. The corners' σ is worked out here,
 * for n legs alike whose ends are each misplaced by τ east and north: the misclosure e then has E(e²) = 2 n τ²; a
 * corner k legs on, once its share was taken off, is misplaced by τ √(k (n − k) / n), in the mean of squares over
 * the n corners τ √((n² − 1) / 6n). With τ² = e² / 2n that is e √((1 − 1/n²) / 12). One walk is one draw: a small
 * misclosure may be luck.
 */
export function walkedChain(legs: readonly Leg[], start: YardPoint): Result<WalkedChain> {
  const enough = requireCount('legs', legs.length, 3);
  if (!enough.ok) return enough;
  const sizes = requirePositive(Object.fromEntries(legs.map((leg, i) => [`leg ${i + 1}`, leg.lengthM])));
  if (!sizes.ok) return sizes;
  const walked = walk(legs, start);
  if (!walked.ok) return walked;
  const ends = walked.value;
  const end = ends[ends.length - 1] ?? start;
  const lengthM = legs.reduce((sumM, leg) => sumM + leg.lengthM, 0);
  const eastM = end.xM - start.xM;
  const northM = end.yM - start.yM;
  const misclosure = { eastM, northM, lengthM: Math.hypot(eastM, northM) };

  let walkedM = 0;
  const corners = ends.map((corner, i) => {
    walkedM += legs[i]?.lengthM ?? 0;
    const share = walkedM / lengthM;
    return { xM: corner.xM - eastM * share, yM: corner.yM - northM * share };
  });
  // The last leg ends at the start, which is the first corner of an open ring.
  const ring = groundRing('The walked chain', [start, ...corners.slice(0, -1)]);
  if (!ring.ok) return ring;
  const oneIn = misclosure.lengthM <= CLOSED_SHARE * lengthM ? null : lengthM / misclosure.lengthM;
  const cornerSigmaM = oneIn === null ? 0 : misclosure.lengthM * Math.sqrt((1 - 1 / legs.length ** 2) / 12);
  const cautions: readonly Problem[] =
    oneIn !== null && oneIn < LEAST_ONE_IN
      ? [
          {
            kind: 'value/closes-badly',
            where: { field: 'legs' },
            facts: { misclosureM: misclosure.lengthM, oneIn },
          },
        ]
      : [];
  return ok({ ring: ring.value, lengthM, misclosure, oneIn, cornerSigmaM, cautions });
}

/** Where each leg ends as it was measured. */
function walk(legs: readonly Leg[], start: YardPoint): Result<readonly YardPoint[]> {
  const ends: YardPoint[] = [];
  let at = start;
  let bearingDeg: number | null = null;
  for (const { lengthM, direction } of legs) {
    if (direction.kind === 'bearing') bearingDeg = direction.deg;
    else if (bearingDeg === null) {
      return trouble({ kind: 'value/missing', where: { field: 'bearing of the first leg' }, facts: {} });
    } else if (direction.kind === 'turn') bearingDeg += direction.rightDeg;
    at = placed({ at, bearingDeg }, { alongM: lengthM, leftM: 0 });
    ends.push(at);
  }
  return ok(ends);
}
