import { expect, test } from 'vitest';
import { readClearance, spigotChoice, usualHose } from '../../../renderer/walk/hoseChoice.ts';

const at = { xM: 0, yM: 0 };
const YARD = {
  marks: [
    { id: 'a', kind: 'spigot', name: 'front', at },
    { id: 'b', kind: 'spigot', name: 'back', at },
    { id: 'c', kind: 'landmark', name: 'oak', at },
  ],
} as const;

test('unticking a spigot leaves the others, ticking the last one again is any', () => {
  const any = usualHose('us');
  expect(any.lengthM).toBeCloseTo(15.24, 12); // 50 × 0.3048
  expect(spigotChoice(YARD, any, 'a')).toEqual(['b']);
  expect(spigotChoice(YARD, { ...any, spigotIds: ['b'] }, 'a')).toBeNull();
  expect(spigotChoice(YARD, { ...any, spigotIds: ['b'] }, 'b')).toEqual([]);
});

test('what is kept off corners is nothing or a little, never less than nothing', () => {
  expect(readClearance('0.5', 'us')).toMatchObject({ ok: true, value: 0.5 * 0.3048 });
  expect(readClearance('0', 'metric')).toMatchObject({ ok: true, value: 0 });
  for (const typed of ['-1', '12 ft']) {
    expect(readClearance(typed, 'us')).toMatchObject({
      ok: false,
      problems: [{ kind: 'value/out-of-range' }],
    });
  }
  expect(readClearance('near', 'us').ok).toBe(false);
});
