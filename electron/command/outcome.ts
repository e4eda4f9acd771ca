import { problemText } from '../../core/problemText.ts';
import type { Problem } from '../../core/problems.ts';
import type { UnitSystem } from '../../core/yard.ts';

/** Exit codes are part of the command's contract: scripts tell bad input from bad usage by them. */
export const DONE = 0;
export const BAD_INPUT = 1;
export const BAD_USAGE = 2;
export type ExitCode = typeof DONE | typeof BAD_INPUT | typeof BAD_USAGE;

/** Where a command speaks: results on `out`, everything said to a person about the run on `err`. */
export interface Voice {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** Says every problem with its mend. */
export function sayProblems(voice: Voice, problems: readonly Problem[], units: UnitSystem = 'metric'): void {
  for (const problem of problems) {
    const { what, mend } = problemText(problem, units);
    voice.err(`${what} ${mend}\n`);
  }
}

/** Input that cannot be used: the problems said, the exit code for it. */
export function badInput(voice: Voice, problems: readonly Problem[], units?: UnitSystem): ExitCode {
  sayProblems(voice, problems, units);
  return BAD_INPUT;
}

/** A command line that cannot be meant: said with where to read on. */
export function badUsage(voice: Voice, wrong: string, command: string): ExitCode {
  voice.err(`platpace ${command}: ${wrong}. See platpace ${command} --help\n`.replaceAll('  ', ' '));
  return BAD_USAGE;
}
