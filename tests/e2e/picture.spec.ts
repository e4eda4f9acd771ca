import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { encode } from 'fast-png';
import { startApp } from './support/app.ts';
import { draw, giveMix, goTo, ledgerRow, saved, typeAtFoot } from './support/hand.ts';

/** The sketch: a lawn of 400 x 300 px with a bed of 100 x 60 px in it, on a page of 600 x 440 px. */
const PAGE_PX = { width: 600, height: 440 };
const LAWN_PX = { left: 100, top: 70, width: 400, height: 300 };
const BED_PX = { left: 150, top: 120, width: 100, height: 60 };

test('a picture of a sketch becomes a yard: scaled by one length, traced by mouse, planned, printed, reopened', async () => {
  const app = await startApp();
  const { page } = app;
  await goTo(page, 'Yards');
  await page.getByLabel('name or address').fill('Sketched yard');
  await page.locator('input[type=file]').setInputFiles({
    name: 'sketch.png',
    mimeType: 'image/png',
    buffer: Buffer.from(sketchPng()),
  });
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Ground');
  await expect(page.getByText('no scale yet')).toBeVisible();

  await page.getByRole('button', { name: 'set its scale by a known length' }).click();
  const unscaled = await pictureOnScreen(page);
  const at = (place: Placed, x: number, y: number) => placeOf(place, x, y);
  await clickAt(page, at(unscaled, LAWN_PX.left, LAWN_PX.top));
  await clickAt(page, at(unscaled, LAWN_PX.left + LAWN_PX.width, LAWN_PX.top));
  // The lawn's north edge is 80 ft, so a pixel is 0.2 ft.
  await typeAtFoot(page, '80');
  await expect(page.getByText('scaled by a length of 80.0 ft')).toBeVisible();

  await goTo(page, 'Outlines');
  await page.getByRole('application').focus();
  await page.keyboard.press('Home');
  const scaled = await pictureOnScreen(page);
  await traceBox(page, scaled, 'zone', LAWN_PX);
  await traceBox(page, scaled, 'bed', BED_PX);
  // 80 ft x 60 ft less 20 ft x 12 ft; a click is good to about half a pixel of the screen on either side
  const row = await ledgerRow(page, /Zones and their areas/, 'Zone 1');
  expect(Math.abs(number(row[1]) - 4800)).toBeLessThan(48);
  expect(Math.abs(number(row[2]) - 240)).toBeLessThan(16);
  expect(number(row[1]) - number(row[2])).toBe(number(row[3]));
  await saved(page);

  await giveMix(page);
  await goTo(page, 'Sheet');
  await expect(page.getByRole('img', { name: 'Printed page' })).toBeVisible();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'save as PDF' }).click();
  const folder = mkdtempSync(join(tmpdir(), 'platpace-pdf-'));
  const pdf = join(folder, 'plan.pdf');
  await (await download).saveAs(pdf);
  const words = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' });
  expect(words).toContain('Sketched yard');
  expect(words).toContain('Invented feed');

  const treated = row[4] ?? '';
  await app.restart(join(app.yardsFolder, 'Sketched yard.gpkg'));
  await goTo(page, 'Outlines');
  expect((await ledgerRow(page, /Zones and their areas/, 'Zone 1'))[4]).toBe(treated);
  const said = execFileSync('ogrinfo', ['-al', '-so', join(app.yardsFolder, 'Sketched yard.gpkg')], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  expect(said).toContain('Layer name: zones');
  expect(app.complaints).toEqual([]);
  await app.close();
});

/** Half of a corner mark, to its middle. */
const CORNER_HALF_PX = 4;

test('a zone is reshaped by dragging, and the area follows the hand before it lets go', async () => {
  const app = await startApp();
  const { page } = app;
  await goTo(page, 'Outlines');
  const before = (await ledgerRow(page, /Zones and their areas/, 'west side'))[1];
  await page.getByRole('button', { name: 'west side', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'In hand' })).toBeVisible();
  // The corner marks of the outline in hand are one path of small squares; the first sits on its north-west.
  const box = await page.locator('.hand path.corner').first().boundingBox();
  if (box === null) throw new Error('no corner is on the screen');
  const from = { x: box.x + CORNER_HALF_PX, y: box.y + CORNER_HALF_PX };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 20, from.y - 12, { steps: 4 });
  await expect(async () => {
    expect((await ledgerRow(page, /Zones and their areas/, 'west side'))[1]).not.toBe(before);
  }).toPass();
  await page.mouse.up();
  await saved(page);
  await page.getByRole('application').focus();
  await page.keyboard.press('Control+z');
  await expect(async () => {
    expect((await ledgerRow(page, /Zones and their areas/, 'west side'))[1]).toBe(before);
  }).toPass();
  expect(app.complaints).toEqual([]);
  await app.close();
});

interface Placed {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

async function pictureOnScreen(page: Page): Promise<Placed> {
  const box = await page.locator('.sketch img').first().boundingBox();
  if (box === null) throw new Error('the picture is not on the screen');
  return box;
}

function placeOf(picture: Placed, xPx: number, yPx: number) {
  return {
    x: picture.x + (xPx / PAGE_PX.width) * picture.width,
    y: picture.y + (yPx / PAGE_PX.height) * picture.height,
  };
}

async function clickAt(page: Page, at: { x: number; y: number }): Promise<void> {
  await page.mouse.move(at.x, at.y);
  await page.mouse.click(at.x, at.y);
}

async function traceBox(page: Page, picture: Placed, kind: string, box: typeof LAWN_PX): Promise<void> {
  await draw(page, kind);
  const { left, top, width, height } = box;
  for (const [x, y] of [
    [left, top + height],
    [left + width, top + height],
    [left + width, top],
    [left, top],
  ] as const) {
    await clickAt(page, placeOf(picture, x, y));
  }
  await page.keyboard.press('Enter');
}

function number(text: string | undefined): number {
  return Number((text ?? '').replaceAll(',', ''));
}

function sketchPng(): Uint8Array {
  const data = new Uint8Array(PAGE_PX.width * PAGE_PX.height * 3).fill(250);
  paint(data, LAWN_PX, [150, 190, 130]);
  paint(data, BED_PX, [160, 120, 80]);
  return encode({ width: PAGE_PX.width, height: PAGE_PX.height, data, channels: 3, depth: 8 });
}

function paint(data: Uint8Array, box: typeof LAWN_PX, colour: readonly number[]): void {
  for (let y = box.top; y < box.top + box.height; y++) {
    for (let x = box.left; x < box.left + box.width; x++) data.set(colour, (y * PAGE_PX.width + x) * 3);
  }
}
