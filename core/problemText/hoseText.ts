import type { Problem } from '../problems.ts';
import { formatEnough, formatLength, type UnitSystem } from '../units/index.ts';
import { type ProblemText, say } from './sentences.ts';

/** What keeps a hose from its work. */
export type HoseTrouble = Extract<
  Problem,
  { readonly kind: `plan/hose-${string}` | `plan/spigot-${string}` | 'plan/no-spigot' }
>;

export function isHoseTrouble(problem: Problem): problem is HoseTrouble {
  const { kind } = problem;
  return kind === 'plan/no-spigot' || kind.startsWith('plan/hose-') || kind.startsWith('plan/spigot-');
}

/** The words for trouble with a hose. Complete by type. */
export function hoseText(problem: HoseTrouble, units: UnitSystem): ProblemText {
  const { thing } = problem.where;
  switch (problem.kind) {
    case 'plan/no-spigot':
      return say(
        `${thing} has no spigot to start from.`,
        'Mark a spigot on the Outlines page, or choose spigots for this job, or plan without a hose.',
      );
    case 'plan/spigot-in-wall':
      return say(
        `The spigot “${thing}” lies ${formatLength(problem.facts.depthM, units)} inside what a hose has to go round.`,
        `Move it to the wall it is on: a spigot may be drawn up to ${formatLength(problem.facts.mostM, units)} inside.`,
      );
    case 'plan/spigot-shut-in':
      return say(
        `From the spigot “${thing}” a hose gets nowhere this job is done.`,
        problem.facts.isByClearance
          ? `It would with less kept off corners than ${formatLength(problem.facts.clearanceM, units)}, which closes the way.`
          : 'Say on the Outlines page what a hose may cross, or move the spigot.',
      );
    case 'plan/hose-no-way':
      return say(
        `No hose gets to all of ${thing}.`,
        problem.facts.isByClearance
          ? `Keep less than ${formatLength(problem.facts.clearanceM, units)} off corners, which closes a gate or gap.`
          : 'Say on the Outlines page what a hose may cross, mark a spigot there, or treat it by backpack.',
      );
    case 'plan/hose-too-short': {
      const { lengthM, neededM, isAll } = problem.facts;
      const beyond = isAll ? `Every section lies beyond the hose (${thing})` : `Beyond the hose: ${thing}`;
      return say(
        `${beyond}. It takes ${formatEnough(neededM, units)} and there are ${formatLength(lengthM, units)}: ${formatEnough(neededM - lengthM, units)} are missing.`,
        `Use a hose of ${formatEnough(neededM, units)}, mark a nearer spigot, or treat by backpack what is beyond.`,
      );
    }
  }
}
