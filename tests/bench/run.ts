/**
 * Runs every bench of this folder, one after the other, each in a process of its own so that none warms up another.
 * Run: `npm run bench`; what follows is handed on (`-- --quick`). Numbers inform, they do not gate.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';

const own = basename(fileURLToPath(import.meta.url));
const benches = readdirSync(new URL('.', import.meta.url))
  .filter((name) => name.endsWith('.ts') && name !== own)
  .sort();
let broken = 0;
for (const name of benches) {
  console.log(`\n== ${name} ==`);
  const file = fileURLToPath(new URL(name, import.meta.url));
  const ended = spawnSync(process.execPath, [file, ...process.argv.slice(2)], { stdio: 'inherit' });
  if (ended.status === 0) continue;
  broken += 1;
  console.log(`${name} ended with ${ended.status ?? ended.signal}`);
}
process.exitCode = broken === 0 ? 0 : 1;
