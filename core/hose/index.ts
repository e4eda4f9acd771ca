/**
 * Hose: how much of it each section needs. In: what stands in the way, a spigot, the passes of a plan; out: the
 * least length for each section. Method: shortest ways round buildings. Out of scope: which section comes first.
 */
export { type HoseDistance, hoseDistances } from './hoseDistances.ts';
export { type HoseReach, hoseReach } from './hoseReach.ts';
export { blocksHose, type HoseGround, hoseGround, type HoseSpigot } from './hoseGround.ts';
export { USUAL_CLEARANCE_M } from './usualClearance.ts';
