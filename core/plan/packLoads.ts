import type { Section } from '../sections/index.ts';
import type { PlanLoad } from './plan.ts';

/** One load for each section, in walking order. */
export function packLoads(sections: readonly Pick<Section, 'id' | 'areaM2'>[]): PlanLoad[] {
  return sections.map(({ id, areaM2 }, place) => ({ number: place + 1, sectionIds: [id], areaM2 }));
}
