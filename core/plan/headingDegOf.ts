import { wholeBearing } from '../frame/index.ts';
import type { LaneHeading } from '../yard.ts';

/** Compass bearing the lanes are asked to run on, in degrees; null = the plan picks it. */
export function headingDegOf(heading: LaneHeading): number | null {
  if (heading.kind === 'best') return null;
  return wholeBearing(heading.kind === 'picked' ? heading.deg : heading.lastDeg + heading.byDeg);
}
