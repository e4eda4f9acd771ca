import { expect, type Page, test } from '@playwright/test';
import { startApp } from './support/app.ts';
import { beginOnGrid, draw, ledgerRow, typeAtFoot } from './support/hand.ts';

async function zoneFt2(page: Page): Promise<string | undefined> {
  return (await ledgerRow(page, /Zones and their areas/, 'Zone 1'))[1];
}

test('a half circle is traced by typing, its arc given another radius, then dragged by its point', async () => {
  const app = await startApp();
  const { page } = app;
  await beginOnGrid(page, 'Round yard');
  await draw(page, 'zone', '0,0', '200,0', 'arc 100 ft right', '');
  // ½ π r² = ½ π 100² = 15,708 ft²
  expect(await zoneFt2(page)).toBe('15,708');

  // Round the outline: corner 1, corner 2, the arc that begins there.
  for (let i = 0; i < 3; i++) await page.keyboard.press('PageDown');
  const edge = page.locator('section.part').filter({ hasText: 'from corner 2 to corner 1' });
  await expect(edge.getByLabel('radius')).toHaveValue('100.0');
  await typeAtFoot(page, '125');
  // A segment of r = 125 ft on a chord of 200 ft: θ = 2 asin(100 / 125), ½ r² (θ − sin θ)
  const theta = 2 * Math.asin(100 / 125);
  const segmentFt2 = Math.round((125 ** 2 / 2) * (theta - Math.sin(theta)));
  await expect.poll(() => zoneFt2(page)).toBe(segmentFt2.toLocaleString('en-US'));

  await page.keyboard.press('Home');
  const box = await page.locator('.hand .corner.chosen').boundingBox();
  if (box === null) throw new Error('the chosen point of the arc is not drawn');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 3, y - 40, { steps: 4 });
  await page.mouse.up();
  await expect
    .poll(async () => Number((await zoneFt2(page))?.replace(',', '')))
    .toBeGreaterThan(segmentFt2 + 100); // the arc bulges farther
  await expect(edge.getByRole('button', { name: 'arc', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await page.getByRole('application').focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => zoneFt2(page)).toBe(segmentFt2.toLocaleString('en-US'));
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('a circle by its radius holds π r², and so it does when the yard is opened again', async () => {
  const app = await startApp();
  const { page } = app;
  await beginOnGrid(page, 'Circle yard');
  await draw(page, 'zone', 'circle', '0,0', '50');
  // π 50² = 7,854 ft²
  expect(await zoneFt2(page)).toBe('7,854');
  await expect(page.getByText('all saved')).toBeVisible();
  await app.restart();
  await page.getByRole('navigation', { name: 'Steps' }).getByRole('button', { name: 'Outlines' }).click();
  await expect.poll(() => zoneFt2(page)).toBe('7,854');
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('an edge that crosses is uncrossed by a key, and only closed when the person says so', async () => {
  const app = await startApp();
  const { page } = app;
  await beginOnGrid(page, 'Crossed yard');
  await draw(page, 'zone', '0,0', '40,40', '40,0', '0,40', '');
  await expect(page.locator('.foot-line')).toContainText('crosses itself');
  await page.keyboard.press('Control+m');
  await expect(page.getByText('No zone yet.')).toBeVisible();
  await page.keyboard.press('Enter');
  // 40 ft × 40 ft
  await expect.poll(() => zoneFt2(page)).toBe('1,600');
  expect(app.complaints).toEqual([]);
  await app.close();
});
