import { expect, type Locator, type Page } from '@playwright/test';

/** What a person does with the book, in the book's own words. */

export async function goTo(page: Page, tab: string): Promise<void> {
  await page
    .getByRole('navigation', { name: 'Steps' })
    .getByRole('button', { name: tab, exact: true })
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(tab);
}

/** Types into the one line at the foot and presses Enter. */
export async function typeAtFoot(page: Page, ...lines: readonly string[]): Promise<void> {
  const field = footField(page);
  for (const line of lines) {
    await field.fill(line);
    await field.press('Enter');
  }
}

export function footField(page: Page) {
  return page.locator('.foot-line input');
}

export async function beginOnGrid(page: Page, name: string, units = 'us'): Promise<void> {
  await goTo(page, 'Yards');
  await page.getByLabel('name or address').fill(name);
  await page.getByLabel('measured in').selectOption(units);
  await page.getByRole('button', { name: 'on a bare grid' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Outlines');
}

export async function draw(page: Page, kind: string, ...lines: readonly string[]): Promise<void> {
  await page.getByRole('button', { name: kind, exact: true }).click();
  await typeAtFoot(page, ...lines);
}

/** The figures of one row of a ledger, by the row's name. */
export async function ledgerRow(page: Page, caption: RegExp, name: string): Promise<string[]> {
  const table = page.getByRole('table', { name: caption });
  const row = table.getByRole('row').filter({ has: page.getByRole('cell', { name, exact: true }) });
  return row.getByRole('cell').allInnerTexts();
}

export async function saved(page: Page): Promise<void> {
  await expect(page.getByText('all saved')).toBeVisible();
}

/** A product and a sprayer, as a first-time user types them. */
export async function giveMix(page: Page): Promise<void> {
  await goTo(page, 'Mix');
  await page.getByLabel('name').first().fill('Invented feed');
  await page.getByLabel('label rate').fill('3');
  await page.getByRole('button', { name: 'add this product' }).click();
  await page.getByLabel('kind').selectOption('hose-end');
  await page.getByLabel('its bottle holds, undiluted').fill('4');
  await page.getByLabel('water it puts down').fill('2');
  await page.getByLabel('swath that counts').fill('6');
  await page.getByLabel('walking pace').fill('2');
  await page.getByRole('button', { name: 'add this sprayer' }).click();
}

/** The place of a column by how its head begins: the ledgers have more columns where there is more to say. */
export async function columnOf(table: Locator, head: string): Promise<number> {
  const heads = await table.getByRole('columnheader').allInnerTexts();
  const place = heads.findIndex((text) => text.trim().toLowerCase().startsWith(head));
  if (place < 0) throw new Error(`no column ${head} among ${heads.join(', ')}`);
  return place;
}
