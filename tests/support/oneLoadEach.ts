import type { PlanLoad } from '../../core/plan/index.ts';
import type { Section } from '../../core/sections/index.ts';

/** Every section its own load, numbered as they stand. */
export function oneLoadEach(sections: readonly Pick<Section, 'id' | 'areaM2'>[]): PlanLoad[] {
  return sections.map(({ id, areaM2 }, place) => ({ number: place + 1, sectionIds: [id], areaM2 }));
}
