import { resolve } from 'node:path';

/** The yard file named on a command line, as a whole path; null when none is. Switches are not ours to read. */
export function yardArgument(argv: readonly string[], workingFolder: string): string | null {
  const named = argv.slice(1).find((argument) => !argument.startsWith('-') && /\.gpkg$/i.test(argument));
  return named === undefined ? null : resolve(workingFolder, named);
}
