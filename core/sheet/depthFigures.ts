import type { GroundCoverage } from '../passes/index.ts';
import { apportionForDisplay, areaStepM2, sum, type UnitSystem } from '../units/index.ts';
import { type CoveredGround, type CoverageFigures, SHARE_STEP } from './coverageFigures.ts';

/** How often ground is covered, as it is told apart by the depth of ink: 3 is three times or more. */
export type InkDepth = 0 | 1 | 2 | 3;

/**
 * The coverage as shown, by how often ground is covered: the same figures as `coverageFigures`, with what lies above the
 * rate told apart where it is walked once. Together they are the treated ground and the whole share.
 *
 * @param shown of the same coverage
 */
export function depthFigures(
  { depthsM2 }: Pick<GroundCoverage, 'depthsM2'>,
  { once, short, twice, missed }: CoverageFigures,
  units: UnitSystem,
): Record<InkDepth, CoveredGround> {
  if (short !== null) return { 0: missed, 1: short, 2: once, 3: twice };
  const aboveM2 = [depthsM2[2] ?? 0, sum(depthsM2.slice(3))];
  const wholeM2 = sum(aboveM2);
  const within = (step: number, total: number): number[] =>
    apportionForDisplay(
      aboveM2.map((areaM2) => (wholeM2 > 0 ? (areaM2 / wholeM2) * total : 0)),
      step,
      total,
    );
  const areasM2 = within(areaStepM2(units), twice.areaM2);
  const shares = within(SHARE_STEP, twice.share);
  const at = (place: number): CoveredGround => ({
    areaM2: areasM2[place] as number,
    share: shares[place] as number,
  });
  return { 0: missed, 1: once, 2: at(0), 3: at(1) };
}

/** What each depth is called, where the ground is walked once or twice. */
export function depthWords(rounds: 1 | 2): Record<InkDepth, string> {
  return rounds === 1
    ? { 0: 'missed', 1: 'once', 2: 'twice', 3: '3 times or more' }
    : {
        0: 'missed',
        1: 'once: half the rate',
        2: 'twice: the whole rate',
        3: 'more often: above the rate',
      };
}
