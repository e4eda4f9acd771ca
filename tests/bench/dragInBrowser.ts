/**
 * Drags a corner of a lawn of 2,000 corners with 200 beds in a real browser window on the built app, and prints what the
 * window spends on each move: scripts, styles and layout, and the whole task with painting. After `npm run build`: `node tests/bench/dragInBrowser.ts`. Numbers inform, they do not gate.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { YardPoint } from '../../core/spaces.ts';
import { startApp } from '../e2e/support/app.ts';
import { goTo } from '../e2e/support/hand.ts';
import { tidyYard } from '../support/tidyYard.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const MOVES = process.argv.includes('--quick') ? 20 : 80;
const PARTS = ['ScriptDuration', 'RecalcStyleDuration', 'LayoutDuration', 'TaskDuration'] as const;

if (existsSync(join(ROOT, 'dist/renderer/index.html'))) await run();
else console.log('the app is not built: npm run build');

async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'platpace-bench-'));
  const app = await startApp({ widthPx: 1400, heightPx: 900 });
  try {
    await app.restart(yardFile(folder));
    const { page } = app;
    await goTo(page, 'Outlines');
    await page.getByRole('button', { name: 'Lawn', exact: true }).first().click();
    const corner = await page.evaluate(() => {
      const path = document.querySelector('path.outline-zone') as SVGPathElement;
      const [, x, y] = /^(?:[ML][^ML]+){5}[ML](\S+) ([^\sLZ]+)/.exec(path.getAttribute('d') ?? '') ?? [];
      const { x: left, y: top } = new DOMPoint(Number(x), Number(y)).matrixTransform(
        path.getScreenCTM() ?? undefined,
      );
      return { left, top };
    });
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Performance.enable');
    const spentMs = async (): Promise<number[]> => {
      const { metrics } = await cdp.send('Performance.getMetrics');
      return PARTS.map((part) => 1000 * (metrics.find(({ name }) => name === part)?.value ?? Number.NaN));
    };
    await page.mouse.move(corner.left, corner.top);
    await page.mouse.down();
    const rows: number[][] = [];
    for (let move = 0; move < MOVES; move++) {
      const before = await spentMs();
      await page.mouse.move(corner.left + 3 + (move % 20), corner.top + 3 + ((7 * move) % 15));
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0))));
      const after = await spentMs();
      rows.push(after.map((ms, i) => ms - (before[i] ?? Number.NaN)));
    }
    await page.mouse.up();
    console.log(`\n2,000 corners, 200 beds: one corner dragged in the window, ${MOVES} moves`);
    PARTS.forEach((part, i) => {
      const sorted = rows.map((row) => row[i] ?? Number.NaN).sort((a, b) => a - b);
      const share = (of: number) => (sorted[Math.floor(of * sorted.length)] ?? Number.NaN).toFixed(1);
      console.log(
        `  ${part.padEnd(20)} median ${share(0.5)} ms  least ${share(0)} ms  nine in ten below ${share(0.9)} ms`,
      );
    });
  } finally {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The yard as a file; where on earth does not matter here, nor does its scale to a hundredth. */
function yardFile(folder: string): string {
  const lonLat = (at: YardPoint | undefined) => [-93 + (at?.xM ?? 0) / 78_847, 45 + (at?.yM ?? 0) / 111_132];
  const feature = (kind: string, name: string, ring: readonly YardPoint[]) => ({
    type: 'Feature',
    properties: { kind, name },
    geometry: { type: 'Polygon', coordinates: [[...ring, ring[0]].map(lonLat)] },
  });
  const { zone, beds } = tidyYard(2000, 200);
  const features = [
    feature('zone', 'Lawn', zone),
    ...beds.map((bed, i) => feature('bed', `bed ${i + 1}`, bed)),
  ];
  const [source, made] = [join(folder, 'big.geojson'), join(folder, 'big.gpkg')];
  writeFileSync(source, JSON.stringify({ type: 'FeatureCollection', features }));
  spawnSync(process.execPath, [join(ROOT, 'electron/command/main.ts'), 'convert', source, made]);
  return made;
}
