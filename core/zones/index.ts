export type { ResolvedYard, ResolvedZone, ZoneOverlap } from './resolved.ts';
