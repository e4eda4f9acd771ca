/**
 * Staking: how the ends of cut lines are found on the ground with a tape, from a printed table alone.
 *
 * In: a yard's outlines and marks, and the cuts of a plan. Out: lettered flags, each with how it is set, and for every
 * line its length and a check; the sides tape marks are counted along. Method: places are given along straight sides
 * from named corners, along lines between flags, or by two tapes; of the ways there are, that one is taken whose
 * printed figures put the flag where it belongs with the least work. Out of scope: where cuts go (`core/sections`).
 */
export type { Check } from './checks.ts';
export { flagPlaces } from './flagPlaces.ts';
export { fullName, type NamedPoint } from './namedPoints.ts';
export {
  checkWords,
  type PrintedCheck,
  type PrintedFlag,
  type PrintedLine,
  printedFlag,
  printedLine,
  type SettingStep,
  settingSteps,
  settingWords,
  type StakingTable,
  stakingTable,
} from './printed.ts';
export { pointsUsed, shortName } from './pointsUsed.ts';
export { rebuild } from './rebuild.ts';
export type { Setting } from './setting.ts';
export { type Flag, type StakedLine, stakeCuts, type Staking } from './stakeCuts.ts';
export { tapeSidesOf } from './straightSides.ts';
