import { BAD_INPUT } from './outcome.ts';
import { runCommand } from './runCommand.ts';

/** The headless command: `platpace areas | plan | convert | check`. */

// npm runs scripts in the project's folder; the person's paths are meant from where they stand.
const { INIT_CWD, npm_lifecycle_event } = process.env;
if (npm_lifecycle_event === 'platpace' && INIT_CWD !== undefined) process.chdir(INIT_CWD);

// A reader that has seen enough (`| head`) closes the pipe; that is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

try {
  process.exitCode = await runCommand(process.argv.slice(2), {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
  });
} catch (error) {
  // A Defect: ours to mend, and told apart from bad input by its stack.
  const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(`platpace: a fault of the program, not of the file. Please report it:\n${told}\n`);
  process.exitCode = BAD_INPUT;
}
