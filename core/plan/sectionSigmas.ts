import { sigmaOf } from '../area/index.ts';
import { type Ground, partSpreads } from '../zones/index.ts';
import type { GroundPlan } from './plan.ts';

/**
 * One standard deviation of the area of each section, by its id: of the corners that bound it, and of the flags that
 * mark its cut lines. null where nothing says how sure some of them are.
 *
 * @param ground the yard the plan was made of
 */
export function sectionSigmas(
  ground: Ground,
  { sections, cutLines }: Pick<GroundPlan, 'sections' | 'cutLines'>,
): ReadonlyMap<string, number | null> {
  const spreads = partSpreads(ground, sections, cutLines);
  return new Map(
    sections.map(({ id }, i) => {
      const spread = spreads[i];
      return [id, spread === undefined ? null : sigmaOf(spread)] as const;
    }),
  );
}
