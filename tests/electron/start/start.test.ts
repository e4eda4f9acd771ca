import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const START = fileURLToPath(new URL('../../../electron/start/start.mjs', import.meta.url));

test('a yard file that is not there is said in one line, named from where the person stands', () => {
  const environment = { ...process.env, INIT_CWD: tmpdir() };
  const done = spawnSync(process.execPath, [START, 'no such.gpkg'], { encoding: 'utf8', env: environment });
  expect(done.status).toBe(1); // the exit code of a start that failed
  expect(done.stdout).toBe('');
  expect(done.stderr.trim().split('\n')).toEqual([`platpace: there is no file ${tmpdir()}/no such.gpkg`]); // as named
});
