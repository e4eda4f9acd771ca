import { expect, test } from 'vitest';
import {
  checkWords,
  type PrintedSetting,
  settingSteps,
  settingWords,
} from '../../../core/staking/printed.ts';
import { stakeCuts, stakingTable } from '../../../core/staking/index.ts';
import { outline, rect } from '../../support/builders.ts';

const EDGE: PrintedSetting = {
  kind: 'edge',
  along: '12 ft 6 in',
  corner: 'NE corner 2',
  of: 'back lawn',
  towards: 'NW corner',
  off: null,
  offSide: null,
};

test('a row says what to lay the tape from, which way, and how far', () => {
  expect(settingWords(EDGE)).toBe('12 ft 6 in from NE corner 2 of back lawn towards NW corner');
  expect(settingWords({ ...EDGE, off: '1 ft 0 in', offSide: 'in' })).toBe(
    '12 ft 6 in from NE corner 2 of back lawn towards NW corner, 1 ft 0 in square in from that edge',
  );
  expect(settingWords({ kind: 'line', along: '3.00 m', from: 'flag a', towards: 'flag c' })).toBe(
    '3.00 m from flag a towards flag c',
  );
  expect(
    settingSteps({
      kind: 'tapes',
      first: '4.00 m',
      firstFrom: 'lamp post',
      second: '6.00 m',
      secondFrom: 'NE corner of house',
      side: 'left',
    }),
  ).toEqual([
    { tape: '4.00 m', words: 'from lamp post' },
    { tape: '6.00 m', words: 'from NE corner of house, on your left as you face it from the first' },
  ]);
});

test('a line is printed with its flags, its length and its checks', () => {
  const yard = { outlines: [outline('zone', 'lawn', rect(0, 0, 20, 10))], marks: [] };
  const cut = { from: { xM: 6, yM: 0 }, to: { xM: 6, yM: 10 } };
  const staking = stakeCuts(
    yard,
    {
      cuts: [{ zoneId: 'lawn', ...cut, heldId: null }],
      cutLines: [{ ...cut, between: ['A1', 'A2'], cut: 0 }],
    },
    'metric',
  );
  const { flags, lines } = stakingTable(staking, 'metric');
  expect(flags.map(({ letter }) => letter)).toEqual(['a', 'b']);
  expect(lines[0]).toMatchObject({ from: 'a', to: 'b', between: ['A1', 'A2'], length: '10.00 m' });
  expect(lines[0]?.checks.map(checkWords)).toContain('a to NE corner of lawn 17.20 m'); // √(14² + 10²)
});
