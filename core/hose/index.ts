/**
 * Hose: how much of it each section needs, where it lies and what it cannot cross.
 *
 * In: spigots, barriers and a length; the sections and passes of a plan. Out: the hose from each spigot to the
 * farthest place of each section, the way it lies with its bends, what of that lies on wet turf, and the ground a
 * length reaches. Method: shortest ways round polygons by a visibility graph. Out of scope: which section comes
 * first, slack, and slopes.
 */
export { type HoseDistance, hoseDistances } from './hoseDistances.ts';
export { blocksHose, type HoseGround, hoseGround, type HoseSpigot, USUAL_CLEARANCE_M } from './hoseGround.ts';
export type { HoseBend, HosePlan, SectionHose } from './hosePlan.ts';
export { type HoseWork, planHose } from './planHose.ts';
export { reachRegions } from './reachRegions.ts';
export { hoseWords, snagsOf } from './hoseWords.ts';
