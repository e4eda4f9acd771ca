import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

// Each file in mustNotCompile/ is compiled as core is and names the one error it must go on causing, as
// "// TS2345: why". Another error, or none, means that a net has a hole or that the case has rotted.
const HERE = dirname(fileURLToPath(import.meta.url));
const CASES = join(HERE, 'mustNotCompile');
const TSC = join(HERE, '../../node_modules/.bin/tsc');

const files = readdirSync(CASES).filter((name) => name.endsWith('.ts'));
const printed = spawnSync(TSC, ['-p', CASES, '--pretty', 'false'], { cwd: CASES, encoding: 'utf8' }).stdout;

/** Error codes by the file they are in, as the compiler printed them. */
function codesIn(file: string): string[] {
  const errors = printed.matchAll(/^(\S+?)\(\d+,\d+\): error (TS\d+):/gm);
  return [...errors].filter(([, path]) => path === file).map(([, , code]) => code as string);
}

test('there are cases to try', () => {
  expect(files.length).toBeGreaterThan(0);
});

test.each(files)('%s is refused by the compiler, for its own reason', (file) => {
  const [, code] = /^\/\/ (TS\d+): ./m.exec(readFileSync(join(CASES, file), 'utf8')) ?? [];
  expect(code).toBeDefined();
  expect(codesIn(file)).toEqual([code]); // the code the case states
});

test('what core may do does compile', () => {
  const [control = ''] = readdirSync(join(CASES, 'control'));
  expect(control).toMatch(/\.ts$/);
  expect(codesIn(`control/${control}`)).toEqual([]); // it keeps to the rules, so no error has a place in it
});
