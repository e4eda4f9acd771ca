import type { Problem } from '../problems.ts';
import type { ResolvedYard } from '../zones/index.ts';

/** What a plan of these zones is called where nothing nearer names it. */
export function thingOf(resolved: ResolvedYard): string {
  return resolved.zones.map((zone) => zone.name).join(', ') || 'The yard';
}

export function cancelled(resolved: ResolvedYard): Problem {
  return { kind: 'plan/cancelled', where: { thing: thingOf(resolved) }, facts: {} };
}
