import { expect, type Page, test } from '@playwright/test';
import { startApp } from './support/app.ts';
import { columnOf, goTo } from './support/hand.ts';

const FRESH = 'Up to date with the ground and the job';

async function fresh(page: Page): Promise<void> {
  await expect(page.getByText(FRESH)).toBeVisible({ timeout: 40_000 });
}

function part(page: Page, title: string) {
  return page
    .locator('details.folded')
    .filter({ has: page.getByRole('heading', { name: title, exact: true }) });
}

async function open(page: Page, title: string): Promise<void> {
  await part(page, title).locator('summary').click();
}

/** A figure of the sum under the sections, by how its column's head begins. */
async function sumOf(page: Page, head: string): Promise<string> {
  const table = page.getByRole('table', { name: 'Sections in walking order' });
  const cells = table.getByRole('row').last().getByRole('cell');
  return ((await cells.nth(await columnOf(table, head)).textContent()) ?? '').trim();
}

async function walkFt(page: Page): Promise<number> {
  return Number((await sumOf(page, 'walk')).replaceAll(',', ''));
}

test('what is asked of the plan is asked on the Walk page, seen in the plan, and undone step by step', async () => {
  // Seven plans one after the other, on a machine that may have other work.
  test.setTimeout(240_000);
  const app = await startApp();
  const { page } = app;
  await goTo(page, 'Walk');
  await fresh(page);
  const groundAtFirst = await sumOf(page, 'treated');
  const walkAtFirst = await walkFt(page);

  // Both ways to share out, side by side, before one is chosen.
  await open(page, 'Loads');
  const compared = page.getByRole('table', { name: 'What each way of sharing out comes to' });
  const loads = compared
    .getByRole('row')
    .filter({ has: page.getByRole('cell', { name: 'loads', exact: true }) });
  await expect(loads).toBeVisible({ timeout: 20_000 });
  const [, even, full] = await loads.getByRole('cell').allInnerTexts();
  expect(Number(full)).toBeLessThanOrEqual(Number(even)); // full loads are never more than even ones
  await expect(part(page, 'Loads').locator('summary')).toContainText(`even loads in each zone, ${even}`);
  await page.getByRole('radio', { name: 'full loads' }).check();
  await fresh(page);
  await expect(part(page, 'Loads').locator('summary')).toContainText(
    `full loads, from zone to zone, ${full}`,
  );
  expect(await sumOf(page, 'treated')).toBe(groundAtFirst); // the same ground, shared out another way

  await open(page, 'Lanes');
  await page.getByLabel('lanes run').selectOption('turned-45');
  await page.getByLabel('last time’s bearing').fill('10');
  await page.getByLabel('last time’s bearing').press('Enter');
  await fresh(page);
  await expect(part(page, 'Lanes').locator('summary')).toContainText('55°'); // 10 + 45
  await expect.poll(() => walkFt(page)).toBeGreaterThan(0);
  const walkOnce = await walkFt(page);

  await page.getByLabel('walked').selectOption('2');
  await expect(page.getByText('Set the spreader or dial to half')).toBeVisible();
  await fresh(page);
  await expect.poll(() => walkFt(page)).toBeGreaterThan(1.6 * walkOnce); // twice, give or take turns and ends
  await expect.poll(() => walkFt(page)).toBeLessThan(2.4 * walkOnce);

  await open(page, 'Start and finish');
  await page.getByLabel('starts at').selectOption({ label: 'back spigot' });
  await page.getByLabel('finishes at').selectOption({ label: 'front spigot' });
  await expect(part(page, 'Start and finish').locator('summary')).toContainText('starts at back spigot');
  await fresh(page);

  await open(page, 'Hose');
  await page.getByLabel('dragged behind').selectOption('hose');
  await fresh(page);
  await expect(part(page, 'Hose').getByRole('table').first()).toBeVisible(); // what each section takes of it

  // Every step back, and the plan is the one from the beginning.
  await page.getByRole('application').focus();
  for (let step = 0; step < 7; step++) await page.keyboard.press('Control+z');
  await expect(part(page, 'Start and finish').locator('summary')).toContainText('wherever suits the walk');
  await expect(page.getByRole('radio', { name: 'even loads' })).toBeChecked();
  await fresh(page);
  await expect.poll(() => walkFt(page), { timeout: 20_000 }).toBe(walkAtFirst); // the same yard gives the same plan
  expect(app.complaints).toEqual([]);
  await app.close();
});

test('a plan from before a change says so until the new one is there', async () => {
  test.setTimeout(120_000);
  const app = await startApp();
  const { page } = app;
  await goTo(page, 'Walk');
  await fresh(page);
  const seen = page.evaluate(
    () =>
      new Promise<string[]>((resolve) => {
        const said: string[] = [];
        const line = document.querySelector('.plan-standing span');
        const watch = new MutationObserver(() => {
          const words = line?.textContent ?? '';
          said.push(words);
          if (said.length > 1 && words.startsWith('Up to date')) {
            watch.disconnect();
            resolve(said);
          }
        });
        if (line !== null) watch.observe(line, { childList: true, characterData: true, subtree: true });
      }),
  );
  await open(page, 'Lanes');
  await page.getByLabel('lanes run').selectOption('picked');
  const said = await seen;
  expect(said[0]).toContain('From before the change'); // at once, before anything is worked out
  expect(said.at(-1)).toBe(FRESH);
  expect(app.complaints).toEqual([]);
  await app.close();
});
