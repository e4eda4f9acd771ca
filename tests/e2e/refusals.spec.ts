import { truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { type RunningApp, startApp } from './support/app.ts';
import { beginOnGrid, draw, goTo, ledgerRow, saved, typeAtFoot } from './support/hand.ts';

let app: RunningApp;
let page: Page;

test.beforeEach(async () => {
  app = await startApp();
  page = app.page;
});

test.afterEach(async () => {
  await app.close();
});

test('an outline that crosses itself is not closed, and the corners stay for mending', async () => {
  await beginOnGrid(page, 'Crossed');
  await draw(page, 'zone', '0,0', '40 90', '30 0', '50 200', '');
  const zones = page.getByRole('table', { name: /Zones and their areas/ });
  await expect(page.locator('.foot-line')).toContainText(/cross/i);
  await expect(zones.getByRole('button')).toHaveCount(0);
});

test('two corners are no zone', async () => {
  await beginOnGrid(page, 'Two corners');
  await draw(page, 'zone', '0,0', '40 90', '');
  await expect(page.locator('.foot-line')).toContainText(/corner/i);
  await expect(page.getByRole('table', { name: /Zones and their areas/ }).getByRole('button')).toHaveCount(0);
});

test('a bed outside every zone is said, and nothing is cut out for it', async () => {
  await beginOnGrid(page, 'Bed outside');
  await draw(page, 'zone', '0,0', '40 90', '30 0', '40 270', '');
  await draw(page, 'bed', '60,0', '10 90', '10 0', '10 270', '');
  expect((await ledgerRow(page, /Zones and their areas/, 'Zone 1'))[2]).toBe('0');
  await expect(page.getByText(/Bed 1.*outside/i)).toBeVisible();
});

for (const length of ['0', '-12', 'twelve']) {
  test(`a picture is not scaled by a length of "${length}"`, async () => {
    await goTo(page, 'Yards');
    await page.getByLabel('name or address').fill('Scale');
    const { encode } = await import('fast-png');
    const png = encode({
      width: 40,
      height: 30,
      data: new Uint8Array(40 * 30 * 3).fill(200),
      channels: 3,
      depth: 8,
    });
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'plan.png', mimeType: 'image/png', buffer: Buffer.from(png) });
    await page.getByRole('button', { name: 'set its scale by a known length' }).click();
    const box = await page.locator('.sketch img').first().boundingBox();
    if (box === null) throw new Error('the picture is not on the screen');
    await page.mouse.click(box.x + box.width * 0.2, box.y + box.height / 2);
    await page.mouse.click(box.x + box.width * 0.8, box.y + box.height / 2);
    await typeAtFoot(page, length);
    await expect(page.locator('.foot-prompt strong')).toBeVisible();
    await expect(page.getByText('no scale yet')).toBeVisible();
  });
}

test('files that are no yard, or hurt, are refused by name and leave nothing on the shelf', async () => {
  await goTo(page, 'Yards');
  const bring = async (name: string, text: string): Promise<void> => {
    await page
      .locator('input[type=file]')
      .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
  };
  await bring('torn.geojson', '{"type":"FeatureCollection","features":[{');
  await expect(page.locator('.notices')).toContainText('torn.geojson');
  await bring(
    'ring.geojson',
    JSON.stringify({
      type: 'Polygon',
      coordinates: [
        [
          [-86.2, 39.9],
          [-86.19, 39.9],
          [-86.2, 39.9],
        ],
      ],
    }),
  );
  await expect(page.locator('.notices')).toContainText('ring.geojson');
  await bring(
    'swapped.geojson',
    JSON.stringify({
      type: 'Polygon',
      coordinates: [
        [
          [39.9, -186.2],
          [39.9, -186.1],
          [39.91, -186.1],
          [39.9, -186.2],
        ],
      ],
    }),
  );
  await expect(page.locator('.notices')).toContainText('swapped.geojson');
  await expect(page.locator('.shelf .row-name')).toHaveCount(2); // the folder above and the sample yard
});

test('a yard file cut in half is refused and left as it is', async () => {
  await beginOnGrid(page, 'Halved');
  await draw(page, 'zone', '0,0', '40 90', '30 0', '40 270', '');
  await saved(page);
  await goTo(page, 'Yards');
  await page.getByRole('button', { name: 'Sample yard' }).click();
  await expect(page.getByRole('main')).toContainText('7 Larkfield Lane');
  truncateSync(join(app.yardsFolder, 'Halved.gpkg'), 40_000);
  writeFileSync(join(app.yardsFolder, 'Letter.gpkg'), 'Dear neighbour');
  await goTo(page, 'Yards');
  await page.getByRole('button', { name: 'Halved' }).click();
  await expect(page.locator('.notices')).toContainText('Halved.gpkg');
  await page.getByRole('button', { name: 'Letter' }).click();
  await expect(page.locator('.notices')).toContainText('Letter.gpkg');
});

test('a bottle too small for one square of the swath gives no plan, and says what to change', async () => {
  await goTo(page, 'Mix');
  const field = page.getByLabel('its bottle holds, undiluted');
  await field.fill('0.01');
  await field.press('Enter');
  await expect(page.locator('.needs-you').first()).toBeVisible();
  await expect(page.getByRole('table', { name: /Product and water/ })).toHaveCount(0);
});

test('a figure that cannot be read is said at its field and changes nothing', async () => {
  await goTo(page, 'Mix');
  const field = page.getByLabel('rate', { exact: true });
  const before = await field.inputValue();
  await field.fill('three');
  await field.press('Enter');
  await expect(page.getByRole('alert')).toContainText(/rate/i);
  await field.press('Escape');
  await expect(field).toHaveValue(before);
});
