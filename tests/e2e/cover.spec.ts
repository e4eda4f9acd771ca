import { expect, type Page, test } from '@playwright/test';
import { startApp } from './support/app.ts';
import { goTo, ledgerRow } from './support/hand.ts';

const LEDGER = /How the swaths cover/;
/** Ground missed is painted red here, so that its pixels are told from ink and paper; all but the cover is put away. */
const COVER_ALONE = `
  .ink > :not(.cover):not(defs), .sketch > :not(.sketch-map) { visibility: hidden !important; }
  .cover-missed { fill: #f00 !important; }
  .sketch-map { outline: none !important; }
`;

test('the ink on the sketch covers the shares of the ground that stand in the ledger', async () => {
  // The first plan may have to wait for other work on the machine.
  test.setTimeout(150_000);
  // Large, so that few pixels lie on an edge.
  const app = await startApp({ widthPx: 2400, heightPx: 1500 });
  const { page } = app;
  await goTo(page, 'Walk');
  await expect(page.getByText('Up to date with the ground and the job')).toBeVisible({ timeout: 40_000 });
  await expect(page.locator('.cover')).toHaveCount(0);
  const control = page.getByRole('checkbox', { name: /drawn on the sketch/ });
  await control.focus();
  await page.keyboard.press('Space');
  await expect(control).toBeChecked();

  const drawn = await drawnShares(page);
  for (const [depth, words] of ['missed', 'once', 'twice', '3 times or more'].entries()) {
    const [, , share] = await ledgerRow(page, LEDGER, words);
    // A pixel on an edge goes to the nearer ink: some 20,000 px of edges on 1,000,000 px of ground.
    expect(Math.abs((drawn[depth] ?? 0) - Number.parseFloat(share ?? '')), words).toBeLessThan(0.2);
  }

  await control.focus();
  await page.keyboard.press('Space');
  await expect(page.locator('.cover')).toHaveCount(0);
  expect(app.complaints).toEqual([]);
  await app.close();
});

/** Percent of the treated ground as drawn, by depth: missed, once, twice, three times or more. */
async function drawnShares(page: Page): Promise<number[]> {
  const wash = await page
    .locator('.cover g .cover-wash')
    .first()
    .evaluate((path) => {
      const { fill, fillOpacity } = getComputedStyle(path);
      return { red: Number(/\d+/.exec(fill)?.[0]), opacity: Number(fillOpacity) };
    });
  // The window lets in no style element, but sheets made by script.
  await page.evaluate((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [sheet];
  }, COVER_ALONE);
  const png = (await page.locator('.sketch').screenshot()).toString('base64');
  await page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });
  // On white, a wash over washes leaves the share of the paper that each lets through.
  const reds = [0, 1, 2, 3, 4, 5].map((depth) => wash.red + (255 - wash.red) * (1 - wash.opacity) ** depth);
  const blank = (await page.context().browser()?.newPage()) as Page;
  const counts = await blank.evaluate(
    async ({ png, reds }) => {
      const image = new Image();
      image.src = `data:image/png;base64,${png}`;
      await image.decode();
      const canvas = new OffscreenCanvas(image.width, image.height);
      const pen = canvas.getContext('2d') as OffscreenCanvasRenderingContext2D;
      pen.drawImage(image, 0, 0);
      const { data } = pen.getImageData(0, 0, image.width, image.height);
      const counts = [0, 0, 0, 0];
      for (let at = 0; at < data.length; at += 4) {
        const [red, green] = [data[at] as number, data[at + 1] as number];
        const off = reds.map((level) => Math.abs(level - red));
        const isMissed = red - green > 127;
        const depth = isMissed ? 0 : off.indexOf(Math.min(...off));
        // Paper beside the ground: no wash, and not painted red.
        if (depth === 0 && !isMissed) continue;
        const place = Math.min(depth, 3);
        counts[place] = (counts[place] as number) + 1;
      }
      return counts;
    },
    { png, reds },
  );
  await blank.close();
  const ground = counts.reduce((sum, count) => sum + count, 0);
  expect(ground).toBeGreaterThan(500_000);
  return counts.map((count) => (100 * count) / ground);
}
