import { readdirSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { startApp } from './support/app.ts';
import { footField, giveMix, ledgerRow, saved } from './support/hand.ts';

test('a yard is begun, drawn, planned and found again by keyboard alone', async () => {
  const app = await startApp();
  const { page } = app;
  /** Tabs to the button with these words and presses it. */
  const press = async (words: string): Promise<void> => {
    await page.getByRole('button', { name: words, exact: true }).focus();
    await page.keyboard.press('Enter');
  };
  const type = async (...lines: string[]): Promise<void> => {
    for (const line of lines) {
      await expect(footField(page)).toBeVisible();
      await page.keyboard.type(line);
      await page.keyboard.press('Enter');
    }
  };

  await expect(page.getByText('all saved')).toBeVisible();
  await page.keyboard.press('Alt+1');
  await page.getByLabel('name or address').focus();
  await page.keyboard.type('Keyboard yard');
  await press('on a bare grid');
  await expect(page.getByRole('main')).toContainText('Keyboard yard');

  await press('zone');
  await type('0,0', '60 90', '40 0', '60 270', '');
  // 60 ft x 40 ft, worked by hand
  await expect
    .poll(() => ledgerRow(page, /Zones and their areas/, 'Zone 1'))
    .toEqual(['Zone 1', '2,400', '0', '2,400', '2,400']);

  await press('bed');
  await type('10,10', '10 90', '10 0', '10 270', '');
  await press('hardscape');
  // A drive of 10 ft that sticks 5 ft out of the zone to the south: 10 x 20 ft lie in it.
  await type('40,-5', '10 90', '25 0', '10 270', '');
  // 2,400 - 10 x 10 - 10 x 20, worked by hand
  await expect
    .poll(() => ledgerRow(page, /Zones and their areas/, 'Zone 1'))
    .toEqual(['Zone 1', '2,400', '300', '2,100', '2,100']);

  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await page.getByRole('application').focus();
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('table', { name: /Zones and their areas/ })).toContainText('2,300');
  await page.keyboard.press('Control+Shift+z');
  await expect(page.getByRole('table', { name: /Zones and their areas/ })).toContainText('2,100');

  await giveMix(page);
  // 2,100 ft² at 3 fl oz per 1,000 ft² is 6.3 fl oz; 4 fl oz a bottle, so two loads
  await expect(page.getByRole('table', { name: /Treated area, loads and product/ })).toContainText('6.3');
  await expect
    .poll(() => ledgerRow(page, /Treated area, loads and product/, 'Zone 1'))
    .toEqual(['Zone 1', '2,100', '2', '6.3']);

  await page.keyboard.press('Alt+5');
  await expect(page.getByRole('table', { name: /Sections in walking order/ })).toContainText('A2');
  await saved(page);
  const file = readdirSync(app.yardsFolder).find((name) => name.startsWith('Keyboard yard'));
  expect(file).toBe('Keyboard yard.gpkg');
  expect(app.complaints).toEqual([]);
  await app.close();
});
