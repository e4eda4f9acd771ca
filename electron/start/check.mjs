// npm run check: type-checks every project; each must pass by itself.
import { pathToFileURL } from 'node:url';
import { ensureInstalled } from './ensure.mjs';
import { runNode, say } from './tools.mjs';

const PROJECTS = ['core', 'electron', 'electron/shell', 'renderer', 'tests'];

/** @returns the projects that do not compile */
export function checkTypes() {
  return PROJECTS.filter((project) => {
    say(`types of ${project}`);
    return runNode(['node_modules/typescript/bin/tsc', '-p', project]) !== 0;
  });
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) {
  ensureInstalled();
  process.exitCode = checkTypes().length === 0 ? 0 : 1;
}
