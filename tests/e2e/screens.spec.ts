import { copyFileSync, mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { startApp } from './support/app.ts';
import { goTo } from './support/hand.ts';

const PICTURES = fileURLToPath(new URL('../../test-results/pictures/', import.meta.url));
/** The one picture the README shows; renewed when asked for, so that a test run leaves the tree clean. */
const README_PICTURE = fileURLToPath(new URL('./pictures/walk-day-1280x800.png', import.meta.url));
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TABS = ['Yards', 'Ground', 'Outlines', 'Mix', 'Walk', 'Sheet'] as const;
const SIZES = [
  [1280, 800],
  [1920, 1080],
  [820, 700],
] as const;

for (const lamp of ['day', 'night'] as const) {
  for (const [widthPx, heightPx] of SIZES) {
    test(`every page can be read by ${lamp} at ${widthPx} x ${heightPx}`, async () => {
      const app = await startApp({ widthPx, heightPx, lamp: lamp === 'day' ? 'light' : 'dark' });
      const { page } = app;
      mkdirSync(PICTURES, { recursive: true });
      for (const tab of TABS) {
        await goTo(page, tab);
        if (tab === 'Mix') await expect(page.getByRole('table', { name: /Product and water/ })).toBeVisible();
        if (tab === 'Walk')
          await expect(page.getByRole('table', { name: /Sections in walking/ })).toBeVisible();
        if (tab === 'Sheet') await expect(page.getByRole('img', { name: 'Printed page' })).toBeVisible();
        const picture = `${PICTURES}${tab.toLowerCase()}-${lamp}-${widthPx}x${heightPx}.png`;
        await page.screenshot({ path: picture });
        if (process.env.PLATPACE_RENEW_PICTURE && README_PICTURE.endsWith(basename(picture))) {
          copyFileSync(picture, README_PICTURE);
        }
        expect(await overflowing(page), `${tab} is wider than its page`).toEqual([]);
        expect(await faultsOf(page), `${tab} by ${lamp}`).toEqual([]);
      }
      expect(app.complaints).toEqual([]);
      await app.close();
    });
  }
}

/** Words of the left page that run out of it sideways. */
async function overflowing(page: Page): Promise<string[]> {
  return page.locator('.left-scroll').evaluate((scroll) => {
    const right = scroll.getBoundingClientRect().right;
    return [...scroll.querySelectorAll('*')]
      .filter((element) => element.getBoundingClientRect().right > right + 1 && !element.closest('.unseen'))
      .map((element) => element.textContent?.slice(0, 40) ?? '');
  });
}

/** What an accessibility checker finds, WCAG 2.2 A and AA. */
async function faultsOf(page: Page): Promise<string[]> {
  const found: string = await page.evaluate(`(() => {
    ${AXE}
    const tags = ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'];
    return window.axe.run(document, { runOnly: { type: 'tag', values: tags } }).then((result) =>
      JSON.stringify(result.violations.map((one) => one.id + ': ' + one.nodes.map((n) => n.target + ' ' + (n.any[0]?.message ?? '')).slice(0, 3).join(' | '))));
  })()`);
  return JSON.parse(found);
}
