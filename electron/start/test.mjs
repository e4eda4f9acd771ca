// npm test: everything, from a fresh clone. Types, then unit, law, oracle, layer and fuzz tests, then the built
// app in a browser. Closes with one line that adds up what the two test runners report.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { checkTypes } from './check.mjs';
import { ensureInstalled, ensurePage, ensureShell } from './ensure.mjs';
import { ensureSystem } from './ensureSystem.mjs';
import { ROOT, runNode, say, withOwnNode } from './tools.mjs';

const REPORTS = join(ROOT, 'test-results');

// A log has no use for colours, and the runners' own guess is wrong where CI is set.
if (!process.stdout.isTTY) process.env.NO_COLOR = '1';

ensureInstalled();
ensureSystem();
rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });

const brokenProjects = checkTypes().map((project) => `the types of ${project}`);
ensurePage();
ensureShell();
say('unit, law, oracle, layer and fuzz tests');
const units = runVitest();
say('the built app in a browser');
const clicks = runPlaywright();

// A step that broke outside any test is a failure that no test counts: it is counted here.
const broken = [...brokenProjects, ...units.broken, ...clicks.broken];
for (const what of broken) console.log(`platpace: broken: ${what}`);
const passed = units.passed + clicks.passed;
const failed = units.failed + clicks.failed + broken.length;
const skipped = units.skipped + clicks.skipped;
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;

function runVitest() {
  const path = join(REPORTS, 'vitest.json');
  const code = runNode([
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${path}`,
  ]);
  const report = readReport(path);
  if (report === null) return nothing('the unit tests wrote no report');
  const failed = report.numFailedTests;
  // A file that cannot be loaded fails without a test of its own that failed.
  const files = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((each) => each.status === 'failed'),
  );
  const broken = files.map((file) => `${file.name} does not run`);
  if (code !== 0 && failed === 0 && broken.length === 0) broken.push('the unit tests ended with an error');
  const skipped = report.numPendingTests + (report.numTodoTests ?? 0);
  return { passed: report.numPassedTests, failed, skipped, broken };
}

function runPlaywright() {
  const path = join(REPORTS, 'playwright.json');
  const code = runNode(
    [
      'node_modules/@playwright/test/cli.js',
      'test',
      '--config=tests/e2e/playwright.config.ts',
      '--reporter=line,json',
    ],
    { ...withOwnNode(), PLAYWRIGHT_JSON_OUTPUT_NAME: path },
  );
  const report = readReport(path);
  if (report === null) return nothing('the browser tests wrote no report');
  const { expected, unexpected, flaky, skipped } = report.stats;
  const failed = unexpected + flaky;
  const broken = report.errors.map((error) => `the browser tests: ${error.message}`);
  if (code !== 0 && failed === 0 && broken.length === 0) broken.push('the browser tests ended with an error');
  return { passed: expected, failed, skipped, broken };
}

function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null;
}

function nothing(why) {
  return { passed: 0, failed: 0, skipped: 0, broken: [why] };
}
