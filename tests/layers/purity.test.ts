import { describe, expect, test } from 'vitest';
import { pathsUnder, readSources, type SourceFile } from '../support/sourceFiles.ts';

const CORE = readSources('core');
const ALL = readSources('core', 'electron', 'renderer', 'tests');

/** What makes the same yard give different bytes on another day, machine or language. */
const HIDDEN_INPUTS: readonly (readonly [string, RegExp])[] = [
  ['the clock', /\bDate\.now\b|\bnew Date\b|\bperformance\b/],
  ['chance', /\bMath\.random\b|\brandomUUID\b/],
  ['the language of the machine', /\btoLocale\w*|\bIntl\b|\blocaleCompare\b/],
  ['state that outlives a call', /^(export )?(let|var)\b/m],
  ['the console', /\bconsole\b/],
];

function hiddenInputsOf(code: string): readonly string[] {
  return HIDDEN_INPUTS.filter(([, pattern]) => pattern.test(code)).map(([name]) => name);
}

describe('core computes from its arguments alone', () => {
  test('no file of core uses a hidden input', () => {
    const faults = CORE.flatMap((file) => hiddenInputsOf(file.code).map((name) => `${file.path}: ${name}`));
    expect(faults).toEqual([]); // house rule: time, chance and language are arguments
  });

  test.each([
    'const now = Date.now();',
    'const now = new Date();',
    'const x = Math.random();',
    'x.toLocaleString();',
    'const f = new Intl.NumberFormat();',
    'let count = 0;',
    'export let count = 0;',
    'console.warn(x);',
  ])('the rule catches %s', (code) => {
    expect(hiddenInputsOf(code)).toHaveLength(1); // each line above uses one
  });
});

const MOST_LINES = 400;

test(`no file is longer than ${MOST_LINES} lines`, () => {
  const long = ALL.filter(({ text }) => text.split('\n').length > MOST_LINES + 1);
  expect(long.map(({ path }) => path)).toEqual([]); // house rule: split it by idea
});

/** A line of comment that is a statement: begins as one and ends as one. */
const STATEMENT =
  /^\s*\/\/ ?(const|let|var|if|for|while|return|import|export|await|function|throw)\b.*[;{]$/m;

test('no code is commented out', () => {
  expect('  // const a = 1;').toMatch(STATEMENT);
  expect('// return early when there is nothing to do').not.toMatch(STATEMENT);
  expect(ALL.filter(({ text }) => STATEMENT.test(text)).map(({ path }) => path)).toEqual([]); // house rule
});

/** A file that says only what things look like has nothing to run. */
function hasCodeToRun({ code }: SourceFile): boolean {
  return /^(export )?(default |async )?(function|const|class)\b/m.test(code);
}

test('every file of core that has code has a test beside its name', () => {
  const tests = new Set(pathsUnder('tests'));
  const bare = CORE.filter((file) => !file.path.endsWith('/index.ts') && hasCodeToRun(file))
    .map((file) => `tests/${file.path.replace(/\.ts$/, '.test.ts')}`)
    .filter((path) => !tests.has(path));
  expect(bare).toEqual([]); // house rule: each core file has its mirrored test
});
