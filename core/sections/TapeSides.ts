import { BoxIndex } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';

/** A straight line on the ground that a tape is laid along, from either of its ends. */
export interface TapeSide {
  readonly from: YardPoint;
  readonly to: YardPoint;
}

/** Overlays one after the other move an edge off the line it was cut from by some grid steps. */
const UNDER_M = 2e-5;

/**
 * The straight sides tape distances are counted along, found again by the edges of treated ground that lie on them:
 * such an edge may begin in mid-side, where a bed touches it.
 * Cost: n log n to build; log n and what is near to ask
 */
export class TapeSides {
  readonly isEmpty: boolean;
  readonly #sides: BoxIndex<TapeSide>;

  constructor(sides: readonly TapeSide[]) {
    this.isEmpty = sides.length === 0;
    this.#sides = new BoxIndex(sides, ({ from, to }) => boxOf(from, to));
  }

  /** Every side the edge from a to b lies on, whichever way it runs, in the order given. */
  under(a: YardPoint, b: YardPoint): readonly TapeSide[] {
    const { minXM, minYM, maxXM, maxYM } = boxOf(a, b);
    const near = this.#sides.meeting({
      minXM: minXM - UNDER_M,
      minYM: minYM - UNDER_M,
      maxXM: maxXM + UNDER_M,
      maxYM: maxYM + UNDER_M,
    });
    return near.filter((side) => isOn(side, a) && isOn(side, b));
  }
}

function isOn({ from, to }: TapeSide, { xM, yM }: YardPoint): boolean {
  const [x, y] = [to.xM - from.xM, to.yM - from.yM];
  const lengthM = Math.hypot(x, y);
  const alongM = ((xM - from.xM) * x + (yM - from.yM) * y) / lengthM;
  const offM = Math.abs((yM - from.yM) * x - (xM - from.xM) * y) / lengthM;
  return offM <= UNDER_M && alongM >= -UNDER_M && alongM <= lengthM + UNDER_M;
}

function boxOf(a: YardPoint, b: YardPoint) {
  return {
    minXM: Math.min(a.xM, b.xM),
    minYM: Math.min(a.yM, b.yM),
    maxXM: Math.max(a.xM, b.xM),
    maxYM: Math.max(a.yM, b.yM),
  };
}
