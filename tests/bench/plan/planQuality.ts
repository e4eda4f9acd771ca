import { type GroundPlan, planGround, type PlanRequest } from '../../../core/plan/index.ts';
import type { Cut } from '../../../core/sections/index.ts';
import type { Region, Ring, YardPoint } from '../../../core/spaces.ts';
import { planRequest } from '../../support/planRequest.ts';
import { resolvedOf } from '../../support/randomGround.ts';
import { cpuClock } from './table.ts';

/** Where a tape is read to. */
export const MARK_M = 0.1;
/** A lawn's loads have room for this part more than an equal share. */
export const ROOMY = 1.02;
const ON_MARK_M = 1e-4;

export interface PlanQuality {
  readonly sections: number;
  readonly passes: number;
  /** Cut length over (k - 1) √(A / k); not a number for one section. */
  readonly cut: number;
  readonly cuts: number;
  /** Cuts with both ends on marks. */
  readonly markedCuts: number;
  readonly coveredPercent: number;
  readonly twicePercent: number;
  readonly outsidePercent: number;
  /** Lengths over what the swath takes at least, A / swath. */
  readonly on: number;
  readonly walk: number;
  readonly wet: number;
  readonly cpuMs: number;
}

/** Plans the ground once and measures the plan; the problem's kind where there is none. */
export function planQuality(
  ground: readonly Region[],
  said: Pick<PlanRequest, 'loadAreaM2' | 'swathM'>,
): PlanQuality | string {
  const resolved = resolvedOf({ Yard: ground });
  const request = planRequest({ ...said, markM: MARK_M });
  const cpuMs = cpuClock();
  const plan = planGround(resolved, request);
  const spentMs = cpuMs();
  if (!plan.ok) return plan.problems.map(({ kind }) => kind).join(' ');
  return { ...qualityOf(plan.value, ground, said.swathM), cpuMs: spentMs };
}

function qualityOf(plan: GroundPlan, ground: readonly Region[], swathM: number): Omit<PlanQuality, 'cpuMs'> {
  const { treatedM2, missedM2, twiceM2, outsideM2 } = plan.coverage;
  const sections = plan.sections.length;
  const leastM = treatedM2 / swathM;
  const cutM = plan.cutLines.reduce((sum, line) => sum + lengthM(line), 0);
  return {
    sections,
    passes: plan.passes.length,
    cut: cutM / ((sections - 1) * Math.sqrt(treatedM2 / sections)),
    cuts: plan.cuts.length,
    markedCuts: plan.cuts.filter((cut) => isMarked(cut, plan.cuts, ground)).length,
    coveredPercent: 100 - (100 * missedM2) / treatedM2,
    twicePercent: (100 * twiceM2) / treatedM2,
    outsidePercent: (100 * outsideM2) / treatedM2,
    on: plan.onLengthM / leastM,
    walk: (plan.onLengthM + plan.offLengthM) / leastM,
    wet: plan.wetM / leastM,
  };
}

interface Line {
  readonly from: YardPoint;
  readonly to: YardPoint;
}

/** Whether both ends lie at whole marks from an end of an edge of the ground or of another cut. */
export function isMarked(cut: Line, cuts: readonly Cut[], ground: readonly Region[]): boolean {
  const edges = ground.flatMap(({ outer, holes }) => [outer, ...holes].flatMap(edgesOf));
  const lines: Line[] = [...edges, ...cuts.filter((other) => other !== cut)];
  return [cut.from, cut.to].every((end) => lines.some((line) => isOnMark(end, line)));
}

function edgesOf(ring: Ring): Line[] {
  return ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length] as YardPoint }));
}

function isOnMark(at: YardPoint, line: Line): boolean {
  const { from, to } = line;
  const wholeM = lengthM(line);
  const [x, y] = [(to.xM - from.xM) / wholeM, (to.yM - from.yM) / wholeM];
  const alongM = (at.xM - from.xM) * x + (at.yM - from.yM) * y;
  const offM = Math.abs((at.xM - from.xM) * y - (at.yM - from.yM) * x);
  if (offM > ON_MARK_M || alongM < -ON_MARK_M || alongM > wholeM + ON_MARK_M) return false;
  return [alongM, wholeM - alongM].some(
    (placeM) => Math.abs(placeM - MARK_M * Math.round(placeM / MARK_M)) < ON_MARK_M,
  );
}

export function lengthM({ from, to }: Line): number {
  return Math.hypot(to.xM - from.xM, to.yM - from.yM);
}
