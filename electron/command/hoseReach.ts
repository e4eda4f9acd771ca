import type { GroundPlan } from '../../core/plan/index.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';

/**
 * How far each section's farthest corner is from a spigot in a straight line. A hose that has to go round
 * something needs more, so this tells for certain which sections are out of reach and not which are in it.
 */
export interface HoseReach {
  readonly spigot: string;
  readonly hoseM: number;
  readonly measured: 'straight';
  readonly sections: readonly {
    readonly id: string;
    readonly straightM: number;
    readonly isBeyond: boolean;
  }[];
}

/** Problems: value/missing when there is no such spigot */
export function hoseReach(yard: Yard, plan: GroundPlan, spigot: string, hoseM: number): Result<HoseReach> {
  const mark = yard.marks.find((each) => each.kind === 'spigot' && each.name === spigot);
  if (mark === undefined) {
    return trouble({ kind: 'value/missing', where: { field: `The spigot “${spigot}”` }, facts: {} });
  }
  const sections = plan.sections.map(({ id, region }) => {
    // Distance to a point is convex, so over a polygon it is greatest at a corner.
    const straightM = region.outer.reduce(
      (most, { xM, yM }) => Math.max(most, Math.hypot(xM - mark.at.xM, yM - mark.at.yM)),
      0,
    );
    return { id, straightM, isBeyond: straightM > hoseM };
  });
  return ok({ spigot, hoseM, measured: 'straight', sections });
}
