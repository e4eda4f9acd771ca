// What the start scripts share. Plain JavaScript for the Node a machine happens to have (20 or newer), with
// nothing from node_modules: that may not be there yet.
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { delimiter, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** One line of progress. */
export function say(line) {
  console.log(`platpace: ${line}`);
}

/** Ends with a line that says what is wrong and what mends it. */
export function giveUp(line) {
  console.error(`platpace: ${line}`);
  process.exit(1);
}

/** The Node the project runs on, brought by the package `node`; the machine's own may be too old. */
export function ownNode() {
  const folder = join(ROOT, 'node_modules', 'node', 'bin');
  return join(folder, process.platform === 'win32' ? 'node.exe' : 'node');
}

/** Runs a command to its end, its output as it comes. @returns its exit code */
export function run(command, args, environment = process.env) {
  const isBatch = process.platform === 'win32' && command === 'npm';
  const done = spawnSync(command, args, { cwd: ROOT, stdio: 'inherit', env: environment, shell: isBatch });
  return done.status ?? 1;
}

/** Runs a script of ours or of a package on the project's Node. */
export function runNode(args, environment = withOwnNode()) {
  return run(ownNode(), args, environment);
}

/** Becomes another program as far as the person can tell: same output, same signals, same exit code. */
export function become(command, args) {
  // Compiled code is kept from one start to the next, which halves the time to the window.
  const environment = { ...withOwnNode(), NODE_COMPILE_CACHE: join(ROOT, 'dist', 'compile-cache') };
  const child = spawn(command, args, { cwd: ROOT, stdio: 'inherit', env: environment });
  // Ctrl-C reaches the child by itself, being of the same group; this process only waits for it.
  process.on('SIGINT', () => {});
  for (const signal of ['SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
  child.on('error', (error) => giveUp(`${command} does not start: ${error.message}`));
  child.on('exit', (code, signal) => process.exit(code ?? (signal ? 1 : 0)));
}

/** The environment with the project's Node and tools first on the path. */
export function withOwnNode() {
  return { ...process.env, PATH: [join(ROOT, 'node_modules', '.bin'), process.env.PATH].join(delimiter) };
}

/** The environment with nothing of node_modules on the path, for a command that replaces node_modules. */
export function withoutOwnNode() {
  const folders = (process.env.PATH ?? '').split(delimiter);
  const others = folders.filter((folder) => !folder.startsWith(join(ROOT, 'node_modules') + sep));
  return { ...process.env, PATH: others.join(delimiter) };
}

/** A digest of every file in some folders or files of the project, names included. */
export function digestOf(...names) {
  const hash = createHash('sha256');
  for (const name of names)
    for (const path of filesIn(name)) hash.update(path).update(readFileSync(join(ROOT, path)));
  return hash.digest('hex');
}

function filesIn(name) {
  if (!existsSync(join(ROOT, name))) return [];
  try {
    const entries = readdirSync(join(ROOT, name)).filter((entry) => !entry.startsWith('.'));
    return entries.sort().flatMap((entry) => filesIn(join(name, entry)));
  } catch (error) {
    if (error.code === 'ENOTDIR') return [name];
    throw error;
  }
}

/** Whether a command is on the path. */
export function isOnPath(command) {
  return (process.env.PATH ?? '')
    .split(delimiter)
    .some((folder) => folder !== '' && existsSync(join(folder, command)));
}
