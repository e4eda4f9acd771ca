import { runAreas } from './areas.ts';
import { runCheck } from './check.ts';
import { runConvert } from './convert.ts';
import { HELP } from './help.ts';
import { BAD_USAGE, DONE, type ExitCode, type Voice } from './outcome.ts';
import { runPlan } from './plan.ts';

const COMMANDS: Readonly<Record<string, (words: readonly string[], voice: Voice) => Promise<ExitCode>>> = {
  areas: runAreas,
  plan: runPlan,
  convert: runConvert,
  check: runCheck,
};

/** Runs one command line (without the program's own name) and says how it ended. */
export async function runCommand(words: readonly string[], voice: Voice): Promise<ExitCode> {
  const [name = '', ...rest] = words;
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  const asksForHelp = words.includes('--help') || words.includes('-h') || name === 'help';
  if (asksForHelp) {
    const about = command !== undefined ? name : name === 'help' ? (rest[0] ?? '') : '';
    voice.out((Object.hasOwn(HELP, about) ? HELP[about] : HELP['']) ?? '');
    return DONE;
  }
  if (command === undefined) {
    voice.err(
      name === '' ? (HELP[''] ?? '') : `platpace: there is no command ${name}. See platpace --help\n`,
    );
    return BAD_USAGE;
  }
  return command(rest, voice);
}
