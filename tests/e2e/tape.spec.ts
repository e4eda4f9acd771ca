import { expect, test } from '@playwright/test';
import { startApp } from './support/app.ts';
import { beginOnGrid, ledgerRow } from './support/hand.ts';

test('a rectangle of 50 ft by 25 ft is drawn from its tape lengths and holds 1,250 ft²', async () => {
  const app = await startApp();
  const { page } = app;
  await beginOnGrid(page, 'Taped yard');
  const part = page.locator('details').filter({ hasText: 'Draw by tape' });
  await part.getByText('Draw by tape').click();
  await part.getByLabel('length').fill('50');
  await part.getByLabel('width').fill('25 ft');
  await part.getByLabel('width').press('Enter');
  // Clemson Cooperative Extension, HGIC 1220: 50 ft × 25 ft = 1,250 ft²
  await expect(part).toContainText('1,250 ft²');

  await part.getByRole('button', { name: 'draw it' }).click();
  await expect
    .poll(() => ledgerRow(page, /Zones and their areas/, 'Zone 1'))
    .toEqual([
      'Zone 1',
      '1,250', // the same source
      '0',
      '1,250',
      '1,250 ± 8', // the usual 0.15 ft a corner: 0.15 × √(50² + 25²) = 8.4
    ]);
  await expect(page.locator('section.part').filter({ hasText: 'In hand' })).toContainText('4 corners');

  await page.getByRole('application').focus();
  await page.keyboard.press('Control+z');
  await expect(page.getByText('No zone yet.')).toBeVisible();
  expect(app.complaints).toEqual([]);
  await app.close();
});
