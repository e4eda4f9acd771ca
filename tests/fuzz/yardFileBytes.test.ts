import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createYardFile, openYardFile } from '../../electron/host/yardFile/index.ts';
import { seededRandom } from '../support/randomYards.ts';
import { fullYard, moveCorner, point, SKETCH } from '../support/storedYards.ts';
import { yardFolder } from '../support/yardFolder.ts';
import { kindOf, valueIn } from '../support/yardStoreContract.ts';

const RUNS = Number(process.env.PLATPACE_FUZZ_RUNS ?? 150);
const SEED = Number(process.env.PLATPACE_FUZZ_SEED ?? 20_261_125);

/** What a damaged file may be called; anything else, or anything thrown, is ours to mend. */
const ANSWERS = ['file/damaged', 'file/not-a-yard', 'file/newer-version', 'file/unreadable'];

test(
  `a yard file with bytes changed at random is read right, or refused, ${RUNS} times over`,
  () => {
    const place = yardFolder();
    const path = place.path('garden');
    const store = valueIn(createYardFile(path, fullYard(), [SKETCH]));
    valueIn(store.applyEdit(moveCorner(fullYard(), 'z1', point(1, 1)), []));
    store.close();
    const whole = readFileSync(path);
    const refused = new Map<string, number>();
    for (let run = 0; run < RUNS; run += 1) {
      const random = seededRandom(SEED + run);
      const spoilt = Buffer.from(whole);
      // One to forty bytes, near one another: a bad block, not a sprinkling that the first page always gives away.
      const start = Math.floor(random() * spoilt.length);
      for (let i = 0; i < 1 + random() * 40; i += 1) {
        spoilt[Math.min(start + Math.floor(random() * 200), spoilt.length - 1)] = Math.floor(random() * 256);
      }
      writeFileSync(path, spoilt);
      const where = `PLATPACE_FUZZ_SEED=${SEED + run}`;
      const opened = openYardFile(path);
      if (!opened.ok) {
        note(kindOf(opened));
        expect(ANSWERS, where).toContain(kindOf(opened));
        continue;
      }
      const read = opened.value.readYard();
      const results = [
        read,
        opened.value.undo(),
        opened.value.redo(),
        opened.value.readImage(SKETCH.imageHash),
        read.ok && read.value.outlines.some(({ id }) => id === 'z2')
          ? opened.value.applyEdit(moveCorner(read.value, 'z2', point(2, 2)), [])
          : read,
      ];
      opened.value.close();
      for (const result of results) {
        note(kindOf(result));
        if (!result.ok)
          expect([...ANSWERS, 'host/stale-edit', 'host/bad-request'], where).toContain(kindOf(result));
      }
    }
    place.leave();
    // The search must have met both: files that are found out and files that still work.
    expect(refused.get('file/damaged')).toBeGreaterThan(0);
    expect(refused.get('none')).toBeGreaterThan(0);

    function note(kind: string | undefined): void {
      refused.set(kind ?? 'none', (refused.get(kind ?? 'none') ?? 0) + 1);
    }
  },
  60_000 + RUNS * 500,
);
