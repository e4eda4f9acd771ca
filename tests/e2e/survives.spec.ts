import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { startApp } from './support/app.ts';
import { beginOnGrid, draw, goTo, ledgerRow, saved } from './support/hand.ts';

test('the host is killed in the middle of the work: what was drawn is there again, and so is undo', async () => {
  const app = await startApp();
  const { page } = app;
  await beginOnGrid(page, 'Power cut', 'metric');
  await draw(page, 'zone', '0,0', '20 90', '15 0', '20 270', '');
  await draw(page, 'bed', '2,2', '4 90', '5 0', '4 270', '');
  await saved(page);
  await app.killHost();

  // Drawn after the cut: nobody is there to write it down, and the window says so and takes it back.
  await page.getByRole('button', { name: 'water', exact: true }).click();
  for (const line of ['10,10', '2 90', '2 0', '2 270', '']) {
    const field = page.locator('.foot-line input');
    await field.fill(line);
    await field.press('Enter');
  }
  await expect(page.getByText('not saved')).toBeVisible();
  await expect(page.locator('.notices')).toBeVisible();

  await app.restart(join(app.yardsFolder, 'Power cut.gpkg'));
  await goTo(page, 'Outlines');
  // 20 m x 15 m less 4 m x 5 m, worked by hand
  await expect
    .poll(() => ledgerRow(page, /Zones and their areas/, 'Zone 1'))
    .toEqual(['Zone 1', '300.0', '20.0', '280.0', '280.0']);
  await page.getByRole('application').focus();
  await page.keyboard.press('Control+z');
  await expect
    .poll(() => ledgerRow(page, /Zones and their areas/, 'Zone 1'))
    .toEqual(['Zone 1', '300.0', '0.0', '300.0', '300.0']);
  await app.close();
});
