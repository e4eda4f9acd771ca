import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openYardFile } from '../../../../electron/host/yardFile/index.ts';
import { yardAfter } from '../../../support/editSeries.ts';
import { seededRandom } from '../../../support/randomYards.ts';
import { fullYard } from '../../../support/storedYards.ts';
import { yardFolder } from '../../../support/yardFolder.ts';
import { valueIn } from '../../../support/yardStoreContract.ts';

/** PLATPACE_KILLS=1000 for the full promise. */
const KILLS = Number(process.env.PLATPACE_KILLS ?? 50);
const SEED = Number(process.env.PLATPACE_KILL_SEED ?? 20_261_125);
const WRITER = fileURLToPath(new URL('../../../support/killedWriter.ts', import.meta.url));

/** Edits one process may get done before it is killed, at most; keeps the yard small. */
const LONGEST_LIFE_MS = 60;

test(
  `a process killed at any moment, ${KILLS} times over, loses no edit that was acknowledged`,
  async () => {
    const place = yardFolder();
    const path = place.path('garden');
    valueIn(place.create('garden', fullYard(), [])).close();
    const random = seededRandom(SEED);
    let known = 0;
    let yard = fullYard();
    let torn = 0;
    let unacknowledged = 0;
    for (let kill = 0; kill < KILLS; kill += 1) {
      const lifeMs = random() * LONGEST_LIFE_MS;
      const acknowledged = await editUntilKilled(path, lifeMs);
      if (existsSync(`${path}-journal`)) torn += 1;

      const store = valueIn(openYardFile(path));
      const { sequence } = valueIn(store.history());
      const where = `seed ${SEED}, kill ${kill}`;
      // An edit may be on disk without its word having got out; never the other way round.
      expect([acknowledged, acknowledged + 1], where).toContain(sequence);
      if (sequence > acknowledged) unacknowledged += 1;
      yard = yardAfter(sequence, yard, known);
      known = sequence;
      expect(valueIn(store.readYard()), where).toStrictEqual(yard);
      store.close();
      expect(integrityOf(path), where).toBe('ok');
    }
    expect(known).toBeGreaterThanOrEqual(KILLS);
    console.log(
      `${KILLS} kills, ${known} edits, ${torn} killed inside an edit, ${unacknowledged} edits ahead of their word`,
    );

    const store = valueIn(openYardFile(path));
    for (let i = 0; i < known; i += 1) expect(valueIn(store.undo()).step).not.toBeNull();
    expect(valueIn(store.readYard())).toStrictEqual(fullYard());
    store.close();
    place.leave();
  },
  120_000 + KILLS * 5_000,
);

/** Starts a writer, lets it live so long after its first word, kills it, and says what it last acknowledged. */
function editUntilKilled(path: string, lifeMs: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const writer = spawn(process.execPath, [WRITER, path], {
      stdio: ['ignore', 'pipe', 'pipe'],
      // Each life starts the program anew; reading its sources once is enough.
      env: { ...process.env, NODE_COMPILE_CACHE: join(dirname(path), 'compiled') },
    });
    let said = '';
    let complaint = '';
    writer.stderr.on('data', (chunk: Buffer) => {
      complaint += chunk.toString();
    });
    writer.stdout.on('data', (chunk: Buffer) => {
      if (said === '') setTimeout(() => writer.kill('SIGKILL'), lifeMs);
      said += chunk.toString();
    });
    writer.on('close', (code, signal) => {
      const lines = said.split('\n').slice(0, -1); // the last line may be cut off
      const last = Number(lines.at(-1));
      if (signal === 'SIGKILL' && Number.isInteger(last)) resolve(last);
      else reject(new Error(`the writer ended by itself (${code ?? signal}, said ${said}): ${complaint}`));
    });
  });
}

function integrityOf(path: string): unknown {
  const db = new Database(path, { readonly: true });
  try {
    return db.pragma('integrity_check', { simple: true });
  } finally {
    db.close();
  }
}
