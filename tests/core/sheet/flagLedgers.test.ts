import { expect, test } from 'vitest';
import { flagsLedger, linesLedger, stakesOf } from '../../../core/sheet/flagLedgers.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import { textWidthMm } from '../../../core/sheet/measureText.ts';
import { formatTape } from '../../../core/units/index.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { contextOf } from '../../support/sheetContexts.ts';

const context = contextOf(THREE_ZONES);

test('a section has the flags at the ends of its own lines and no others', () => {
  const { flags, lines } = stakesOf(context, [{ id: 'A2' }]);
  expect(lines.map(({ cutLine }) => cutLine.between.join())).toEqual(['A1,A2', 'A2,A3']);
  expect(flags).toHaveLength(4); // two ends of two lines that do not meet
  expect(stakesOf(context, [{ id: 'C1' }])).toEqual({ flags: [], lines: [] }); // a zone in one section
  expect(stakesOf(context, null)).toBe(context.staking);
});

test('each flag is a letter, a reading and how the tape is laid', () => {
  const { flags, lines } = stakesOf(context, [{ id: 'A2' }]);
  const { rows } = flagsLedger(flags, 'us', 186);
  // Taped along a straight edge, the reading is the straight distance from the corner.
  const readings = flags.map(({ at, setting }) =>
    setting.kind === 'edge' ? formatTape(distanceM(setting.corner.at, at), 'us') : 'no edge',
  );
  expect(rows.map(([, tape]) => tape)).toEqual(readings);
  expect(rows[0]?.[2]).toMatch(/^from [NESW]+ corner of .+ towards [NESW]+ corner$/);
  expect(linesLedger(lines, 'us', 186).rows[0]?.slice(0, 3)).toEqual([
    `${lines[0]?.flags[0].letter}–${lines[0]?.flags[1].letter}`,
    'A1 | A2',
    '32 ft 10 in',
  ]);
});

test('words too long for a narrow column go on in the next row, and none are lost', () => {
  const wide = flagsLedger(context.staking.flags, 'us', 186);
  const narrow = flagsLedger(context.staking.flags, 'us', 60);
  expect(narrow.rows.length).toBeGreaterThan(wide.rows.length);
  const words = (rows: typeof wide.rows) => rows.map((row) => row[2]).join(' ');
  expect(words(narrow.rows)).toBe(words(wide.rows));
  const wordsMm = (60 * 6.1) / (0.85 + 1.9 + 6.1) - 2.8; // the column's share less its padding
  for (const [, , part] of narrow.rows) {
    expect(textWidthMm(part as string, 3.1, 'condensed')).toBeLessThanOrEqual(wordsMm);
  }
});
