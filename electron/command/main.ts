import { runCommand } from './runCommand.ts';

/** The headless command: `platpace areas | plan | convert | check`. */
process.exitCode = await runCommand(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
});
