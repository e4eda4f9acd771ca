import { defineConfig } from '@playwright/test';
import { findBrowser } from '../../electron/local/findBrowser.ts';

const browser = findBrowser(process.env);
if (browser === undefined) throw new Error('no browser was found; install chromium');

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results/e2e',
  timeout: 60_000,
  // One window at a time: the machine has few cores, and a plan under way on the other would spoil timings.
  workers: 1,
  use: {
    viewport: { width: 1440, height: 920 },
    launchOptions: {
      executablePath: browser,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
    trace: 'retain-on-failure',
  },
});
