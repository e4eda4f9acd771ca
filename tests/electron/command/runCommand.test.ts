import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { runCommand } from '../../../electron/command/runCommand.ts';
import { sampleYard } from '../../../electron/host/sample.ts';
import { createYardFile } from '../../../electron/host/yardFile/index.ts';

const L_SHAPE = fileURLToPath(new URL('../../../sample-maps/l-shape.geojson', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'platpace-run-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(...words: string[]) {
  const said = { out: '', err: '' };
  const code = await runCommand(words, {
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
  });
  return { code, ...said };
}

test('one of two figures that go together is asked for by what the file holds', async () => {
  const path = join(folder, 'job.gpkg');
  const made = createYardFile(path, sampleYard(), []);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  made.value.close();
  const withJob = await run('plan', path, '--swath', '1.8m');
  expect(withJob.code).toBe(2); // usage
  expect(withJob.err).toContain('--load-area and --swath go together');
  expect(withJob.err).not.toContain('no job');
  const without = await run('plan', L_SHAPE, '--swath', '1.8m');
  expect(without.code).toBe(2); // usage
  expect(without.err).toContain('the file has no job');
});

test('a hose in a yard without a spigot is told as that', async () => {
  const { code, out, err } = await run(
    ...['plan', L_SHAPE, '--load-area', '100m2', '--swath', '1.8m', '--hose', '20m'],
  );
  expect(code).toBe(0); // the plan stands without a hose
  expect(err).toContain('no spigot');
  expect(out).toContain('hose: no spigot to start from\n');
  expect(out).not.toContain('no hose gets everywhere');
});
