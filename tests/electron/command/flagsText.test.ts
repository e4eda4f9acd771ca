import { expect, test } from 'vitest';
import { planJob } from '../../../core/plan/index.ts';
import { settingWords, stakeCuts, stakingTable } from '../../../core/staking/index.ts';
import { flagsText } from '../../../electron/command/flagsText.ts';
import { sampleYard } from '../../../electron/host/sample.ts';

const yard = sampleYard();
const planned = planJob(yard, yard.jobs[0]?.id ?? '');
if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
const { ground } = planned.value;

test('a terminal has every flag in the order it is set in, and every line with its check', () => {
  const rows = flagsText(yard, ground).split('\n');
  const { flags, lines } = stakingTable(
    stakeCuts(yard, ground, yard.details.unitSystem),
    yard.details.unitSystem,
  );
  const from = rows.indexOf('flags, set in this order') + 1;
  expect(rows.slice(from, from + flags.length)).toEqual(
    flags.map((flag) => `${flag.letter}: ${settingWords(flag)}`),
  );
  const cutRows = rows.slice(rows.indexOf('lines') + 1).filter((row) => row !== '');
  expect(cutRows).toHaveLength(ground.cutLines.length);
  expect(cutRows.every((row, i) => row.startsWith(`${lines[i]?.from}-${lines[i]?.to} parts `))).toBe(true);
  expect(cutRows.every((row) => row.includes('; check '))).toBe(true);
});

test('a plan without cuts has nothing to flag', () => {
  expect(flagsText(yard, { ...ground, cutLines: [], cuts: [] })).toBe('');
});
